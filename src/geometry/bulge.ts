/** An arc told by its ends and its bulge, tan(sweep / 4); positive counter-clockwise, 0 a straight line. */
import type { Piece } from './piece.js';
import { minus, midpoint, plus, times, type Point } from './point.js';

/** The centre lies on the bisector of the chord, (1 - b²) / (4 b) of the chord to its left. */
export function bulgedPiece(from: Point, to: Point, bulge: number): Piece {
  if (bulge === 0) return { kind: 'line', from, to };
  const chord = minus(to, from);
  const left = { x: -chord.y, y: chord.x };
  const centre = plus(midpoint(from, to), times(left, (1 - bulge ** 2) / (4 * bulge)));
  const radius = (Math.hypot(chord.x, chord.y) * (1 + bulge ** 2)) / (4 * Math.abs(bulge));
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return { kind: 'arc', centre, radius, start, sweep: 4 * Math.atan(bulge) };
}
