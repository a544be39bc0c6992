/**
 * What one piece of a loop adds to the loop's moments about an origin: what it sweeps over, seen from there,
 *
 *     A = ½ ∫ p × dp,   ∫p dA = ⅓ ∫ p (p × dp),   ∫|p|² dA = ¼ ∫ |p|² (p × dp),
 *
 * negative where it runs clockwise. An arc is taken as the triangle on its chord and the segment between them.
 */
import { circularSegment } from './circular-segment.js';
import { gaussLegendre } from '../numeric/gauss-legendre.js';
import { pointOn, type Arc, type Cubic, type EllipseArc, type Piece } from './piece.js';
import { cross, dot, midpoint, minus, plus, times, type Point } from './point.js';

export interface SignedMoments {
  /** ∫dA, m². */
  readonly area: number;
  /** ∫p dA, m³. */
  readonly first: Point;
  /** ∫|p|² dA, m⁴. */
  readonly polar: number;
}

const nothing: SignedMoments = { area: 0, first: { x: 0, y: 0 }, polar: 0 };

export const sumMoments = (moments: readonly SignedMoments[]): SignedMoments =>
  moments.reduce(
    (a, b) => ({ area: a.area + b.area, first: plus(a.first, b.first), polar: a.polar + b.polar }),
    nothing,
  );

/** @param from @param to the piece's ends seen from the origin, the same as its neighbours' to the last digit. */
export function pieceMoments(piece: Piece, origin: Point, from: Point, to: Point): SignedMoments {
  if (piece.kind === 'line') return triangle(from, to);
  if (piece.kind === 'cubic') return cubicSector(piece, origin);
  return sumMoments([triangle(from, to), segmentOnChord(piece, midpoint(from, to))]);
}

/** The origin and two corners. */
function triangle(a: Point, b: Point): SignedMoments {
  const twice = cross(a, b);
  return {
    area: twice / 2,
    first: times(plus(a, b), twice / 6),
    polar: (twice * (dot(a, a) + dot(a, b) + dot(b, b))) / 12,
  };
}

/** An ellipse arc and its chord are the image of a circular segment under (X, Y) → X axisA + Y axisB. */
function segmentOnChord(piece: Arc | EllipseArc, middleOfChord: Point): SignedMoments {
  if (piece.sweep === 0) return nothing;
  const [axisA, axisB] = axesOf(piece);
  const middle = piece.start + piece.sweep / 2;
  const [cos, sin] = [Math.cos(middle), Math.sin(middle)];
  const unit = circularSegment(Math.abs(piece.sweep) / 2);
  const stretch = Math.sign(piece.sweep) * cross(axisA, axisB);
  const area = stretch * unit.area;
  const towardsArc = plus(times(axisA, cos), times(axisB, sin));
  const centroid = plus(middleOfChord, times(towardsArc, unit.height));
  const alongA = unit.squareToChord * cos * cos + unit.alongChord * sin * sin;
  const alongB = unit.squareToChord * sin * sin + unit.alongChord * cos * cos;
  const polar = stretch * (dot(axisA, axisA) * alongA + dot(axisB, axisB) * alongB);
  return { area, first: times(centroid, area), polar: polar + area * dot(centroid, centroid) };
}

function axesOf(piece: Arc | EllipseArc): readonly [Point, Point] {
  if (piece.kind === 'ellipse-arc') return [piece.axisA, piece.axisB];
  return [
    { x: piece.radius, y: 0 },
    { x: 0, y: piece.radius },
  ];
}

/** |p|² (p × p') is a polynomial of degree 11 in the parameter: six nodes are exact. */
const cubicNodes = gaussLegendre(6);

/** What a cubic sweeps over, seen from the origin. */
function cubicSector({ from, control1, control2, to }: Cubic, origin: Point): SignedMoments {
  const local: Cubic = {
    kind: 'cubic',
    from: minus(from, origin),
    control1: minus(control1, origin),
    control2: minus(control2, origin),
    to: minus(to, origin),
  };
  const samples = cubicNodes.map(({ x, weight }) => {
    const u = (1 + x) / 2;
    const p = pointOn(local, u);
    const swept = cross(p, cubicVelocity(local, u)) * (weight / 2);
    return { area: swept / 2, first: times(p, swept / 3), polar: (dot(p, p) * swept) / 4 };
  });
  return sumMoments(samples);
}

/** p'(u) = 3 (v² (b - a) + 2 u v (c - b) + u² (d - c)), v = 1 - u. */
function cubicVelocity({ from, control1, control2, to }: Cubic, u: number): Point {
  const v = 1 - u;
  const ends = plus(times(minus(control1, from), v * v), times(minus(to, control2), u * u));
  return times(plus(ends, times(minus(control2, control1), 2 * u * v)), 3);
}
