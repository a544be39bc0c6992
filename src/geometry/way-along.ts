/** How far it is along straight lines from place to place. */
import { cross, distance, dot, minus, type Point } from './point.js';

/** From the first place to each. */
export function waysAlong(places: readonly Point[]): number[] {
  let along = 0;
  return places.map((place, i) => (along += i === 0 ? 0 : distance(places[i - 1]!, place)));
}

/** To the last. */
export const lengthAlong = (places: readonly Point[]): number => waysAlong(places).at(-1)!;

/** By how much the way turns in b from a on to c, radians, positive to the left. */
export function turnIn(b: Point, a: Point, c: Point): number {
  const [before, after] = [minus(b, a), minus(c, b)];
  return Math.atan2(cross(before, after), dot(before, after));
}
