/** A place or an arrow in the side view: x forward, y up, metres. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export const plus = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const times = (a: Point, factor: number): Point => ({ x: a.x * factor, y: a.y * factor });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
/** Positive when b lies to the left of a. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
/** By the root: sizes of a chair overflow no square, and `Math.hypot` takes several times as long. */
export function distance(a: Point, b: Point): number {
  const [x, y] = [a.x - b.x, a.y - b.y];
  return Math.sqrt(x * x + y * y);
}
export const midpoint = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
/** The unit arrow at an angle counter-clockwise from +x, radians. */
export const unitAt = (angle: number): Point => ({ x: Math.cos(angle), y: Math.sin(angle) });
/**
 * Places nearer than a nanometre are one: far above the rounding of sums of inches in a part (1e-15 m), far below
 * anything a shop can cut.
 */
export const samePlace = 1e-9;
/**
 * Outlines that overlap by less than this touch: a twentieth of a millimetre, a knife's line. Drawings written to two
 * decimals of a millimetre or three of an inch meet within it.
 */
export const touching = 5e-5;
