/** The same curve run the other way. */
import type { Piece } from './piece.js';

export function reversedPiece(piece: Piece): Piece {
  switch (piece.kind) {
    case 'line':
      return { kind: 'line', from: piece.to, to: piece.from };
    case 'arc':
    case 'ellipse-arc':
      return { ...piece, start: piece.start + piece.sweep, sweep: -piece.sweep };
    case 'cubic':
      return {
        kind: 'cubic',
        from: piece.to,
        control1: piece.control2,
        control2: piece.control1,
        to: piece.from,
      };
  }
}
