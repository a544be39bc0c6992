/** Several targets by several sizes from several places to begin with: the least change as far as was looked. */
import { evenPoints } from '../numeric/owen-scramble.js';
import { solveSeveral, type OfSeveral, type SolvedSeveral } from './solve-several.js';

/** Besides the design as it stands, evenly over the ranges; a power of 2. */
const starts = 16;
const seed = 1;

/**
 * The nearest solution of those found, else what comes closest; null: it has no value anywhere.
 * @param bounds of z, changes over their ranges
 */
export function solveFromStarts(
  f: OfSeveral,
  bounds: readonly (readonly [number, number])[],
): SolvedSeveral | null {
  const places = evenPoints(starts, bounds.length, seed).map((point) =>
    point.map((share, i) => bounds[i]![0] + share * (bounds[i]![1] - bounds[i]![0])),
  );
  return [bounds.map(() => 0), ...places]
    .flatMap((from) => solveSeveral(f, bounds, from) ?? [])
    .reduce<SolvedSeveral | null>((best, one) => (best === null || isBetter(one, best) ? one : best), null);
}

/** By more than the rounding of a solution: then the one that was found first stays. */
const better = 1e-7;

function isBetter(a: SolvedSeveral, b: SolvedSeveral): boolean {
  if (a.solved !== b.solved) return a.solved;
  const sizeOf = ({ z, left, solved }: SolvedSeveral): number => Math.hypot(...(solved ? z : left));
  return sizeOf(a) < sizeOf(b) - better;
}
