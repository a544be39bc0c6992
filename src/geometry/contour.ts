/** A loop made ready for many questions of inside and outside: lines and arcs only, with their corners and boxes. */
import { boxAroundBoxes, boxOf, type Box } from './box.js';
import { onChords, type Simple } from './chords.js';
import { startOf, type Loop } from './piece.js';
import type { Point } from './point.js';

export interface Contour {
  readonly pieces: readonly Simple[];
  /** Where each piece starts. */
  readonly corners: readonly Point[];
  /** Around each piece, and around all. */
  readonly boxes: readonly Box[];
  readonly box: Box;
}

export function contourOf(loop: Loop): Contour {
  const pieces = onChords(loop);
  const boxes = pieces.map(boxOf);
  return { pieces, corners: pieces.map(startOf), boxes, box: boxAroundBoxes(boxes) };
}
