/**
 * Ordinary differential equations y' = f(t, y): the pair of orders 8 and 7 of E. Fehlberg, Classical fifth-, sixth-,
 * seventh-, and eighth-order Runge-Kutta formulas with stepsize control, NASA TR R-287 (1968) (coefficients from memory;
 * the tests hold them to both orders), followed until something ends it.
 */
import { rootBetween } from './root.js';

export type State = readonly number[];

/** y' at a time and a state. */
export type Rate = (time: number, state: State) => State;

export interface OdePoint {
  readonly time: number;
  readonly state: State;
}

export interface OdeStep {
  readonly to: OdePoint;
  /** Of each part of the state, the difference of order 8 from order 7. */
  readonly errors: State;
}

/** Times of the stages, and the weights of the stages before each. */
// prettier-ignore
const stages: readonly (readonly [number, State])[] = [
  [0, []],
  [2 / 27, [2 / 27]],
  [1 / 9, [1 / 36, 1 / 12]],
  [1 / 6, [1 / 24, 0, 1 / 8]],
  [5 / 12, [5 / 12, 0, -25 / 16, 25 / 16]],
  [1 / 2, [1 / 20, 0, 0, 1 / 4, 1 / 5]],
  [5 / 6, [-25 / 108, 0, 0, 125 / 108, -65 / 27, 125 / 54]],
  [1 / 6, [31 / 300, 0, 0, 0, 61 / 225, -2 / 9, 13 / 900]],
  [2 / 3, [2, 0, 0, -53 / 6, 704 / 45, -107 / 9, 67 / 90, 3]],
  [1 / 3, [-91 / 108, 0, 0, 23 / 108, -976 / 135, 311 / 54, -19 / 60, 17 / 6, -1 / 12]],
  [1, [2383 / 4100, 0, 0, -341 / 164, 4496 / 1025, -301 / 82, 2133 / 4100, 45 / 82, 45 / 164, 18 / 41]],
  [0, [3 / 205, 0, 0, 0, 0, -6 / 41, -3 / 205, -3 / 41, 3 / 41, 6 / 41, 0]],
  [1, [-1777 / 4100, 0, 0, -341 / 164, 4496 / 1025, -289 / 82, 2193 / 4100, 51 / 82, 33 / 164, 12 / 41, 0, 1]],
];
/** The step of order 8, and its difference from that of order 7: 41/840 of the first and eleventh less the last two. */
const order8: State = [0, 0, 0, 0, 0, 34 / 105, 9 / 35, 9 / 35, 9 / 280, 9 / 280, 0, 41 / 840, 41 / 840];
const orderDifference: State = [-41 / 840, 0, 0, 0, 0, 0, 0, 0, 0, 0, -41 / 840, 41 / 840, 41 / 840];

/** Of each stage the stages before it that count, with their weights. */
interface Row {
  readonly share: number;
  readonly from: Int8Array;
  readonly weights: Float64Array;
}

function rowOf(share: number, weights: State): Row {
  const from = weights.flatMap((weight, k) => (weight === 0 ? [] : [k]));
  return { share, from: Int8Array.from(from), weights: Float64Array.from(from, (k) => weights[k]!) };
}

const rows = stages.map(([share, weights]) => rowOf(share, weights));
const last = rowOf(1, order8);
const difference = rowOf(1, orderDifference);

/** One step of `h` seconds. */
export function oneStep(rate: Rate, { time, state }: OdePoint, h: number): OdeStep {
  const slopes: State[] = [];
  for (const row of rows)
    slopes.push(rate(time + row.share * h, row.from.length === 0 ? state : moved(state, h, row, slopes)));
  return {
    to: { time: time + h, state: moved(state, h, last, slopes) },
    errors: moved(zeros[state.length] ?? state.map(() => 0), h, difference, slopes),
  };
}

const zeros: readonly State[] = [[], [0], [0, 0], [0, 0, 0]];

/** y + h Σ wₖ fₖ. */
function moved(state: State, h: number, { from, weights }: Row, slopes: readonly State[]): State {
  const next: number[] = [];
  for (let i = 0; i < state.length; i++) {
    let sum = 0;
    for (let k = 0; k < from.length; k++) sum += weights[k]! * slopes[from[k]!]![i]!;
    next.push(state[i]! + h * sum);
  }
  return next;
}

