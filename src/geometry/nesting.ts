/** Which of a part's loops lie where. Loops go by their index in the list. */
import { loopMoments } from './area-moments.js';
import type { Box } from './box.js';
import { contourOf } from './contour.js';
import type { Loop } from './piece.js';
import type { Point } from './point.js';
import { regionPoints, type RegionPoint } from './regions.js';

export interface DrawnLoop {
  readonly boundary: Loop;
  /** Cut out of one of the solids. */
  readonly hole: boolean;
}

export interface Nesting {
  /** Around each loop. */
  readonly boxes: readonly Box[];
  readonly points: readonly RegionPoint[];
  readonly solids: readonly { readonly loop: number; readonly holes: readonly number[] }[];
  /** Holes that lie in no solid, not wholly at least. */
  readonly strays: readonly number[];
}

/**
 * A hole goes to the smallest solid it lies in, since an island in a hole may have holes of its own; but not to the
 * plug that fills it while there is another. null: they are tangled (`meetingPlaces`).
 */
export function nestingOf(loops: readonly DrawnLoop[]): Nesting | null {
  const boundaries = loops.map(({ boundary }) => boundary);
  const points = regionPoints(boundaries);
  if (points === null) return null;
  const areas = boundaries.map((boundary) => loopMoments(boundary).area);
  const indices = [...loops.keys()];
  const solids = indices.filter((i) => !loops[i]!.hole);
  const bySize = solids.toSorted((a, b) => areas[a]! - areas[b]!);
  const holes = indices
    .filter((i) => loops[i]!.hole)
    .map((hole) => {
      const around = bySize.filter((solid) => liesIn(points, hole, solid));
      return { hole, solid: around.find((solid) => placeOutside(points, solid, hole) !== null) ?? around[0] };
    });
  const holesOf = (owner: number | undefined): number[] =>
    holes.filter(({ solid }) => solid === owner).map(({ hole }) => hole);
  return {
    boxes: boundaries.map((boundary) => contourOf(boundary).box),
    points,
    solids: solids.map((loop) => ({ loop, holes: holesOf(loop) })),
    strays: holesOf(undefined),
  };
}

/** A place in both, and in none of those left out; or null. */
export function sharedPlace(
  points: readonly RegionPoint[],
  a: number,
  b: number,
  leftOut: readonly number[] = [],
): Point | null {
  const shared = points.find(
    ({ inside }) =>
      inside[a] === true && inside[b] === true && leftOut.every((loop) => inside[loop] === false),
  );
  return shared?.point ?? null;
}

/** A place in the first and outside the second, or null. */
export const placeOutside = (points: readonly RegionPoint[], a: number, b: number): Point | null =>
  points.find(({ inside }) => inside[a] === true && inside[b] === false)?.point ?? null;

const liesIn = (points: readonly RegionPoint[], inner: number, outer: number): boolean =>
  sharedPlace(points, inner, outer) !== null && placeOutside(points, inner, outer) === null;
