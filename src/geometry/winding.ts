/**
 * How often a loop runs round a point: that of the polygon through its corners, and one more turn for every arc whose
 * segment (between arc and chord) holds the point. Exact to rounding for lines and arcs, for a point off the loop;
 * curves are taken on their chords.
 *
 * Both parts ask the same question, on which side of a chord the point lies, so a point on a chord (the centre of two
 * half circles) or level with a corner is counted once, not twice or never.
 */
import { contourOf, type Contour } from './contour.js';
import { fullTurn } from './lean.js';
import type { Arc, Loop } from './piece.js';
import { cross, distance, minus, type Point } from './point.js';

/** Whether the point lies inside, whichever way the loop runs; on the boundary either answer may come. */
export const loopContains = (loop: Loop, point: Point): boolean =>
  windingNumber(contourOf(loop), point) !== 0;

/** Positive counter-clockwise. */
export function windingNumber({ pieces, corners }: Contour, point: Point): number {
  return pieces.reduce((turns, piece, i) => {
    const from = corners[i]!;
    const to = corners[i + 1] ?? corners[0]!;
    const segment = piece.kind === 'arc' ? turnsOfSegment(piece, from, to, point) : 0;
    return turns + crossingOfRay(from, to, point) + segment;
  }, 0);
}

/** A level ray forward from the point crosses an edge upward (1), downward (-1) or not at all. */
function crossingOfRay(from: Point, to: Point, point: Point): number {
  if (from.y <= point.y && point.y < to.y) return side(from, to, point) > 0 ? 1 : 0;
  if (to.y <= point.y && point.y < from.y) return side(from, to, point) < 0 ? -1 : 0;
  return 0;
}

function turnsOfSegment({ centre, radius, sweep }: Arc, from: Point, to: Point, point: Point): number {
  if (distance(point, centre) >= radius) return 0;
  const whole = Math.abs(sweep) >= fullTurn - shortOfFull;
  const beyondChord = sweep > 0 ? side(from, to, point) < 0 : side(from, to, point) > 0;
  return whole || beyondChord ? Math.sign(sweep) : 0;
}

/** An arc that lacks less than this of a full circle has a chord of rounding, without direction. */
const shortOfFull = 1e-12;

/**
 * Positive left of the chord, negative right. A point on its line counts as moved a little forward, on a level line a
 * little up: the convention of `crossingOfRay`.
 */
function side(from: Point, to: Point, point: Point): number {
  const chord = minus(to, from);
  return cross(chord, minus(point, from)) || -chord.y || chord.x;
}
