/**
 * Several targets by as many sizes or more, with the least change: z the changes over their ranges, f(z) = 0 the targets,
 *
 *     z' = Jᵀ (J Jᵀ)⁻¹ (J z - f)        the shortest z' with f + J (z' - z) = 0
 *
 * over and over; where it stands still f = 0 and z is a sum of rows of J, which is what makes |z| least (Lagrange). A size
 * at the end of its range stays there. J by central differences, at an end of a range or of what has a value by one-sided ones.
 */
import { shortestSolution } from '../numeric/linear.js';

/** Over their scales; null: it has no value there. */
export type OfSeveral = (z: readonly number[]) => readonly number[] | null;

export interface SolvedSeveral {
  readonly z: readonly number[];
  /** What is left of each target, over its scale. */
  readonly left: readonly number[];
  readonly solved: boolean;
}

/** More than it takes where it converges at all. */
const mostRounds = 60;
/** Over the scale of a target: rounding of a calculation good to 1e-12. */
const met = 1e-10;
/** Over the range of a size; what moves less stands still. */
const still = 1e-9;
/** Of a range: differences are then good to a millionth, and the targets themselves to rounding. */
const difference = 1e-5;

/**
 * @param bounds of z
 * @param from where it begins, or where that lies outside the end that is nearer
 * @returns null: there is no value to begin from
 */
export function solveSeveral(
  f: OfSeveral,
  bounds: readonly (readonly [number, number])[],
  from: readonly number[] = bounds.map(() => 0),
): SolvedSeveral | null {
  const start = inRange(from, bounds);
  const first = f(start);
  const origin = bounds.map(() => 0);
  if (first === null) return null;
  let [z, left]: [readonly number[], readonly number[]] = [start, first];
  for (let round = 0; round < mostRounds; round++) {
    const next = stepFrom(f, z, left, bounds, origin);
    const tried: Place | null = next && backedOff(f, z, left, next);
    if (tried === null) break;
    const moved = Math.max(...tried.z.map((value, i) => Math.abs(value - z[i]!)));
    [z, left] = [tried.z, tried.left];
    if (largest(left) <= met && moved <= still) return { z, left, solved: true };
  }
  const on = onTargets(f, { z, left }, bounds);
  if (largest(on.left) > met) return { ...on, solved: false };
  return { ...shortened(f, on, bounds, origin), solved: true };
}

/** Where targets bend so much that the shortest steps lead to and fro: straight to where they are met. */
function onTargets(f: OfSeveral, from: Place, bounds: readonly (readonly [number, number])[]): Place {
  let place = from;
  for (let round = 0; round < mostRounds && largest(place.left) > met; round++) {
    const next = stepFrom(f, place.z, place.left, bounds, place.z);
    const tried = next && backedOff(f, place.z, place.left, next);
    if (tried === null) break;
    place = tried;
  }
  return place;
}

/** Along the targets towards the least change, a share of the way each time and back on them, as long as that is shorter. */
function shortened(
  f: OfSeveral,
  from: Place,
  bounds: readonly (readonly [number, number])[],
  origin: readonly number[],
): Place {
  let place = from;
  let share = 0.5;
  for (let round = 0; round < mostRounds && share > still; round++) {
    const next = stepFrom(f, place.z, place.left, bounds, origin);
    if (next === null) break;
    const z = place.z.map((value, i) => value + share * (next[i]! - value));
    const left = f(z);
    const tried = left && onTargets(f, { z, left }, bounds);
    const isShorter =
      tried !== null && largest(tried.left) <= met && Math.hypot(...tried.z) < Math.hypot(...place.z);
    if (isShorter) place = tried;
    else share /= 2;
  }
  return place;
}

interface Place {
  readonly z: readonly number[];
  readonly left: readonly number[];
}

const largest = (values: readonly number[]): number => Math.max(...values.map(Math.abs));

/** @param origin what it stays as near to as it can */
function stepFrom(
  f: OfSeveral,
  z: readonly number[],
  left: readonly number[],
  bounds: readonly (readonly [number, number])[],
  origin: readonly number[],
): number[] | null {
  const columns = z.map((_, i) => slopes(f, z, left, i, bounds[i]!));
  if (columns.includes(null)) return null;
  const slopesOf = columns as number[][];
  const fixed = new Map<number, number>();
  let far: number[] | null = null;
  for (;;) {
    const free = z.flatMap((_, i) => (fixed.has(i) ? [] : [i]));
    // Linear equations that lead out of every range: as far as it goes that way, and looked at anew.
    if (free.length < left.length) return far && inRange(far, bounds);
    const rows = left.map((_, row) => free.map((i) => slopesOf[i]![row]!));
    const wanted = left.map((value, row) =>
      z.reduce((sum, at, i) => sum + slopesOf[i]![row]! * (at - (fixed.get(i) ?? origin[i]!)), -value),
    );
    const found = shortestSolution(rows, wanted);
    if (found === null) return null;
    const next = z.map((_, i) => fixed.get(i) ?? origin[i]! + found[free.indexOf(i)]!);
    far ??= next;
    const out = next.findIndex((value, i) => value < bounds[i]![0] || value > bounds[i]![1]);
    if (out < 0) return next;
    fixed.set(out, next[out]! < bounds[out]![0] ? bounds[out]![0] : bounds[out]![1]);
  }
}

const inRange = (z: readonly number[], bounds: readonly (readonly [number, number])[]): number[] =>
  z.map((value, i) => Math.min(Math.max(value, bounds[i]![0]), bounds[i]![1]));

/** Of every target by one size; null: it has no value on either side. */
function slopes(
  f: OfSeveral,
  z: readonly number[],
  here: readonly number[],
  i: number,
  [least, greatest]: readonly [number, number],
): number[] | null {
  const side = (by: number): { readonly by: number; readonly values: readonly number[] } => {
    const there = z[i]! + by;
    const values =
      there < least || there > greatest ? null : f(z.map((value, k) => (k === i ? there : value)));
    return values === null ? { by: 0, values: here } : { by, values };
  };
  const [less, more] = [side(-difference), side(difference)];
  if (less.by === more.by) return null;
  return more.values.map((value, row) => (value - less.values[row]!) / (more.by - less.by));
}

/** The step, or half of it and half again, until what is left has not grown. */
function backedOff(
  f: OfSeveral,
  z: readonly number[],
  left: readonly number[],
  next: readonly number[],
): Place | null {
  for (let share = 1; share > 1e-3; share /= 2) {
    const tried = z.map((value, i) => value + share * (next[i]! - value));
    const there = f(tried);
    if (there !== null && (largest(there) < largest(left) || largest(there) <= met))
      return { z: tried, left: there };
  }
  return null;
}
