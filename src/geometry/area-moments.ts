/**
 * Area, centroid and polar second moment of loops and outlines by Green's theorem, exact for every kind of piece. They
 * are summed about a corner of the loop itself, so a part far from the frame's origin loses no digits.
 */
import { pieceMoments, sumMoments, type SignedMoments } from './piece-moments.js';
import { startOf, type Loop, type Outline } from './piece.js';
import { distance, dot, minus, plus, times, type Point } from './point.js';

export interface AreaMoments {
  /** m², positive. */
  readonly area: number;
  readonly centroid: Point;
  /** Polar second moment about the centroid, m⁴. */
  readonly polar: number;
}

/**
 * Positive whichever way the loop runs.
 * @throws RangeError when it encloses nothing.
 */
export function loopMoments(loop: Loop): AreaMoments {
  const { area, first, polar } = signedMoments(loop);
  if (!(Math.abs(area) > 0 && Number.isFinite(polar))) {
    throw new RangeError(`loopMoments: the loop encloses ${area} m², polar moment ${polar} m⁴`);
  }
  const fromCorner = times(first, 1 / area);
  return {
    area: Math.abs(area),
    centroid: plus(startOf(loop[0]!), fromCorner),
    polar: Math.abs(polar - area * dot(fromCorner, fromCorner)),
  };
}

/** Positive for a loop that runs counter-clockwise. */
export const signedArea = (loop: Loop): number => signedMoments(loop).area;

/**
 * Solids added, holes subtracted; J = Σ ±(J_i + A_i |c_i - c|²) (parallel axes).
 * @throws RangeError when nothing is left.
 */
export function outlineMoments(outline: Outline): AreaMoments {
  const parts = outline.flatMap(({ boundary, holes }) => [
    { ...loopMoments(boundary), sign: 1 },
    ...holes.map((hole) => ({ ...loopMoments(hole), sign: -1 })),
  ]);
  const area = parts.reduce((sum, part) => sum + part.sign * part.area, 0);
  if (!(area > 0)) throw new RangeError(`outlineMoments: ${area} m² are left`);
  const near = parts[0]!.centroid;
  const first = parts
    .map(({ sign, area, centroid }) => times(minus(centroid, near), sign * area))
    .reduce(plus);
  const centroid = plus(near, times(first, 1 / area));
  const polar = parts.reduce(
    (sum, part) => sum + part.sign * (part.polar + part.area * distance(part.centroid, centroid) ** 2),
    0,
  );
  return { area, centroid, polar };
}

function signedMoments(loop: Loop): SignedMoments {
  if (loop.length === 0) throw new RangeError('signedMoments: a loop without pieces');
  const origin = startOf(loop[0]!);
  const corners = loop.map((piece) => minus(startOf(piece), origin));
  return sumMoments(
    loop.map((piece, i) => pieceMoments(piece, origin, corners[i]!, corners[(i + 1) % loop.length]!)),
  );
}
