/** Lines and arcs as shapes of @flatten-js/core, an independent library of plane geometry, for it to judge. */
import Flatten from '@flatten-js/core';
import type { Loop, Piece } from '../../src/geometry/piece.js';
import type { Point } from '../../src/geometry/point.js';

export const flattenPoint = ({ x, y }: Point): Flatten.Point => new Flatten.Point(x, y);

export function flattenShape(piece: Piece): Flatten.Segment | Flatten.Arc {
  if (piece.kind === 'line') return new Flatten.Segment(flattenPoint(piece.from), flattenPoint(piece.to));
  if (piece.kind !== 'arc') throw new RangeError(`flattenShape: a ${piece.kind}`);
  const { centre, radius, start, sweep } = piece;
  return new Flatten.Arc(flattenPoint(centre), radius, start, start + sweep, sweep > 0);
}

export function flattenPolygon(...loops: Loop[]): Flatten.Polygon {
  const polygon = new Flatten.Polygon();
  for (const loop of loops) polygon.addFace(loop.map(flattenShape));
  return polygon;
}
