/**
 * The loosest tolerances under a given chance of missing any limit. All begin at the loosest step that a maker holds; as
 * long as too many chairs miss a limit, the dimension that moves the limit missed most the most is held one step closer.
 * The steps are chosen on measures that follow in a straight line (first order) and proved on chairs that are rolled; where
 * the proof fails they are chosen again for a smaller chance.
 */
import { marginIn, type JudgedLimit } from '../checks/verdict.js';
import { proportionOf, type Proportion } from '../numeric/proportion.js';
import { metresPer, type LengthUnit } from '../quantity/units.js';
import type { FirstOrder } from './first-order.js';
import { deviationOf, drawnError, isLength, type ShopError } from './shop-errors.js';

export interface Loosest {
  /** What was asked for. */
  readonly chance: number;
  /** Whether it lies under that, its whole interval. */
  readonly met: boolean;
  /** Even, either way; those that are no lengths as they were. */
  readonly errors: readonly ShopError[];
  /** Of missing any limit with these. */
  readonly any: Proportion;
}

/** As makers hold them, from the tightest. Common practice, no source. */
export function tolerancesHeld(units: LengthUnit): readonly number[] {
  return units === 'in' || units === 'ft'
    ? [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2].map((inches) => inches * metresPer.in)
    : [0.25, 0.5, 1, 2, 5, 10].map((millimetres) => millimetres * metresPer.mm);
}

/** A limit as a straight line about the chair as drawn. */
export interface Line {
  readonly range: JudgedLimit['range'];
  readonly value: number;
  readonly slopes: readonly number[];
}

export const linesOf = (
  drawn: Iterable<JudgedLimit>,
  orders: ReadonlyMap<string, FirstOrder>,
): readonly Line[] =>
  [...drawn].flatMap(({ id, range, value }) => {
    const order = orders.get(id);
    if (!order || value === null) return [];
    return [{ range, value, slopes: order.effects.map(({ slope }) => slope ?? 0) }];
  });

/** How often each line is missed by those points, and any of them. */
function missesOf(
  lines: readonly Line[],
  errors: readonly ShopError[],
  points: readonly (readonly number[])[],
): { readonly each: readonly number[]; readonly any: number } {
  const missed = points.map((point) => {
    const off = errors.map((error, i) => drawnError(error, point[i]!));
    return lines.map((line) => marginIn(line.range, valueOn(line, off)) < 0);
  });
  const each = lines.map((_, l) => missed.filter((one) => one[l]).length);
  return { each, any: missed.filter((one) => one.includes(true)).length };
}

const valueOn = ({ value, slopes }: Line, off: readonly number[]): number =>
  slopes.reduce((sum, slope, i) => sum + slope * off[i]!, value);

/** The upper end of the interval is what must lie under the chance. */
const isUnder = (missed: Proportion, chance: number): boolean => missed.high <= chance;

/** Steps by index in `held`; null: no length, as it is. */
function chosen(
  lines: readonly Line[],
  errors: readonly ShopError[],
  points: readonly (readonly number[])[],
  held: readonly number[],
  most: number,
): readonly ShopError[] {
  const steps = errors.map(({ variable }) => (isLength(variable) ? held.length - 1 : null));
  for (;;) {
    const now = withSteps(errors, steps, held);
    const { each, any } = missesOf(lines, now, points);
    if (any <= most) return now;
    const worst = offender(lines, now, each, steps);
    if (worst === null) return now;
    steps[worst]!--;
  }
}

const withSteps = (
  errors: readonly ShopError[],
  steps: readonly (number | null)[],
  held: readonly number[],
): ShopError[] =>
  errors.map((error, i) => {
    const step = steps[i] ?? null;
    return step === null ? error : { ...error, spread: 'even', size: held[step]!, assumed: false };
  });

/** Of the limit missed most often the dimension that moves it most and can be held closer; null: none can. */
function offender(
  lines: readonly Line[],
  errors: readonly ShopError[],
  misses: readonly number[],
  steps: readonly (number | null)[],
): number | null {
  const order = lines.map((_, l) => l).filter((l) => misses[l]! > 0);
  order.sort((a, b) => misses[b]! - misses[a]! || a - b);
  for (const l of order) {
    const moves = errors.map((error, i) => Math.abs(lines[l]!.slopes[i]! * deviationOf(error)));
    const most = moves.reduce((at, move, i) => ((steps[i] ?? 0) > 0 && move > (moves[at] ?? 0) ? i : at), -1);
    if (most >= 0) return most;
  }
  return null;
}

/** After so many proofs the closest steps are tried, then it is given up. */
const mostProofs = 6;

/**
 * @param prove how many of the points' chairs miss a limit with such errors
 * @throws RangeError when a line is missed as drawn: no tolerance helps
 */
export function loosestTolerances(
  lines: readonly Line[],
  errors: readonly ShopError[],
  points: readonly (readonly number[])[],
  held: readonly number[],
  chance: number,
  prove: (errors: readonly ShopError[]) => number,
): Loosest {
  const count = points.length;
  let most = mostUnder(chance, count);
  for (let proof = 0; proof <= mostProofs; proof++) {
    const last = proof === mostProofs;
    const now = last
      ? withSteps(
          errors,
          errors.map(({ variable }) => (isLength(variable) ? 0 : null)),
          held,
        )
      : chosen(lines, errors, points, held, most);
    const any = proportionOf(prove(now), count);
    const closest = now.every(({ variable, size }) => !isLength(variable) || size <= held[0]!);
    if (isUnder(any, chance) || closest || last)
      return { chance, met: isUnder(any, chance), errors: now, any };
    // By as much as the straight lines were wrong, and at least by one chair.
    most = Math.max(
      -1,
      Math.min(most - 1, Math.floor((most * mostUnder(chance, count)) / (any.share * count))),
    );
  }
  throw new RangeError('loosestTolerances: no proof');
}

/** As many of so many as still lie under the chance, their interval too; -1: not even none. */
export function mostUnder(chance: number, of: number): number {
  let most = -1;
  while (most < of && isUnder(proportionOf(most + 1, of), chance)) most++;
  return most;
}
