/**
 * The places where loops meet themselves or each other. A place on a loop is the index of its piece plus how far along
 * that piece, from 0 to 1.
 */
import type { Box } from './box.js';
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

/** For each loop its places in order. Where two pieces that follow each other join does not count. */
export function meetingPlaces(contours: readonly Contour[]): number[][] {
  const places: number[][] = contours.map(() => []);
  const pieces = contours.flatMap(({ pieces, boxes }, loop) =>
    pieces.map((piece, index): Located => ({ loop, index, piece, box: boxes[index]! })),
  );
  forNearPairs(pieces, (a, b) => {
    const joints = a.loop === b.loop ? jointsOf(a.index, b.index, contours[a.loop]!.corners) : [];
    for (const place of meetings(a.piece, b.piece, touching)) {
      if (joints.some((joint) => distance(joint, place) <= touching)) continue;
      for (const { loop, index, piece } of [a, b]) places[loop]!.push(index + nearestOn(piece, place));
    }
  });
  return places.map((own) => own.sort((p, q) => p - q));
}

/** Sweeps forward over the pieces by their left sides; only those whose boxes touch are compared. */
function forNearPairs(pieces: readonly Located[], visit: (a: Located, b: Located) => void): void {
  const ordered = pieces.toSorted((a, b) => a.box.left - b.box.left);
  ordered.forEach((a, i) => {
    for (let j = i + 1; j < ordered.length; j++) {
      const b = ordered[j]!;
      if (b.box.left > a.box.right + touching) break;
      const apart = b.box.foot > a.box.top + touching || a.box.foot > b.box.top + touching;
      if (!apart) visit(a, b);
    }
  });
}

/** The corners two pieces of one loop share because one follows the other. */
function jointsOf(i: number, j: number, corners: readonly Point[]): Point[] {
  const follows = (after: number, before: number): boolean => after === (before + 1) % corners.length;
  return [...(follows(j, i) ? [corners[j]!] : []), ...(follows(i, j) ? [corners[i]!] : [])];
}
