/** Limits and verdicts: numbers in, verdicts out. */
import type { RangeInSI } from '../design/design.js';
import type { NoRest } from '../measures/no-rest.js';
import { isMissing, type OrMissing } from '../numeric/missing.js';
import type { LoadId, MeasureKey } from '../names.js';

export type Verdict = 'pass' | 'fail' | 'unknown';

export interface JudgedLimit {
  /** `<load>/<limit>/<sitter>`, the last part only for loads with a sitter. */
  readonly id: string;
  readonly load: LoadId;
  readonly sitter: string | null;
  /** null: the limit is that it comes to rest at all. */
  readonly measure: MeasureKey | null;
  readonly range: RangeInSI;
  readonly value: number | null;
  /** Distance to the nearer bound, negative when it is not met; null without a value. */
  readonly margin: number | null;
  readonly verdict: Verdict;
  /** Why it fails or is unknown, where the numbers alone do not say. */
  readonly reason: string | NoRest | null;
  readonly basis: string;
  /** Met, but outside a default range on a side that is only a caution for this sitter. */
  readonly cautioned: boolean;
}

/**
 * A value short of its bound by no more than this share of it, or than a nanometre or a nanoradian, is met: a size that
 * a design states in inches comes back from the calculation with its last digits rounded.
 */
const rounding = 1e-9;

/** Distance inside the range, negative outside; NaN of no number. */
export function marginIn({ min, max }: RangeInSI, value: number): number {
  if (Number.isNaN(value)) return NaN;
  const inside = Math.min(min === null ? Infinity : value - min, max === null ? Infinity : max - value);
  const size = Math.max(1, Math.abs(min ?? 0), Math.abs(max ?? 0));
  return Math.abs(inside) <= rounding * size ? 0 : inside;
}

/** NaN never passes. */
export function judge(
  range: RangeInSI,
  value: OrMissing<number>,
): Pick<JudgedLimit, 'value' | 'margin' | 'verdict' | 'reason'> {
  if (isMissing(value)) return { value: null, margin: null, verdict: 'unknown', reason: value.missing };
  const margin = marginIn(range, value);
  return { value, margin, verdict: margin >= 0 ? 'pass' : 'fail', reason: null };
}

/** Fail if any fails; else unknown if any is unknown. */
export function worst(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.includes('fail')) return 'fail';
  return verdicts.includes('unknown') ? 'unknown' : 'pass';
}
