/** How far from its origin a drawing may draw. */
import type { Piece } from '../../geometry/piece.js';
import type { Point } from '../../geometry/point.js';

/** Drawing units. Beyond, a slip of the pen would swallow the decimals of all the rest. */
export const farthest = 1e9;

const near = ({ x, y }: Point): boolean => Math.abs(x) <= farthest && Math.abs(y) <= farthest;

/** All of it, or all that says where it is; no number that is none. */
export function withinReach(piece: Piece): boolean {
  switch (piece.kind) {
    case 'line':
      return near(piece.from) && near(piece.to);
    case 'cubic':
      return near(piece.from) && near(piece.control1) && near(piece.control2) && near(piece.to);
    case 'arc':
      return near(piece.centre) && piece.radius <= farthest && Number.isFinite(piece.start + piece.sweep);
    case 'ellipse-arc':
      return (
        near(piece.centre) &&
        near(piece.axisA) &&
        near(piece.axisB) &&
        Number.isFinite(piece.start + piece.sweep)
      );
  }
}
