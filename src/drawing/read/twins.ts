/** Curves that are drawn twice, one on the other. */
import { fullTurn } from '../../geometry/lean.js';
import { endOf, pointOn, startOf, type Piece } from '../../geometry/piece.js';
import { distance, plus, times, type Point } from '../../geometry/point.js';
import type { DrawnCurve } from './drawn.js';
import { placeGrid } from './place-grid.js';

/** Each curve once, the first of those that are the same, whichever way and from wherever they are drawn. */
export function withoutTwins(curves: readonly DrawnCurve[], within: number): DrawnCurve[] {
  const seen = placeGrid<DrawnCurve>(within);
  return curves.filter((curve) => {
    const middle = middleOf(curve.pieces);
    const twin = seen.near(middle, (other) => areTwins(curve.pieces, other.pieces, within));
    if (twin !== undefined) return false;
    seen.add(middle, curve);
    return true;
  });
}

/** The mean of the middles of its pieces, of whole circles the centre: the same from wherever it begins. */
const middleOf = (pieces: readonly Piece[]): Point =>
  times(pieces.map(heartOf).reduce(plus), 1 / pieces.length);

const isWhole = (piece: Piece): boolean =>
  (piece.kind === 'arc' || piece.kind === 'ellipse-arc') && Math.abs(piece.sweep) > fullTurn - 1e-9;

const heartOf = (piece: Piece): Point =>
  isWhole(piece) && 'centre' in piece ? piece.centre : pointOn(piece, 0.5);

function areTwins(a: readonly Piece[], b: readonly Piece[], within: number): boolean {
  return a.length === b.length && a.every((piece) => b.some((other) => areAlike(piece, other, within)));
}

function areAlike(a: Piece, b: Piece, within: number): boolean {
  const near = (p: Point, q: Point): boolean => distance(p, q) <= within;
  if (!near(heartOf(a), heartOf(b))) return false;
  if (isWhole(a) || isWhole(b)) return isWhole(a) && isWhole(b) && liesOn(a, b, within);
  const [from, to, start, end] = [startOf(a), endOf(a), startOf(b), endOf(b)];
  return (near(from, start) && near(to, end)) || (near(from, end) && near(to, start));
}

/** Of two whole ones about a centre: the same distances across. */
function liesOn(a: Piece, b: Piece, within: number): boolean {
  const reach = (piece: Piece): [number, number] => {
    if (piece.kind === 'arc') return [piece.radius, piece.radius];
    if (piece.kind !== 'ellipse-arc') return [0, 0];
    return [Math.hypot(piece.axisA.x, piece.axisB.x), Math.hypot(piece.axisA.y, piece.axisB.y)];
  };
  return [0, 1].every((i) => Math.abs(reach(a)[i]! - reach(b)[i]!) <= within);
}
