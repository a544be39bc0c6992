/** A value of the design file: an expression, compiled once, and what its number must be. */
import { shown } from '../quantity/source-text.js';
import type { Quantity } from '../quantity/quantity.js';
import { inSIUnits, siUnit, whyFarBeyond } from './bounds.js';
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

/** The other way: what must be more than 0 is no less than this, so that products of a few do not vanish. */
const least = 1e-7;

/** What is wrong with the number that a value comes to. */
export function faultOfValue({ source, must, quantity }: Value, value: number): Words | undefined {
  const { is, words } = musts[must];
  const beyond = is(value) ? whyFarBeyond(quantity.kind, value) : null;
  const tooSmall = must === 'positive' && value > 0 && value < least;
  if (Number.isFinite(value) && is(value) && beyond === null && !tooSmall) return undefined;
  const expected = beyond ?? (tooSmall ? `no less than ${least}${siUnit[quantity.kind]}` : words);
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
