/** Level and plumb rectangles around lines, arcs and points. */
import type { Simple } from './chords.js';
import { withinTurn } from './lean.js';
import { endOf, pointOn, startOf, type Arc, type Piece } from './piece.js';
import { plus, times, unitAt, type Point } from './point.js';

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly foot: number;
  readonly top: number;
}

export function boxOf(piece: Simple): Box {
  return boxAround([startOf(piece), endOf(piece), ...(piece.kind === 'arc' ? quartersOf(piece) : [])]);
}

export function boxAround(points: readonly Point[]): Box {
  let [left, right, foot, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    foot = Math.min(foot, y);
    top = Math.max(top, y);
  }
  return { left, right, foot, top };
}

/** Around all of them. */
export const boxAroundBoxes = (boxes: readonly Box[]): Box =>
  boxAround(
    boxes.flatMap(({ left, right, foot, top }) => [
      { x: left, y: foot },
      { x: right, y: top },
    ]),
  );

export const diagonalOf = ({ left, right, foot, top }: Box): number => Math.hypot(right - left, top - foot);

/** To a hundredth of its size, of any curves: what is not a line is looked at in some places. */
export const boxRoughly = (pieces: readonly Piece[]): Box =>
  boxAround(
    pieces.flatMap((piece) =>
      piece.kind === 'line'
        ? [piece.from, piece.to]
        : Array.from({ length: looks + 1 }, (_, i) => pointOn(piece, i / looks)),
    ),
  );
const looks = 16;

/** Whether two touch, or lie nearer to each other than `margin`. */
export const boxesMeet = (a: Box, b: Box, margin: number): boolean =>
  a.left <= b.right + margin &&
  b.left <= a.right + margin &&
  a.foot <= b.top + margin &&
  b.foot <= a.top + margin;

/** Whether a place lies in it or nearer to it than `margin`. */
export const boxHolds = ({ left, right, foot, top }: Box, { x, y }: Point, margin: number): boolean =>
  x >= left - margin && x <= right + margin && y >= foot - margin && y <= top + margin;

/** The outermost points of the circle that lie on the arc. */
function quartersOf({ centre, radius, start, sweep }: Arc): Point[] {
  const first = sweep > 0 ? start : start + sweep;
  return [0, 1, 2, 3]
    .map((quarter) => withinTurn((quarter * Math.PI) / 2, first))
    .filter((angle) => angle <= first + Math.abs(sweep))
    .map((angle) => plus(centre, times(unitAt(angle), radius)));
}
