/** The list of maps in `transform` (SVG 1.1, 7.6): what stands last is done first. */
import { scaling, shifting, thenMapped, turning, unchanged, type Affine } from '../../geometry/affine.js';
import { quoted, taken, type AttributeFlaw, type Taken } from './svg-element.js';
import { numbersIn } from './svg-numbers.js';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

interface Kind {
  readonly counts: readonly number[];
  readonly map: (numbers: readonly number[]) => Affine;
}

const kinds: ReadonlyMap<string, Kind> = new Map<string, Kind>([
  ['matrix', { counts: [6], map: ([a, b, c, d, e, f]) => ({ a: a!, b: b!, c: c!, d: d!, e: e!, f: f! }) }],
  ['translate', { counts: [1, 2], map: ([x, y = 0]) => shifting(x!, y) }],
  ['scale', { counts: [1, 2], map: ([x, y = x]) => scaling(x!, y!) }],
  ['rotate', { counts: [1, 3], map: ([turn, x = 0, y = 0]) => turnedAbout(turn!, x, y) }],
  ['skewX', { counts: [1], map: ([lean]) => ({ ...unchanged, c: Math.tan(radians(lean!)) }) }],
  ['skewY', { counts: [1], map: ([lean]) => ({ ...unchanged, b: Math.tan(radians(lean!)) }) }],
]);

const turnedAbout = (degrees: number, x: number, y: number): Affine =>
  thenMapped(thenMapped(shifting(-x, -y), turning(radians(degrees))), shifting(x, y));

const next = /\s*(?:,\s*)?([A-Za-z]+)\s*\(([^()]*)\)/y;

export function transformOf(text: string | undefined): Taken<Affine> {
  if (text === undefined || text.trim() === '' || text.trim() === 'none') return taken(unchanged);
  const end = text.trimEnd().length;
  let map = unchanged;
  let at = 0;
  while (at < end) {
    next.lastIndex = at;
    const found = next.exec(text);
    const one = found && oneMap(found[1]!, found[2]!);
    if (one === null || typeof one === 'string') return refused(text, at, one);
    map = thenMapped(one, map);
    at = next.lastIndex;
  }
  return taken(map);
}

/** A text says what is expected instead. */
function oneMap(name: string, brackets: string): Affine | string | null {
  const kind = kinds.get(name);
  if (kind === undefined) return null;
  const { numbers, strayAt } = numbersIn(brackets);
  if (strayAt !== null || !kind.counts.includes(numbers.length))
    return `${name} with ${kind.counts.join(' or ')} plain number${kind.counts.at(-1) === 1 ? '' : 's'}`;
  const map = kind.map(numbers);
  return Object.values(map).every((value: number) => Number.isFinite(value))
    ? map
    : `${name} of finite numbers`;
}

const anyMap = 'matrix, translate, scale, rotate, skewX or skewY with plain numbers in brackets';

function refused(text: string, from: number, expected: string | null): Taken<Affine> {
  const at = from + /^[\s,]*/.exec(text.slice(from))![0].length;
  const flaw: AttributeFlaw = {
    attribute: 'transform',
    at,
    expected: expected ?? anyMap,
    found: quoted(text.slice(at)),
  };
  return { ok: false, flaws: [flaw] };
}
