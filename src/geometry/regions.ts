/**
 * The regions that loops divide the plane into, each by points in it: beside every piece of every run of every loop. A region that
 * is nowhere wider than counts as touching has none.
 */
import { runsOf, turnsAround } from './beside-runs.js';
import { contourOf } from './contour.js';
import { meetingPlaces } from './loop-meetings.js';
import type { Loop } from './piece.js';
import type { Point } from './point.js';

export interface RegionPoint {
  readonly point: Point;
  /** For each loop whether it holds the point; null on its boundary, where a rounding may decide. */
  readonly inside: readonly (boolean | null)[];
}

/** null: they are tangled (`meetingPlaces`). */
export function regionPoints(loops: readonly Loop[]): RegionPoint[] | null {
  const contours = loops.map(contourOf);
  const places = meetingPlaces(contours);
  if (places === null) return null;
  const runs = contours.flatMap((contour, i) => runsOf(contour, places[i]!));
  return runs
    .flatMap(({ beside }) => beside)
    .map((point) => ({ point, inside: contours.map((contour) => holds(turnsAround(contour, point))) }));
}

const holds = (turns: number | null): boolean | null => (turns === null ? null : turns !== 0);
