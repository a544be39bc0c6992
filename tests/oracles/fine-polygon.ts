/** Brute force: a loop as a fine inscribed polygon, its moments by the shoelace formulas, and how far off they may be. */
import type { AreaMoments } from '../../src/geometry/area-moments.js';
import { endOf, pointOn, startOf, type Loop, type Piece } from '../../src/geometry/piece.js';
import { cross, distance, dot, minus, plus, times, type Point } from '../../src/geometry/point.js';

export interface RoughMoments extends AreaMoments {
  /** |error| of area, m²; of A times the centroid, m³; of the polar moment, m⁴: all at most this times extent^k. */
  readonly areaError: number;
  readonly extent: number;
}

/** Each curve on `count` chords. */
export function finePolygon(loop: Loop, count: number): RoughMoments {
  const corners = loop.flatMap((piece) => placesOn(piece, piece.kind === 'line' ? 1 : count));
  const near = corners[0]!;
  const local = corners.map((corner) => minus(corner, near));
  let [area, first, polar]: [number, Point, number] = [0, { x: 0, y: 0 }, 0];
  local.forEach((a, i) => {
    const b = local[(i + 1) % local.length]!;
    const twice = cross(a, b);
    area += twice / 2;
    first = plus(first, times(plus(a, b), twice / 6));
    polar += (twice * (dot(a, a) + dot(a, b) + dot(b, b))) / 12;
  });
  const centroid = times(first, 1 / area);
  return {
    area: Math.abs(area),
    centroid: plus(near, centroid),
    polar: Math.abs(polar - area * dot(centroid, centroid)),
    areaError: loop.reduce((sum, piece) => sum + stripArea(piece, count), 0),
    extent: Math.max(...local.map((corner) => Math.hypot(corner.x, corner.y))),
  };
}

const placesOn = (piece: Piece, count: number): Point[] =>
  Array.from({ length: count }, (_, i) => pointOn(piece, i / count));

/**
 * A chord over a step h of u leaves its curve by at most h² max|p''| / 8, so curve and chords enclose at most that times
 * their length. max|p''| from second differences at many places, doubled for what lies between them.
 */
function stripArea(piece: Piece, count: number): number {
  if (piece.kind === 'line') return 0;
  const steps = 200;
  const places = [...placesOn(piece, steps), endOf(piece)];
  let [bend, length] = [0, 0];
  for (let i = 1; i < steps; i++) {
    const second = minus(plus(places[i - 1]!, places[i + 1]!), times(places[i]!, 2));
    bend = Math.max(bend, 2 * Math.hypot(second.x, second.y) * steps ** 2);
    length += distance(places[i - 1]!, places[i]!);
  }
  length += distance(places[steps - 1]!, endOf(piece)) + distance(startOf(piece), places[0]!);
  return ((bend / 8) * 1.1 * length) / count ** 2;
}
