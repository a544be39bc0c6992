/** Stretches of a boundary that may be a curve drawn as lines: line after line, each turned a little against the one before. */
import { endOf, startOf, type Line, type Loop, type Piece } from '../../../geometry/piece.js';
import { cross, distance, dot, minus, samePlace, type Point } from '../../../geometry/point.js';

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

/** Lines a and b that turn by so much lie on a curve of radius (a + b) / 2 turn, which bulges over a by a² / 8 of that. */
function isBend(before: Piece, after: Piece, within: number): boolean {
  if (before.kind !== 'line' || after.kind !== 'line') return false;
  const [way, onward] = [minus(before.to, before.from), minus(endOf(after), startOf(after))];
  const turn = Math.abs(Math.atan2(cross(way, onward), dot(way, onward)));
  const [a, b] = [distance(before.from, before.to), distance(after.from, after.to)];
  return turn <= sharpest && (Math.max(a, b) ** 2 * turn) / (4 * (a + b)) <= within;
}

/** Straight from each place to the next. */
export const linesThrough = (places: readonly Point[]): Line[] =>
  places.slice(1).map((to, i) => ({ kind: 'line', from: places[i]!, to }));
