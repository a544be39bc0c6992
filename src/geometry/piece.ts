/**
 * The pieces an outline is made of, kept as drawn: never as a polyline.
 * Angles in radians, counter-clockwise from +x; a positive sweep runs counter-clockwise.
 */
import { plus, times, unitAt, type Point } from './point.js';

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** p(t) = centre + radius (cos t, sin t), t from `start` to `start + sweep`. */
export interface Arc {
  readonly kind: 'arc';
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

/** p(t) = centre + axisA cos t + axisB sin t, t from `start` to `start + sweep`; axisA is square to axisB. */
export interface EllipseArc {
  readonly kind: 'ellipse-arc';
  readonly centre: Point;
  readonly axisA: Point;
  readonly axisB: Point;
  readonly start: number;
  readonly sweep: number;
}

/** Bézier cubic with its two control points. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly control1: Point;
  readonly control2: Point;
  readonly to: Point;
}

export type Piece = Line | Arc | EllipseArc | Cubic;

/** A closed chain of pieces: each starts where the one before ends. */
export type Loop = readonly Piece[];

/** One solid with the holes cut out of it. */
export interface Solid {
  readonly boundary: Loop;
  readonly holes: readonly Loop[];
}

/** The side view of a part: solids that do not overlap. */
export type Outline = readonly Solid[];

/** The place on a piece at u, from 0 (its start) to 1 (its end). */
export function pointOn(piece: Piece, u: number): Point {
  switch (piece.kind) {
    case 'line':
      return plus(times(piece.from, 1 - u), times(piece.to, u));
    case 'arc':
      return plus(piece.centre, times(unitAt(piece.start + u * piece.sweep), piece.radius));
    case 'ellipse-arc': {
      const t = piece.start + u * piece.sweep;
      return plus(piece.centre, plus(times(piece.axisA, Math.cos(t)), times(piece.axisB, Math.sin(t))));
    }
    case 'cubic': {
      const v = 1 - u;
      return plus(
        plus(times(piece.from, v * v * v), times(piece.control1, 3 * v * v * u)),
        plus(times(piece.control2, 3 * v * u * u), times(piece.to, u * u * u)),
      );
    }
  }
}

export const startOf = (piece: Piece): Point =>
  piece.kind === 'line' || piece.kind === 'cubic' ? piece.from : pointOn(piece, 0);
export const endOf = (piece: Piece): Point =>
  piece.kind === 'line' || piece.kind === 'cubic' ? piece.to : pointOn(piece, 1);

/** Straight lines from corner to corner and back to the first. */
export const polygon = (corners: readonly Point[]): Loop =>
  corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % corners.length]! }));

/** The same through other places: what a map that keeps lines straight makes of it. */
export const throughPlaces = (piece: Line | Cubic, at: (place: Point) => Point): Line | Cubic =>
  piece.kind === 'line'
    ? { kind: 'line', from: at(piece.from), to: at(piece.to) }
    : {
        kind: 'cubic',
        from: at(piece.from),
        control1: at(piece.control1),
        control2: at(piece.control2),
        to: at(piece.to),
      };
