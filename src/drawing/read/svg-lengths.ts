/** Lengths of shapes in user units (CSS Values, 6.2: 96 px an inch) and physical sizes of a page in metres. */
import { quoted, taken, type AttributeFlaw, type SvgElement, type Taken } from './svg-element.js';

/** What percentages are taken of, user units; null: the file does not say. */
export interface Viewport {
  readonly width: number | null;
  readonly height: number | null;
}

/** Percentages are of this (SVG 1.1, 7.10): of the diagonal by √2 where neither across nor down. */
const percentOf: Readonly<Record<LengthAttribute, 'width' | 'height' | 'diagonal'>> = {
  ...{ x: 'width', cx: 'width', rx: 'width', width: 'width', x1: 'width', x2: 'width' },
  ...{ y: 'height', cy: 'height', ry: 'height', height: 'height', y1: 'height', y2: 'height' },
  r: 'diagonal',
};

export type LengthAttribute =
  ('x' | 'cx' | 'rx' | 'width' | 'x1' | 'x2') | ('y' | 'cy' | 'ry' | 'height' | 'y1' | 'y2' | 'r');

const sizes: readonly LengthAttribute[] = ['width', 'height', 'r', 'rx', 'ry'];

const metresIn: ReadonlyMap<string, number> = new Map([
  ['mm', 0.001],
  ['cm', 0.01],
  ['in', 0.0254],
  ['pt', 0.0254 / 72],
  ['pc', 0.0254 / 6],
  ['q', 0.00025],
]);

const pixelsInMetre = 96 / 0.0254;

const written = /^\s*([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)([a-z%]*)\s*$/i;

function numberAndUnit(text: string): { number: number; unit: string } | null {
  const found = written.exec(text);
  return found && { number: Number(found[1]), unit: found[2]!.toLowerCase() };
}

/** Metres; null where a length is not of a physical unit: px, %, none. */
export function physicalLength(text: string | undefined): number | null {
  const length = numberAndUnit(text ?? '');
  const metres = metresIn.get(length?.unit ?? '');
  return length && metres !== undefined ? length.number * metres : null;
}

export type Lengths<K extends LengthAttribute> = Readonly<Record<K, number | null>>;

/** Null where an attribute is missing or `auto`. */
export function lengthsOf<K extends LengthAttribute>(
  { attributes }: SvgElement,
  viewport: Viewport,
  names: readonly K[],
): Taken<Lengths<K>> {
  const flaws: AttributeFlaw[] = [];
  const lengths = names.map((name) => {
    const text = attributes[name];
    if (text === undefined || text.trim() === 'auto') return [name, null] as const;
    const length = userLength(text, name, viewport);
    if (typeof length === 'number') return [name, length] as const;
    flaws.push({ attribute: name, found: quoted(text), ...length });
    return [name, null] as const;
  });
  if (flaws.length > 0) return { ok: false, flaws };
  return taken(Object.fromEntries(lengths) as Record<K, number | null>);
}

type Refused = Pick<AttributeFlaw, 'expected' | 'hint'>;

function userLength(text: string, name: LengthAttribute, viewport: Viewport): number | Refused {
  const length = numberAndUnit(text);
  if (length === null) return { expected: 'a length, such as 12.5 or 30mm' };
  const scale = userUnitsIn(length.unit, name, viewport);
  if (typeof scale !== 'number') return scale;
  const units = length.number * scale;
  if (!Number.isFinite(units)) return { expected: 'a finite length' };
  return units < 0 && sizes.includes(name) ? { expected: 'a length that is not negative' } : units;
}

function userUnitsIn(unit: string, name: LengthAttribute, viewport: Viewport): number | Refused {
  if (unit === '' || unit === 'px') return 1;
  if (unit === '%') {
    const whole = wholeOf(percentOf[name], viewport);
    if (whole !== null) return whole / 100;
    return {
      expected: 'a length',
      hint: 'a percentage needs a page with a viewBox, or with width and height',
    };
  }
  const metres = metresIn.get(unit);
  if (metres !== undefined) return metres * pixelsInMetre;
  return { expected: 'a length in px, mm, cm, in, pt, pc, q, % or without a unit' };
}

function wholeOf(of: 'width' | 'height' | 'diagonal', { width, height }: Viewport): number | null {
  if (of !== 'diagonal') return of === 'width' ? width : height;
  return width === null || height === null ? null : Math.hypot(width, height) / Math.SQRT2;
}
