/** Which verdicts changed between two designs, and which limits were themselves changed. */
import { pairsOf, type Pair } from './pairs.js';
import type { JudgedLimit, Verdict } from './verdict.js';

/** `flipped`: another verdict; `bounds`: another range, the verdict as before. */
export type Change = 'flipped' | 'appeared' | 'gone' | 'bounds';

export type LimitChange = Pair<JudgedLimit> & { readonly change: Change };

/** What became worse comes first: it is what a reader must not miss. */
export function compareLimits(old: readonly JudgedLimit[], now: readonly JudgedLimit[]): LimitChange[] {
  const changes = pairsOf(old, now, ({ id }) => id).flatMap((pair) => {
    const change = changeOf(pair);
    return change === null ? [] : [{ ...pair, change }];
  });
  return changes.toSorted((a, b) => rank(a) - rank(b));
}

function changeOf(pair: Pair<JudgedLimit>): Change | null {
  if (pair.old === null) return 'appeared';
  if (pair.new === null) return 'gone';
  if (pair.old.verdict !== pair.new.verdict) return 'flipped';
  return sameRange(pair.old.range, pair.new.range) ? null : 'bounds';
}

const ranks: Readonly<Record<Verdict, number>> = { fail: 0, unknown: 1, pass: 3 };

/** A limit that is gone judges nothing any more: after the bad, before the good. Changed bounds come last. */
const rank = (change: LimitChange): number => {
  if (change.change === 'bounds') return 4;
  return change.new === null ? 2 : ranks[change.new.verdict];
};

/** The same length written in another unit differs in its last digits only. */
const rounding = 1e-9;

export const sameRange = (a: JudgedLimit['range'], b: JudgedLimit['range']): boolean =>
  sameBound(a.min, b.min) && sameBound(a.max, b.max);

const sameBound = (a: number | null, b: number | null): boolean =>
  a === b || (a !== null && b !== null && Math.abs(a - b) <= rounding * Math.max(Math.abs(a), Math.abs(b)));
