/**
 * The loosest tolerances under a given chance of missing any limit. All begin at the loosest step that a maker holds; as
 * long as too many chairs miss a limit, the dimension that moves the limit missed most the most is held one step closer.
 * That is done on measures that follow in a straight line (first order), then gone on with on chairs that are rolled.
 */
import { marginIn, type JudgedLimit } from '../checks/verdict.js';
import { proportionOf, type Proportion } from '../numeric/proportion.js';
import { isImperial, metresPer, type LengthUnit } from '../quantity/units.js';
import type { FirstOrder } from './first-order.js';
import { deviationOf, drawnError, type ShopError } from './shop-errors.js';
import { isLength } from './variables.js';

export interface Loosest {
  /** What was asked for. */
  readonly chance: number;
  /** Whether it lies under that, its whole interval. */
  readonly met: boolean;
  /** Even, either way; those that are no lengths as they were. */
  readonly errors: readonly ShopError[];
  /** Of missing any limit with these. */
  readonly any: Proportion;
  /** The limit missed most with these, where even the tightest tried miss too often; null: they do not. */
  readonly missedMost: { readonly id: string; readonly missed: Proportion } | null;
}

/** As makers hold them, from the tightest. Common practice, no source. */
export function tolerancesHeld(units: LengthUnit): readonly number[] {
  return isImperial(units)
    ? [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2].map((inches) => inches * metresPer.in)
    : [0.25, 0.5, 1, 2, 5, 10].map((millimetres) => millimetres * metresPer.mm);
}

/** A limit as a straight line about the chair as drawn. */
export interface Line {
  /** Of the limit. */
  readonly id: string;
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
    return [{ id, range, value, slopes: order.effects.map(({ slope }) => slope ?? 0) }];
  });

/** How often each line is missed by those points, and any of them. */
function missesOnLines(
  lines: readonly Line[],
  errors: readonly ShopError[],
  points: readonly (readonly number[])[],
): Misses {
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

/** By index in `held`, one a dimension; null: no length, as it is. */
type Steps = readonly (number | null)[];

/** How often each line is missed, in their order, and any limit at all. */
export interface Misses {
  readonly each: readonly number[];
  readonly any: number;
}

/** One step closer at a time until no more than `most` miss, or nothing can be held closer. */
function closer(
  steps: Steps,
  most: number,
  lines: readonly Line[],
  errorsAt: (steps: Steps) => readonly ShopError[],
  missesAt: (errors: readonly ShopError[]) => Misses,
  mostTries: number,
): Misses & { readonly steps: Steps } {
  let now = steps;
  for (let tries = 1; ; tries++) {
    const errors = errorsAt(now);
    const { each, any } = missesAt(errors);
    const worst = any <= most || tries >= mostTries ? null : offender(lines, errors, each, now);
    if (worst === null) return { steps: now, each, any };
    now = now.map((step, i) => (i === worst ? step! - 1 : step));
  }
}

const withSteps = (errors: readonly ShopError[], steps: Steps, held: readonly number[]): ShopError[] =>
  errors.map((error, i) => {
    const step = steps[i] ?? null;
    return step === null ? error : { ...error, spread: 'even', size: held[step]!, assumed: false };
  });

/** Of the limit missed most often the dimension that moves it most and can be held closer; null: none can. */
function offender(
  lines: readonly Line[],
  errors: readonly ShopError[],
  misses: readonly number[],
  steps: Steps,
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

/** Straight lines are near the truth: a few proofs serve. What is not met then is told as it is. */
const mostProofs = 8;

/**
 * @param prove how many of the points' chairs miss each line's limit, and any, with such errors
 */
export function loosestTolerances(
  lines: readonly Line[],
  errors: readonly ShopError[],
  points: readonly (readonly number[])[],
  held: readonly number[],
  chance: number,
  prove: (errors: readonly ShopError[]) => Misses,
): Loosest {
  const most = mostUnder(chance, points.length);
  const errorsAt = (steps: Steps): ShopError[] => withSteps(errors, steps, held);
  const loosest = errors.map(({ variable }) => (isLength(variable) ? held.length - 1 : null));
  const straight = (tried: readonly ShopError[]): Misses => missesOnLines(lines, tried, points);
  const chosen = closer(loosest, most, lines, errorsAt, straight, Infinity);
  const proved = closer(chosen.steps, most, lines, errorsAt, prove, mostProofs);
  const any = proportionOf(proved.any, points.length);
  const met = proved.any <= most;
  return {
    chance,
    met,
    errors: errorsAt(proved.steps),
    any,
    missedMost: met ? null : missedMost(lines, proved, points.length),
  };
}

function missedMost(lines: readonly Line[], { each }: Misses, of: number): Loosest['missedMost'] {
  const most = Math.max(0, ...each);
  const line = lines[each.indexOf(most)];
  return line === undefined || most === 0 ? null : { id: line.id, missed: proportionOf(most, of) };
}

/** As many of so many as still lie under the chance, their interval too; -1: not even none. */
export function mostUnder(chance: number, of: number): number {
  let most = -1;
  while (most < of && isUnder(proportionOf(most + 1, of), chance)) most++;
  return most;
}
