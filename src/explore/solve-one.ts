/**
 * Every place in a range where a function of one size comes to a target. Where it changes sides between two of the places
 * that are looked at the root is sought in that bracket; where it only comes near, its nearest place. A change of sides by
 * a jump, as where a chair finds another rest, is no solution.
 */
import { maximum } from '../numeric/maximum.js';
import { rootBetween } from '../numeric/root.js';

/** null: it has no value there. */
export type OfOne = (x: number) => number | null;

export interface SolvedOne {
  readonly solutions: readonly number[];
  /** Where it jumps over the target. */
  readonly jumps: readonly number[];
  /** Least and greatest value that was seen; null: it has none anywhere. */
  readonly reach: readonly [least: number, greatest: number] | null;
  /** Where it comes nearest to the target. */
  readonly closest: number | null;
}

/** So many steps over the range: what turns back within one of them is missed. */
const steps = 128;
/** Nearer to the target than this share of it (or of the reach) is on it: rounding of a calculation good to 1e-12. */
const onTarget = 1e-10;

export function solveOne(f: OfOne, target: number, from: number, to: number): SolvedOne {
  const places = Array.from({ length: steps + 1 }, (_, i) =>
    i === steps ? to : from + ((to - from) * i) / steps,
  );
  const values = places.map(f);
  const seen = values.filter((value): value is number => value !== null);
  if (seen.length === 0) return { solutions: [], jumps: [], reach: null, closest: null };
  const reach = [Math.min(...seen), Math.max(...seen)] as const;
  const near = onTarget * Math.max(Math.abs(target), reach[1] - reach[0]);
  const off = (x: number): number => (f(x) ?? NaN) - target;
  const [solutions, jumps]: [number[], number[]] = [[], []];
  places.forEach((x, i) => {
    const here = values[i] ?? null;
    const next = values[i + 1] ?? null;
    if (here !== null && Math.abs(here - target) <= near) solutions.push(x);
    else if (
      here !== null &&
      next !== null &&
      (here - target) * (next - target) < 0 &&
      Math.abs(next - target) > near
    ) {
      const root = bracketed(off, x, places[i + 1]!);
      if (root === null) return;
      if (Math.abs(off(root)) <= near) solutions.push(root);
      else jumps.push(root);
    }
  });
  const closest = nearest(off, places, values, target);
  // A hill or a hollow that just touches.
  if (solutions.length === 0 && Math.abs(off(closest)) <= near) solutions.push(closest);
  return { solutions, jumps, reach, closest };
}

/** null: on the way it has no value. */
function bracketed(off: (x: number) => number, a: number, b: number): number | null {
  try {
    return rootBetween(
      (x) => {
        const value = off(x);
        if (Number.isNaN(value)) throw noValue;
        return value;
      },
      a,
      b,
    );
  } catch (error) {
    if (error === noValue) return null;
    throw error;
  }
}

const noValue = new RangeError('solveOne: no value in the bracket');

function nearest(
  off: (x: number) => number,
  places: readonly number[],
  values: readonly (number | null)[],
  target: number,
): number {
  let best = -1;
  values.forEach((value, i) => {
    if (value !== null && (best < 0 || Math.abs(value - target) < Math.abs(values[best]! - target))) best = i;
  });
  const [left, right] = [places[Math.max(best - 1, 0)]!, places[Math.min(best + 1, places.length - 1)]!];
  let [at, least] = [places[best]!, Math.abs(values[best]! - target)];
  maximum(
    (x) => {
      const far = Math.abs(off(x));
      if (far < least) [at, least] = [x, far];
      return Number.isNaN(far) ? -Infinity : -far;
    },
    left,
    right,
  );
  return at;
}
