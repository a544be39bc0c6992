/**
 * Pieces that nearly meet made to meet. A stub across what is open would stand at any angle, and be a corner where none is
 * drawn: a line’s end is moved instead, or a curve turned and stretched as a whole by next to nothing.
 */
import { mappedPiece, type Affine } from '../../geometry/affine.js';
import { endOf, startOf, type Line, type Loop, type Piece } from '../../geometry/piece.js';
import { cross, distance, dot, minus, samePlace, type Point } from '../../geometry/point.js';

/** Of its length a curve may be stretched without anybody feeling it: a radius of a metre by a hundredth of a millimetre. */
const stretch = 1e-5;

/** @param pieces in order, the last leading back to the first */
export function closedUp(pieces: readonly Piece[]): Loop {
  const met = [...pieces];
  const stubs = new Map<number, Line>();
  met.forEach((_, i) => {
    const k = (i + 1) % met.length;
    const [piece, next] = [met[i]!, met[k]!];
    const [to, from] = [endOf(piece), startOf(next)];
    const gap = distance(to, from);
    if (gap <= samePlace) return;
    if (piece.kind === 'line') met[i] = { ...piece, to: from };
    else if (next.kind === 'line') met[k] = { ...next, from: to };
    else if (i !== k && gap <= stretch * chordOf(next)) met[k] = startingAt(next, to);
    else if (i !== k && gap <= stretch * chordOf(piece)) met[i] = endingAt(piece, from);
    else stubs.set(i, { kind: 'line', from: to, to: from });
  });
  return met.flatMap((piece, i) => [piece, stubs.get(i) ?? []].flat());
}

const chordOf = (piece: Piece): number => distance(startOf(piece), endOf(piece));

const startingAt = (piece: Piece, start: Point): Piece =>
  mappedPiece(piece, takingTo(endOf(piece), startOf(piece), start));
const endingAt = (piece: Piece, end: Point): Piece =>
  mappedPiece(piece, takingTo(startOf(piece), endOf(piece), end));

/** Turned and stretched about a place that stays, so that another comes to where it should be. */
function takingTo(stays: Point, from: Point, to: Point): Affine {
  const [was, is] = [minus(from, stays), minus(to, stays)];
  const [a, b] = [dot(was, is) / dot(was, was), cross(was, is) / dot(was, was)];
  return {
    ...{ a, b, c: -b, d: a },
    e: stays.x - a * stays.x + b * stays.y,
    f: stays.y - b * stays.x - a * stays.y,
  };
}
