/**
 * Ellipse arcs and cubics on fine chords, for questions of inside and outside only; lines and arcs stay exact.
 * A chord over a step h of the parameter leaves its curve by at most h² max|p''| / 8.
 */
import { pointOn, type Arc, type Cubic, type EllipseArc, type Line, type Loop, type Piece } from './piece.js';
import { distance, minus, plus, times, touching, type Point } from './point.js';

export type Simple = Line | Arc;

export const isSimple = (piece: Piece): piece is Simple => piece.kind === 'line' || piece.kind === 'arc';

/** How far chords may leave their curve: five micrometres, a tenth of what counts as touching. */
export const chordTolerance = touching / 10;

/** Pieces of no length are left out. */
export const onChords = (loop: Loop): readonly Simple[] =>
  loop.flatMap((piece) => (isSimple(piece) ? [piece] : chordsOf(piece))).filter(hasLength);

const hasLength = (piece: Simple): boolean =>
  piece.kind === 'line' ? distance(piece.from, piece.to) > 0 : piece.sweep !== 0;

/** Enough for a curve ten times as large as a chair; a larger one gets coarser chords, not more. */
const mostChords = 4000;

function chordsOf(curve: EllipseArc | Cubic): Line[] {
  const wanted = Math.ceil(Math.sqrt(mostBend(curve) / (8 * chordTolerance)));
  const count = Math.min(Math.max(1, wanted), mostChords);
  const places = Array.from({ length: count + 1 }, (_, i) => pointOn(curve, i / count));
  return places.slice(1).map((to, i) => ({ kind: 'line', from: places[i]!, to }));
}

/** An upper bound of |d²p/du²|, u from 0 to 1 along the whole curve. */
function mostBend(curve: EllipseArc | Cubic): number {
  if (curve.kind === 'ellipse-arc') {
    return curve.sweep ** 2 * Math.max(size(curve.axisA), size(curve.axisB));
  }
  const { from, control1, control2, to } = curve;
  return (
    6 *
    Math.max(size(secondDifference(from, control1, control2)), size(secondDifference(control1, control2, to)))
  );
}

const size = (a: Point): number => Math.hypot(a.x, a.y);
const secondDifference = (a: Point, b: Point, c: Point): Point => minus(plus(a, c), times(b, 2));
