/** A loop scaled about the origin, mirrored in the y axis, turned about the origin and shifted, in this order. */
import type { Loop, Piece } from '../../src/geometry/piece.js';
import { plus, times, unitAt, type Point } from '../../src/geometry/point.js';

export interface Move {
  readonly scale?: number;
  readonly mirror?: boolean;
  readonly turn?: number;
  readonly shift?: Point;
}

export const movedLoop = (loop: Loop, move: Move): Loop => loop.map((piece) => movedPiece(piece, move));

export const movedPoint = (point: Point, move: Move): Point =>
  plus(movedArrow(point, move), move.shift ?? { x: 0, y: 0 });

function movedArrow({ x, y }: Point, { scale = 1, mirror = false, turn = 0 }: Move): Point {
  const [a, b] = [unitAt(turn), unitAt(turn + Math.PI / 2)];
  return plus(times(a, (mirror ? -x : x) * scale), times(b, y * scale));
}

function movedPiece(piece: Piece, move: Move): Piece {
  const { scale = 1, mirror = false, turn = 0 } = move;
  switch (piece.kind) {
    case 'line':
      return { kind: 'line', from: movedPoint(piece.from, move), to: movedPoint(piece.to, move) };
    case 'arc':
      return {
        kind: 'arc',
        centre: movedPoint(piece.centre, move),
        radius: piece.radius * scale,
        start: (mirror ? Math.PI - piece.start : piece.start) + turn,
        sweep: mirror ? -piece.sweep : piece.sweep,
      };
    case 'ellipse-arc':
      return {
        ...piece,
        centre: movedPoint(piece.centre, move),
        axisA: movedArrow(piece.axisA, move),
        axisB: movedArrow(piece.axisB, move),
      };
    case 'cubic':
      return {
        kind: 'cubic',
        from: movedPoint(piece.from, move),
        control1: movedPoint(piece.control1, move),
        control2: movedPoint(piece.control2, move),
        to: movedPoint(piece.to, move),
      };
  }
}

/** The same loop run the other way. */
export const reversedLoop = (loop: Loop): Loop => loop.map(reversedPiece).toReversed();

function reversedPiece(piece: Piece): Piece {
  switch (piece.kind) {
    case 'line':
      return { kind: 'line', from: piece.to, to: piece.from };
    case 'cubic':
      return { ...piece, from: piece.to, control1: piece.control2, control2: piece.control1, to: piece.from };
    default:
      return { ...piece, start: piece.start + piece.sweep, sweep: -piece.sweep };
  }
}
