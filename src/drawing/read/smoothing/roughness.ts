/**
 * How far places on a curve lie off it by rounding or by hand: each is held against the circle through three others beside it,
 * and against a cubic through four. On an arc the one is true, on any curve that is drawn finely the other: the less counts.
 * Half of all places say how rough the drawing is; those at corners and joints do not.
 */
import { circleThrough } from '../../../geometry/circle-through.js';
import { distance, dot, minus, plus, times, type Point } from '../../../geometry/point.js';

/** Of a deviation that three or four rough neighbours show, this share is the place’s own: 1/√(1 + 1 + 1/9 + 1/9). */
const ownShare = 0.67;
/** The median of what errors come to is 0.67 of their standard deviation; of hundreds one is four times that, and it was the lesser of two. */
const mostOverMedian = 8;

/** Metres: what is left of a curve of a metre’s size when numbers of sixteen digits are added up. */
const leastRoughness = 1e-11;

/** What a place may be off is about so many standard deviations of what they are off. */
export const slackOverRoughness = 4;

/** What a place may be off the curve it was put on, metres. */
export function slackOf(places: readonly Point[]): number {
  const offs = places.slice(2, -2).map((_, i) => Math.min(offCircle(places, i + 2), offCubic(places, i + 2)));
  const median = offs.sort((a, b) => a - b)[offs.length >> 1] ?? 0;
  return leastRoughness + mostOverMedian * ownShare * median;
}

function offCircle(places: readonly Point[], i: number): number {
  const [before, place, after, next] = [places[i - 1]!, places[i]!, places[i + 1]!, places[i + 2]!];
  const circle = circleThrough(before, after, next);
  if (circle === null || circle.radius > asGoodAsLine) return offLine(before, place, after);
  return Math.abs(distance(place, circle.centre) - circle.radius);
}

/** Metres: of a larger circle the distances are lost in rounding, and so is what it bends. */
const asGoodAsLine = 1e4;

/** Square to the way from one neighbour to the other: where along the curve a place lies is free. */
function offCubic(places: readonly Point[], i: number): number {
  const steps = [-2, -1, 1, 2];
  const around = steps.map((k) => places[i + k]!);
  const ways = steps.map((k) => wayTo(places, i, k));
  const through = around.map((place, k) => times(place, weight(ways, k))).reduce(plus);
  return offLine(around[1]!, plus(around[1]!, minus(places[i]!, through)), around[2]!);
}

/** Lagrange’s weight at 0 of the k-th of some places of a parameter. */
const weight = (at: readonly number[], k: number): number =>
  at.reduce((product, other, j) => (j === k ? product : (product * other) / (other - at[k]!)), 1);

/** Along the lines from a place to the k-th after it; negative to those before. */
function wayTo(places: readonly Point[], i: number, k: number): number {
  const step = Math.sign(k);
  let way = 0;
  for (let j = i; j !== i + k; j += step) way += step * distance(places[j]!, places[j + step]!);
  return way;
}

/** How far a place lies beside the line from a to b. */
function offLine(a: Point, place: Point, b: Point): number {
  const way = minus(b, a);
  const square = { x: -way.y, y: way.x };
  return Math.abs(dot(minus(place, a), square)) / Math.hypot(way.x, way.y);
}
