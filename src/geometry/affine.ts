/**
 * A map of the plane that keeps lines straight:
 *
 *     x' = a x + c y + e
 *     y' = b x + d y + f
 */
import { throughPlaces, type Arc, type EllipseArc, type Piece } from './piece.js';
import type { Point } from './point.js';

export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const unchanged: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

export const shifting = (x: number, y: number): Affine => ({ ...unchanged, e: x, f: y });

export const scaling = (x: number, y: number): Affine => ({ ...unchanged, a: x, d: y });

/** About the origin, radians from +x towards +y. */
export function turning(angle: number): Affine {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { ...unchanged, a: cos, b: sin, c: -sin, d: cos };
}

/** The first, then the second. */
export const thenMapped = (first: Affine, second: Affine): Affine => ({
  a: second.a * first.a + second.c * first.b,
  b: second.b * first.a + second.d * first.b,
  c: second.a * first.c + second.c * first.d,
  d: second.b * first.c + second.d * first.d,
  e: second.a * first.e + second.c * first.f + second.e,
  f: second.b * first.e + second.d * first.f + second.f,
});

export const mappedPoint = ({ x, y }: Point, { a, b, c, d, e, f }: Affine): Point => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

/** A direction with its length: without e and f. */
const mappedWay = (way: Point, map: Affine): Point => mappedPoint(way, { ...map, e: 0, f: 0 });

/** Axes that differ in length by less, of their length, and lean against each other by less, are a circle’s. */
const alike = 1e-12;

/** The same curve mapped; an arc stays one where lengths are scaled alike. */
export function mappedPiece(piece: Piece, map: Affine): Piece {
  switch (piece.kind) {
    case 'line':
    case 'cubic':
      return throughPlaces(piece, (point) => mappedPoint(point, map));
    case 'arc':
      return mappedEllipse(asEllipse(piece), map);
    case 'ellipse-arc':
      return mappedEllipse(piece, map);
  }
}

const asEllipse = ({ centre, radius, start, sweep }: Arc): EllipseArc => ({
  ...{ kind: 'ellipse-arc', centre, start, sweep },
  axisA: { x: radius, y: 0 },
  axisB: { x: 0, y: radius },
});

/**
 * Axes map onto conjugate half diameters P, Q of the image, p(t) = P cos t + Q sin t. Square to each other they are after
 * turning t back by τ (from d|p|²/dt = 0):
 *
 *     tan 2τ = 2 P·Q / (P·P - Q·Q)        A = P cos τ + Q sin τ,  B = Q cos τ - P sin τ
 */
function mappedEllipse({ centre, axisA, axisB, start, sweep }: EllipseArc, map: Affine): Piece {
  const [p, q] = [mappedWay(axisA, map), mappedWay(axisB, map)];
  const middle = mappedPoint(centre, map);
  const [pp, qq, pq] = [p.x * p.x + p.y * p.y, q.x * q.x + q.y * q.y, p.x * q.x + p.y * q.y];
  if (Math.abs(pp - qq) <= alike * pp && Math.abs(pq) <= alike * pp)
    return circular(middle, p, q, start, sweep);
  const tau = Math.atan2(2 * pq, pp - qq) / 2;
  const [cos, sin] = [Math.cos(tau), Math.sin(tau)];
  return {
    kind: 'ellipse-arc',
    centre: middle,
    axisA: { x: p.x * cos + q.x * sin, y: p.y * cos + q.y * sin },
    axisB: { x: q.x * cos - p.x * sin, y: q.y * cos - p.y * sin },
    start: start - tau,
    sweep,
  };
}

/** A mirrored circle runs the other way. */
function circular(centre: Point, p: Point, q: Point, start: number, sweep: number): Arc {
  const way = p.x * q.y - p.y * q.x < 0 ? -1 : 1;
  return {
    kind: 'arc',
    centre,
    radius: Math.hypot(p.x, p.y),
    start: Math.atan2(p.y, p.x) + way * start,
    sweep: way * sweep,
  };
}
