/** A value of the design file: an expression, compiled once, and what its number must be. */
import type { Kind } from '../names.js';
import { shown } from '../quantity/source-text.js';
import type { Quantity } from '../quantity/quantity.js';
import type { Source } from './dimensions.js';
import type { Words } from './places.js';

export type Must = 'any' | 'positive' | 'not negative' | 'count' | 'percentile';

export interface Value {
  readonly source: Source;
  readonly quantity: Quantity;
  readonly must: Must;
}

/** The names used by all values in a piece of the written design. */
export function namesWithin(written: unknown): readonly string[] {
  if (typeof written !== 'object' || written === null) return [];
  if ('quantity' in written) return (written as Value).quantity.names;
  return Object.values(written).flatMap(namesWithin);
}

/** A range as written; an end that is not stated is null. */
export interface ValueRange {
  readonly source: Source;
  readonly min: Value | null;
  readonly max: Value | null;
}

const musts: Readonly<Record<Must, { is: (value: number) => boolean; words: string }>> = {
  any: { is: () => true, words: 'a finite number' },
  positive: { is: (value) => value > 0, words: 'more than 0' },
  'not negative': { is: (value) => value >= 0, words: '0 or more' },
  count: { is: (value) => Number.isInteger(value) && value >= 1, words: 'a whole number, 1 or more' },
  percentile: { is: (value) => value >= 0 && value <= 100, words: 'a percentile from 0 to 100' },
};

/** Far beyond any chair, and small enough that nothing made of a few of them overflows. In SI units. */
const farBeyond: Readonly<Record<Kind, number>> = {
  length: 1e6,
  mass: 1e6,
  time: 1e10,
  angle: 1e4,
  number: 1e9,
  force: 1e9,
  energy: 1e9,
  density: 1e6,
  inertia: 1e9,
};

/** The other way: what must be more than 0 is no less than this, so that products of a few do not vanish. */
const least = 1e-7;

/** What is wrong with the number that a value comes to. */
export function faultOfValue({ source, must, quantity }: Value, value: number): Words | undefined {
  const { is, words } = musts[must];
  const most = farBeyond[quantity.kind];
  const tooLarge = is(value) && Math.abs(value) > most;
  const tooSmall = must === 'positive' && value > 0 && value < least;
  if (Number.isFinite(value) && is(value) && !tooLarge && !tooSmall) return undefined;
  const unit = siUnit[quantity.kind];
  const expected = tooLarge
    ? `no more than ${most}${unit}`
    : tooSmall
      ? `no less than ${least}${unit}`
      : words;
  return { expected, found: cameTo(source, quantity, value) };
}

export function faultOfRange(
  { source }: ValueRange,
  min: number | null,
  max: number | null,
): Words | undefined {
  if (min === null || max === null || !(min > max)) return undefined;
  return { expected: 'a range from less to more', found: shown(String(source)) };
}

function cameTo(source: Source, { kind, names }: Quantity, value: number): string {
  if (names.length === 0) return shown(String(source));
  return `${shown(String(source))}, which is ${inSIUnits(value, kind)}`;
}

const siUnit: Readonly<Record<Kind, string>> = {
  length: ' m',
  mass: ' kg',
  time: ' s',
  angle: ' rad',
  number: '',
  force: ' N',
  energy: ' J',
  density: ' kg/m³',
  inertia: ' kg m²',
};

/** Six digits tell a size to the micrometre: enough to see what is wrong with it. */
function inSIUnits(value: number, kind: Kind): string {
  return Number.isFinite(value) ? `${Number(value.toPrecision(6))}${siUnit[kind]}` : 'no finite number';
}
