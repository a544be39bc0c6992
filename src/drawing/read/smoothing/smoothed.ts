/**
 * Curves that a drawing program wrote as lines, made curves again: arcs where the lines’ ends lie on a circle, smooth
 * curves through them where they do not. What is no curve to the accuracy asked for stays as it is drawn.
 */
import type { Loop } from '../../../geometry/piece.js';
import { stretchesOf } from './facets.js';
import { smoothedRow } from './row.js';
import { allSmoothed, type Smoothing } from './smoothing.js';

/**
 * @param boundary closed, metres
 * @param within how far what is made may lie from the lines, metres
 */
export function smoothed(boundary: Loop, within: number): { boundary: Loop; smoothing: Smoothing } {
  const made = stretchesOf(boundary, within).map((stretch) =>
    stretch.kind === 'piece'
      ? { pieces: [stretch.piece], smoothing: null }
      : smoothedRow(stretch.places, within),
  );
  return {
    boundary: made.flatMap(({ pieces }) => pieces),
    smoothing: allSmoothed(made.flatMap(({ smoothing }) => smoothing ?? [])),
  };
}
