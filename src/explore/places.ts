/**
 * The places that some sizes may be set to, in whole maker's steps within their ranges. Far is what changes sizes of the
 * design by much of their ranges: the square root of the sum of squares.
 */
import { isStatedWithin, stepsIn, within, type SizeRange } from './size-range.js';

/** Whole steps, one of each size. */
export type Place = readonly number[];

export interface Places {
  /** The design as it stands; of a size that it states outside of the range the end that is nearer. */
  readonly begin: Place;
  readonly ends: readonly (readonly [least: number, greatest: number])[];
  /** Steps from end to end. */
  readonly spans: readonly number[];
  /** SI. Where a search begins a size is left as it is stated, between steps or not. */
  readonly valuesAt: (place: Place) => number[];
  readonly has: (place: Place) => boolean;
  /** From the design as it stands. */
  readonly far: (place: Place) => number;
}

export function placesIn(by: readonly SizeRange[]): Places {
  const ends = by.map(stepsIn);
  const spans = ends.map(([least, greatest]) => Math.max(1, greatest - least));
  const begin = by.map(({ variable, step }, i) => within(Math.round(variable.stated / step), ends[i]!));
  const kept = by.map(isStatedWithin);
  const stated = by.map(({ variable, step }, i) => (kept[i] ? begin[i]! : variable.stated / step));
  return {
    begin,
    ends,
    spans,
    valuesAt: (place) =>
      place.map((steps, i) => (kept[i] && steps === begin[i] ? by[i]!.variable.stated : steps * by[i]!.step)),
    has: (place) => place.every((steps, i) => steps >= ends[i]![0] && steps <= ends[i]![1]),
    far: (place) => Math.hypot(...place.map((steps, i) => (steps - stated[i]!) / spans[i]!)),
  };
}
