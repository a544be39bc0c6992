/**
 * The places where loops meet themselves or each other. A place on a loop is the index of its piece plus how far along
 * that piece, from 0 to 1.
 */
import { boxesMeet, type Box } from './box.js';
import type { Simple } from './chords.js';
import type { Contour } from './contour.js';
import { meetings, nearestOn } from './piece-meetings.js';
import { distance, touching, type Point } from './point.js';

interface Located {
  readonly loop: number;
  readonly index: number;
  readonly piece: Simple;
  readonly box: Box;
}

/** For each piece: what only touches has a few, what is tangled has hundreds, and they are millions. */
export const mostMeetings = 50;

/**
 * For each loop its places in order. Where two pieces that follow each other join does not count. null: they meet at
 * more than `mostMeetings` for each piece.
 */
export function meetingPlaces(contours: readonly Contour[]): number[][] | null {
  const places: number[][] = contours.map(() => []);
  const pieces = contours.flatMap(({ pieces, boxes }, loop) =>
    pieces.map((piece, index): Located => ({ loop, index, piece, box: boxes[index]! })),
  );
  let left = mostMeetings * pieces.length;
  for (const [a, b] of nearPairs(pieces)) {
    const joints = a.loop === b.loop ? jointsOf(a.index, b.index, contours[a.loop]!.corners) : [];
    for (const place of meetings(a.piece, b.piece, touching)) {
      if (joints.some((joint) => distance(joint, place) <= touching)) continue;
      for (const { loop, index, piece } of [a, b]) places[loop]!.push(index + nearestOn(piece, place));
      left -= 1;
    }
    if (left < 0) return null;
  }
  return places.map((own) => own.sort((p, q) => p - q));
}

/** Sweeps forward over the pieces by their left sides; only those whose boxes touch are compared. */
function* nearPairs(pieces: readonly Located[]): Generator<[Located, Located]> {
  const ordered = pieces.toSorted((a, b) => a.box.left - b.box.left);
  for (const [i, a] of ordered.entries())
    for (let j = i + 1; j < ordered.length; j++) {
      const b = ordered[j]!;
      if (b.box.left > a.box.right + touching) break;
      if (boxesMeet(a.box, b.box, touching)) yield [a, b];
    }
}

/** The corners two pieces of one loop share because one follows the other. */
function jointsOf(i: number, j: number, corners: readonly Point[]): Point[] {
  const follows = (after: number, before: number): boolean => after === (before + 1) % corners.length;
  return [...(follows(j, i) ? [corners[j]!] : []), ...(follows(i, j) ? [corners[i]!] : [])];
}
