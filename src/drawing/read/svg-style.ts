/** Whether an element is seen, and what of its style this reader would have to obey and does not. */
import { quoted, type AttributeFlaw, type SvgElement } from './svg-element.js';

/** CSS that would put lines elsewhere than the attributes say: of any element, and of a shape. */
const moving = ['transform', 'transform-origin', 'translate', 'rotate', 'scale', 'offset-path', 'zoom'];
const shaping = ['d', 'x', 'y', 'cx', 'cy', 'r', 'rx', 'ry', 'width', 'height'];

/** Most style is paint, and there is much of it. */
const matters = new RegExp(
  `(?:^|[;\\s])(?:display|visibility|${[...moving, ...shaping].join('|')})\\s*:`,
  'i',
);

/** What a `style` attribute states, names in lower case; nothing where none of it matters. */
export function styleOf({ attributes: { style } }: SvgElement): ReadonlyMap<string, string> {
  if (style === undefined || !matters.test(style)) return nothing;
  const pairs = style.split(';').map((one) => one.split(':'));
  return new Map(
    pairs.map(([name = '', ...value]) => [name.trim().toLowerCase(), plainWord(value.join(':'))]),
  );
}
const nothing: ReadonlyMap<string, string> = new Map();

const plainWord = (value: string): string =>
  value
    .replace(/!\s*important\s*$/i, '')
    .trim()
    .toLowerCase();

export interface Sight {
  /** `display: none`: neither the element nor anything in it is seen. */
  readonly displayed: boolean;
  /** `visibility`, for all in it that does not state its own; null: as around it. */
  readonly visible: boolean | null;
}

export function sightOf({ attributes }: SvgElement, style: ReadonlyMap<string, string>): Sight {
  const display = style.get('display') ?? attributes.display?.trim();
  const visibility = style.get('visibility') ?? attributes.visibility?.trim();
  const visible = visibility === undefined || visibility === 'inherit' ? null : visibility === 'visible';
  return { displayed: display !== 'none', visible };
}

export function styleFlaws(
  { attributes }: SvgElement,
  style: ReadonlyMap<string, string>,
  shape: boolean,
): readonly AttributeFlaw[] {
  const origin = attributes['transform-origin'];
  if (style.size === 0 && origin === undefined) return none;
  const names = shape ? [...moving, ...shaping] : moving;
  const stated = names.filter((name) => !['none', 'auto', undefined].includes(style.get(name)));
  return [
    ...stated.map((name) => {
      const found = `${name}: ${quoted(style.get(name)!)}`;
      return { attribute: 'style' as const, expected: 'places and sizes stated by attributes', found };
    }),
    ...(origin === undefined ? [] : [{ ...originRefused, found: quoted(origin) }]),
  ];
}
const none: readonly AttributeFlaw[] = [];
const originRefused = {
  attribute: 'transform-origin',
  expected: 'a place stated in transform, as in rotate(30 10 20),',
} as const;
