/**
 * The pieces that SVG path data draws, in metres, y as written. Lines, arcs and cubics stay what they are; a quadratic
 * becomes the cubic that is the same curve.
 */
import type { Built } from '../flaw.js';
import type { Piece } from '../piece.js';
import { distance, plus, samePlace, times, type Point } from '../point.js';
import { readPathData, type Command, type SubpathData } from './path-data.js';
import { svgArc } from './svg-arc.js';

export interface Subpath {
  readonly pieces: readonly Piece[];
  /** By Z; where that draws a line, it is the last piece. */
  readonly closed: boolean;
  /** Where it starts in the data, characters from 0. */
  readonly at: number;
}

/** Subpaths in order; those that draw nothing are left out. */
export function pathPieces(data: string, unit: number): Built<{ subpaths: readonly Subpath[] }> {
  const read = readPathData(data);
  if (!read.ok) return read;
  const subpaths = read.subpaths.map((subpath) => drawn(subpath, unit));
  return { ok: true, subpaths: subpaths.filter(({ pieces }) => pieces.length > 0) };
}

function drawn({ commands, at }: SubpathData, unit: number): Subpath {
  const start = times(commands[0]!.from, unit);
  const pieces: Piece[] = [];
  for (const command of commands) {
    const piece = pieceOf(command, start, unit);
    if (piece !== null) pieces.push(piece);
  }
  return { pieces, closed: commands.at(-1)!.segment[0] === 'Z', at };
}

/** Null where nothing is drawn. */
function pieceOf({ segment, from: written }: Command, start: Point, unit: number): Piece | null {
  const from = times(written, unit);
  switch (segment[0]) {
    case 'L':
      return line(from, place(segment[1], segment[2], unit));
    case 'H':
      return line(from, place(segment[1], written.y, unit));
    case 'V':
      return line(from, place(written.x, segment[1], unit));
    case 'Z': // Relative commands come back to the start but for rounding.
      return distance(from, start) > samePlace ? line(from, start) : null;
    case 'C': {
      const control1 = place(segment[1], segment[2], unit);
      const control2 = place(segment[3], segment[4], unit);
      return { kind: 'cubic', from, control1, control2, to: place(segment[5], segment[6], unit) };
    }
    case 'Q':
      return quadratic(from, place(segment[1], segment[2], unit), place(segment[3], segment[4], unit));
    case 'A': {
      const [, rx, ry, turnDeg, large, counterClockwise, x, y] = segment;
      const to = place(x, y, unit);
      const ellipse = { radiusX: rx * unit, radiusY: ry * unit, turn: (turnDeg * Math.PI) / 180 };
      const way = { large: large === 1, counterClockwise: counterClockwise === 1 };
      return distance(from, to) > 0 ? svgArc({ from, to, ...ellipse, ...way }) : null;
    }
    default:
      return null;
  }
}

const place = (x: number, y: number, unit: number): Point => ({ x: x * unit, y: y * unit });

const line = (from: Point, to: Point): Piece | null =>
  distance(from, to) > 0 ? { kind: 'line', from, to } : null;

/** Degree elevation: each control lies two thirds of the way from its end to the quadratic's control. */
function quadratic(from: Point, control: Point, to: Point): Piece {
  const towards = (end: Point): Point => plus(times(end, 1 / 3), times(control, 2 / 3));
  return { kind: 'cubic', from, control1: towards(from), control2: towards(to), to };
}
