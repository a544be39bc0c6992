/**
 * Lean θ and the direction that is down for a body leaned by it. θ > 0 leans back (counter-clockwise; x forward, y up).
 *
 *     d(θ) = (-sin θ, -cos θ)
 *
 * For any point q:  q·d(θ) = -(q_x sin θ + q_y cos θ).
 */
import type { Point } from './point.js';

/** q_x sin θ + q_y cos θ: how far q lies up, seen from the body leaned by θ. */
export const upward = (q: Point, lean: number): number => q.x * Math.sin(lean) + q.y * Math.cos(lean);

/** Its derivative by θ, q_x cos θ - q_y sin θ: how far q lies ahead. */
export const ahead = (q: Point, lean: number): number => q.x * Math.cos(lean) - q.y * Math.sin(lean);

/** The lean at which a direction, given as an angle counter-clockwise from +x, is straight down. */
export const leanFacingDown = (direction: number): number => -Math.PI / 2 - direction;

export const fullTurn = 2 * Math.PI;

/** The same lean moved by whole turns into [from, from + 2π). */
export function withinTurn(lean: number, from: number): number {
  const turned = lean - fullTurn * Math.floor((lean - from) / fullTurn);
  return turned >= from + fullTurn ? from : turned;
}
