/**
 * The circle through three places: from a, with b and c the ways to the others, its centre lies at
 *
 *     (b·b (c_y, -c_x) - c·c (b_y, -b_x)) / 2 b × c
 *
 * where (p - centre)² is the same for all three.
 */
import { cross, dot, minus, plus, type Point } from './point.js';

export interface Circle {
  readonly centre: Point;
  readonly radius: number;
}

/** null where they lie in line. */
export function circleThrough(a: Point, b: Point, c: Point): Circle | null {
  const [toB, toC] = [minus(b, a), minus(c, a)];
  const twice = 2 * cross(toB, toC);
  const [bb, cc] = [dot(toB, toB), dot(toC, toC)];
  const out = { x: (toC.y * bb - toB.y * cc) / twice, y: (toB.x * cc - toC.x * bb) / twice };
  const radius = Math.hypot(out.x, out.y);
  return Number.isFinite(radius) ? { centre: plus(a, out), radius } : null;
}