/** Something that is positive at first and ends the motion where it falls through zero. */
export type End = (point: OdePoint) => number;

export interface Followed {
  readonly point: OdePoint;
  /** Which end it came to: index of the list given; of two within one step the earlier in time. null: its time was up. */
  readonly end: number | null;
}

export interface FollowSettings {
  /** What counts as large, for each part of the state. */
  readonly scale: State;
  /** First step to try, seconds. */
  readonly firstStep: number;
  /** The longest step, seconds. */
  readonly longestStep?: number;
  /** When it ends at the latest; the last step is as short as it takes. */
  readonly until?: number;
  /** Error of one step over the scale. */
  readonly closeness?: number;
  /** Is shown every point that stands, the last too; the start is not shown. */
  readonly each?: (point: OdePoint) => void;
}

/**
 * Error of one step over the scale. With a few dozen steps to a swing the sum stays near 1e-11, a hundredth of the
 * 1e-9 that is promised, and above rounding by four digits.
 */
const closest = 1e-12;
/** A step this small against the time scale of the first means that the rate is not smooth: nothing is gained below. */
const smallest = 1e-13;

/**
 * Follows the motion until the first end. Ends are met by retaking the step, shorter, so they are as exact as a step.
 * @throws RangeError when no step is small enough, or the rate is not a number
 */
export function follow(
  rate: Rate,
  start: OdePoint,
  ends: readonly End[],
  settings: FollowSettings,
): Followed {
  const { firstStep, longestStep = Infinity, until = Infinity, each } = settings;
  let point = start;
  for (let h = Math.min(firstStep, longestStep); point.time < until;) {
    const last = point.time + h >= until;
    const tried = last ? until - point.time : h;
    const { to, errors } = oneStep(rate, point, tried);
    const error = largest(errors, settings);
    if (!(error <= 1)) {
      if (!(tried > smallest * firstStep)) throw new RangeError(`follow: no step serves at ${point.time} s`);
      h = tried * (Number.isFinite(error) ? nextShare(error) : shrink);
      continue;
    }
    const met = firstEnd(rate, point, ends, tried, to);
    // Its time is up on the second, not a rounding beside it.
    point = met?.point ?? (last ? { ...to, time: until } : to);
    each?.(point);
    if (met !== null) return met;
    h = Math.min(h * nextShare(error), longestStep);
  }
  return { point, end: null };
}

/** Of all parts of the state, over what is allowed. */
function largest(errors: State, { scale, closeness = closest }: FollowSettings): number {
  let most = 0;
  for (let i = 0; i < errors.length; i++) {
    const error = Math.abs(errors[i]!) / (closeness * scale[i]!);
    if (!(error <= most)) most = error;
  }
  return most;
}

/** The error grows with h⁸; 0.9 leaves room, and a step changes at most fivefold at once (common practice). */
const shrink = 0.2;
const nextShare = (error: number): number => Math.min(Math.max(0.9 * error ** -0.125, shrink), 5);

function firstEnd(
  rate: Rate,
  from: OdePoint,
  ends: readonly End[],
  h: number,
  to: OdePoint,
): Followed | null {
  const shortened = (share: number): OdePoint => oneStep(rate, from, share * h).to;
  let first: { share: number; end: number } | null = null;
  ends.forEach((value, end) => {
    if (!(value(to) < 0)) return;
    const at = (part: number): number => value(part === 1 ? to : shortened(part));
    const set = value(from) > 0 ? 0 : setsOff(at);
    // What is passed by a rounding before the step is met where it begins.
    const share = set === null ? 0 : rootBetween(at, set, 1);
    if (first === null || share < first.share) first = { share, end };
  });
  const found = first as { share: number; end: number } | null;
  return found && { point: shortened(found.share), end: found.end };
}

/** What begins at zero may rise before it falls within the same step: the first halving of it that is seen to rise. */
function setsOff(at: (part: number) => number): number | null {
  for (let part = 1 / 2; part > briefest; part /= 2) if (at(part) > 0) return part;
  return null;
}

/** A rise shorter than this share of a step is rounding. */
const briefest = 1e-6;
