/**
 * Ordinary differential equations y' = f(t, y): the pair of orders 5 and 4 of J. R. Dormand and P. J. Prince,
 * A family of embedded Runge-Kutta formulae, J. Comput. Appl. Math. 6 (1980) 19-26 (coefficients from memory; the
 * tests hold them to the conditions of both orders), followed until something ends it.
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
  /** Of each part of the state, the difference of order 5 from order 4. */
  readonly errors: State;
}

/** Times of the stages, and the weights of the stages before each; the last row is the step of order 5. */
const stages: readonly (readonly [number, State])[] = [
  [1 / 5, [1 / 5]],
  [3 / 10, [3 / 40, 9 / 40]],
  [4 / 5, [44 / 45, -56 / 15, 32 / 9]],
  [8 / 9, [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729]],
  [1, [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656]],
  [1, [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84]],
];
const orderDifference: State = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];

/** One step of `h` seconds. */
export function oneStep(rate: Rate, { time, state }: OdePoint, h: number): OdeStep {
  const slopes = [rate(time, state)];
  const along = (weights: State, i: number): number =>
    h * weights.reduce((sum, weight, k) => sum + weight * slopes[k]![i]!, 0);
  let reached = state;
  for (const [share, weights] of stages) {
    reached = state.map((value, i) => value + along(weights, i));
    slopes.push(rate(time + share * h, reached));
  }
  return {
    to: { time: time + h, state: reached },
    errors: state.map((_, i) => along(orderDifference, i)),
  };
}

/** Something that is positive at first and ends the motion where it falls through zero. */
export type End = (point: OdePoint) => number;

export interface Followed {
  readonly point: OdePoint;
  /** Which end it came to: index of the list given; of two within one step the earlier in time. */
  readonly end: number;
}

export interface FollowSettings {
  /** What counts as large, for each part of the state. */
  readonly scale: State;
  /** First step to try, seconds. */
  readonly firstStep: number;
  /** Is shown every point that stands, the last too; the start is not shown. */
  readonly each?: (point: OdePoint) => void;
}

/**
 * Error of one step over the scale. With a few hundred steps to a swing the sum stays near 1e-11, a hundredth of the
 * 1e-9 that is promised, and above rounding by four digits.
 */
const closeness = 1e-12;
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
  { scale, firstStep, each }: FollowSettings,
): Followed {
  let point = start;
  for (let h = firstStep; ;) {
    const { to, errors } = oneStep(rate, point, h);
    const error = Math.max(...errors.map((value, i) => Math.abs(value) / (closeness * scale[i]!)));
    if (!(error <= 1)) {
      if (!(h > smallest * firstStep)) throw new RangeError(`follow: no step serves at ${point.time} s`);
      h *= Number.isFinite(error) ? nextShare(error) : shrink;
      continue;
    }
    const met = firstEnd(rate, point, ends, h, to);
    point = met?.point ?? to;
    each?.(point);
    if (met !== null) return met;
    h *= nextShare(error);
  }
}

/** The error grows with h⁵; 0.9 leaves room, and a step changes at most fivefold at once (common practice). */
const shrink = 0.2;
const nextShare = (error: number): number => Math.min(Math.max(0.9 * error ** -0.2, shrink), 5);

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
    // What is passed by a rounding before the step is met where it begins.
    const share = value(from) > 0 ? rootBetween((part) => value(part === 1 ? to : shortened(part)), 0, 1) : 0;
    if (first === null || share < first.share) first = { share, end };
  });
  const found = first as { share: number; end: number } | null;
  return found && { point: shortened(found.share), end: found.end };
}
