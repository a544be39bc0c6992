/**
 * Between two places where it meets something, a loop runs along the same neighbours all the way: one point on each
 * side tells what lies there.
 */
import { boxHolds } from './box.js';
import type { Simple } from './chords.js';
import type { Contour } from './contour.js';
import { distanceTo } from './piece-meetings.js';
import { pointOn } from './piece.js';
import { distance, minus, plus, times, touching, unitAt, type Point } from './point.js';
import { windingNumber } from './winding.js';

export interface Run {
  /** Where it starts. */
  readonly from: Point;
  readonly length: number;
  /** Beside the middle of its longest piece, as far off as counts as touching. */
  readonly left: Point;
  readonly right: Point;
  /** The same of every piece of it: a neighbour may lie so near to the longest one that nothing can be told there. */
  readonly beside: readonly Point[];
}

/** One run where the loop meets nothing. */
export function runsOf({ pieces }: Contour, places: readonly number[]): Run[] {
  const starts = places.length > 0 ? places : [0];
  return starts.map((from, i) => {
    const to = starts[i + 1] ?? starts[0]! + pieces.length;
    const stretches = stretchesOf(pieces, from, to);
    const { piece, middle } = stretches.reduce((a, b) => (b.length > a.length ? b : a));
    const [left, right] = sidesOf(piece, middle);
    const length = stretches.reduce((sum, stretch) => sum + stretch.length, 0);
    const beside = stretches
      .filter((stretch) => stretch.length > touching || stretch.piece === piece)
      .flatMap((stretch) => sidesOf(stretch.piece, stretch.middle));
    return { from: placeOn(pieces, from), length, left, right, beside };
  });
}

function sidesOf(piece: Simple, middle: number): [left: Point, right: Point] {
  const aside = times(leftOf(piece, middle), touching);
  const on = pointOn(piece, middle);
  return [plus(on, aside), minus(on, aside)];
}

/** Nearer to a loop than this a rounding, or a chord, may decide on which side a point lies. */
const tooNear = touching / 2;

/** How often the loop runs round a point; null too near to say. */
export function turnsAround(contour: Contour, point: Point): number | null {
  if (!boxHolds(contour.box, point, tooNear)) return 0;
  const near = contour.pieces.some(
    (piece, i) => boxHolds(contour.boxes[i]!, point, tooNear) && distanceTo(piece, point) < tooNear,
  );
  return near ? null : windingNumber(contour, point);
}

function placeOn(loop: readonly Simple[], place: number): Point {
  const index = Math.min(Math.floor(place), loop.length - 1);
  return pointOn(loop[index]!, place - index);
}

interface Stretch {
  readonly piece: Simple;
  /** From 0 to 1 along the piece. */
  readonly middle: number;
  readonly length: number;
}

/** What a run takes of each piece; places past the last piece go on with the first. */
function stretchesOf(loop: readonly Simple[], from: number, to: number): Stretch[] {
  const first = Math.floor(from);
  return Array.from({ length: Math.max(1, Math.ceil(to) - first) }, (_, i) => {
    const piece = loop[(first + i) % loop.length]!;
    const [u, v] = [Math.max(from - first - i, 0), Math.min(to - first - i, 1)];
    return { piece, middle: (u + v) / 2, length: (v - u) * lengthOf(piece) };
  });
}

const lengthOf = (piece: Simple): number =>
  piece.kind === 'line' ? distance(piece.from, piece.to) : piece.radius * Math.abs(piece.sweep);

/** The unit arrow to the left of the way it runs. */
function leftOf(piece: Simple, u: number): Point {
  if (piece.kind === 'arc') return times(unitAt(piece.start + u * piece.sweep), -Math.sign(piece.sweep));
  const along = times(minus(piece.to, piece.from), 1 / lengthOf(piece));
  return { x: -along.y, y: along.x };
}
