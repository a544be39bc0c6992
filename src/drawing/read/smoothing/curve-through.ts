/**
 * A smooth curve through places that are on no circle: splines of one span, of two, of four …. Fewer spans let through less
 * of what rounding does to the curvature, more follow its changes: where two such curves agree best tells how well the
 * radius is known.
 */
import { bSplineAt, bSplinePieces, rateOf, type BSpline } from '../../../geometry/b-spline.js';
import { fewestFor, fittedSpline } from '../../../geometry/fitted-spline.js';
import type { Piece } from '../../../geometry/piece.js';
import { cross, dot, minus, times, type Point } from '../../../geometry/point.js';
import { lengthAlong, turnIn, waysAlong } from '../../../geometry/way-along.js';
import { leastCurvature } from './rounds.js';

export interface CurveThrough {
  readonly pieces: readonly Piece[];
  /** The farthest place from it, metres. */
  readonly off: number;
  /** By what share of itself the radius may be wrong. */
  readonly change: number;
}

/** More spans than a runner with a wave every inch has use for. */
const mostSpans = 64;
/** Of its size the cubics may be off: their radius is then off by a fifth of what may be at most. */
const closeness = 1e-8;

/**
 * @param roughness standard deviation of what places are off, metres
 * @returns null for places that are too few, or decide no curve
 */
export function curveThrough(places: readonly Point[], roughness: number): CurveThrough | null {
  let best: { spline: BSpline; change: number } | null = null;
  let coarser = fittedSpline(places, 1);
  for (let spans = 2; spans <= mostSpans && fewestFor(spans) <= places.length; spans *= 2) {
    const finer = fittedSpline(places, spans);
    if (coarser === null || finer === null) return null;
    // Two of the same places may agree by chance: what their roughness alone may do counts as well.
    const change = Math.max(furthestApart(coarser, finer, 2 * spans), endsRoughBy(places, spans, roughness));
    if (best === null || change < best.change) best = { spline: finer, change };
    coarser = finer;
  }
  if (best === null) return null;
  const pieces = bSplinePieces(best.spline, closeness);
  return { pieces, off: offSpline(places, best.spline), change: best.change };
}

/**
 * Of a polynomial of degree five through places rough by σ, at an end of its length l, p″ is rough by
 *
 *     σ/√n (2/l)² √(Σ (2k + 1) P_k″(1)²), k = 2 to 5, of Legendre’s polynomials P_k″(1) = (k - 1) k (k + 1) (k + 2)/8
 *
 * and of a span of a spline, whose end is held, a third of that or less: as a share of the mean curvature of them all.
 */
function endsRoughBy(places: readonly Point[], spans: number, roughness: number): number {
  const length = lengthAlong(places);
  const span = length / spans;
  const second = ((atEnd * roughness) / Math.sqrt(places.length / spans)) * (2 / span) ** 2;
  return (heldEnd * second) / Math.max(turnOf(places) / length, leastCurvature);
}

/** Of places rough by chance it came to 0.16 to 0.36 for 2 to 16 spans of 8 to 50 places. */
const heldEnd = 1 / 3;

const atEnd = Math.sqrt(5 * 3 ** 2 + 7 * 15 ** 2 + 9 * 45 ** 2 + 11 * 105 ** 2);

/** Of the lines from place to place, each way, radians. */
function turnOf(places: readonly Point[]): number {
  const turns = places.slice(2).map((to, i) => turnIn(places[i + 1]!, places[i]!, to));
  return turns.reduce((sum, turn) => sum + Math.abs(turn), 0);
}

/** The largest difference of their curvature at even steps along both, as a share of it. */
function furthestApart(one: BSpline, other: BSpline, steps: number): number {
  const [a, b] = [curvatureAlong(one), curvatureAlong(other)];
  let most = 0;
  for (let i = 0; i <= steps; i++) {
    const [here, there] = [a(i / steps), b(i / steps)];
    const share = Math.abs(here - there) / Math.max(Math.abs(here), Math.abs(there), leastCurvature);
    most = Math.max(most, share);
  }
  return most;
}

/** p′ × p″ / |p′|³, positive where it bends to the left. */
function curvatureAlong(spline: BSpline): (at: number) => number {
  const rate = rateOf(spline);
  const second = rateOf(rate);
  return (at) => {
    const velocity = bSplineAt(rate, at);
    return cross(velocity, bSplineAt(second, at)) / Math.hypot(velocity.x, velocity.y) ** 3;
  };
}

/** Of places in order, from which a spline of the same way along them hardly differs: each from the line along it there. */
function offSpline(places: readonly Point[], spline: BSpline): number {
  const rate = rateOf(spline);
  const ways = waysAlong(places);
  return places.reduce((most, place, i) => {
    const along = ways[i]! / ways.at(-1)!;
    const way = minus(place, bSplineAt(spline, along));
    const velocity = bSplineAt(rate, along);
    const square = minus(way, times(velocity, dot(way, velocity) / dot(velocity, velocity)));
    return Math.max(most, Math.hypot(square.x, square.y));
  }, 0);
}
