/** Stretches of a boundary that may be a curve drawn as lines: line after line, each turned a little against the one before. */
import type { Line, Loop, Piece } from '../../../geometry/piece.js';
import { distance, samePlace, type Point } from '../../../geometry/point.js';
import { turnIn } from '../../../geometry/way-along.js';

/** Lines in a row, by the places they go through; or a piece that stays as it is. */
export type Stretch =
  | { readonly kind: 'facets'; readonly places: readonly Point[] }
  | { readonly kind: 'piece'; readonly piece: Piece };

/** Fewer lines are an outline with a few dull corners. */
export const fewestFacets = 5;

/** More of a turn at once is a corner of the chair: the contract’s figure for where a running surface ends. */
const sharpest = (20 * Math.PI) / 180;

/**
 * A boundary by stretches, in order. Where no corner begins one, it is one stretch that begins and ends in one place.
 * @param within how far a curve may bulge over a line of it, metres
 */
export function stretchesOf(boundary: Loop, within: number): Stretch[] {
  const pieces = boundary.filter(
    (piece) => piece.kind !== 'line' || distance(piece.from, piece.to) > samePlace,
  );
  const bends = pieces.map((piece, i) => isBend(pieces.at(i - 1)!, piece, within));
  const first = Math.max(0, bends.indexOf(false));
  const found: Stretch[] = [];
  let places: Point[] = [];
  const finish = (): void => {
    if (places.length > fewestFacets) found.push({ kind: 'facets', places });
    else found.push(...linesThrough(places).map((piece) => ({ kind: 'piece' as const, piece })));
    places = [];
  };
  pieces.forEach((_, k) => {
    const i = (first + k) % pieces.length;
    const piece = pieces[i]!;
    if (places.length > 0 && !bends[i]) finish();
    if (piece.kind === 'line') places.push(...(places.length === 0 ? [piece.from] : []), piece.to);
    else found.push({ kind: 'piece', piece });
  });
  finish();
  return found;
}

/** Not a corner of the chair, and little enough of a curve. */
function isBend(before: Piece, after: Piece, within: number): boolean {
  if (before.kind !== 'line' || after.kind !== 'line') return false;
  const turn = Math.abs(turnIn(after.from, before.from, after.to));
  return turn <= sharpest && riseOver(before.from, after.from, after.to) <= within;
}

/** How far a curve through three places rises over the longer line: a² / 8R, its radius R being (a + b) / 2 turn. */
export function riseOver(from: Point, through: Point, to: Point): number {
  const [a, b] = [distance(from, through), distance(through, to)];
  return (Math.max(a, b) ** 2 * Math.abs(turnIn(through, from, to))) / (4 * (a + b));
}

/** Straight from each place to the next. */
export const linesThrough = (places: readonly Point[]): Line[] =>
  places.slice(1).map((to, i) => ({ kind: 'line', from: places[i]!, to }));
