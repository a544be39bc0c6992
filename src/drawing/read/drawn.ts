/** What a drawing file holds: curves in its own units and axes, as it draws them. */
import type { Piece } from '../../geometry/piece.js';

export interface DrawnCurve {
  /** In order, each starting where the one before ends. Drawing units. */
  readonly pieces: readonly Piece[];
  /** By itself: a circle, a closed polyline. Others may close when their ends are joined. */
  readonly closed: boolean;
  /** What it may be asked for by: the layer it lies on, in SVG ids and labels of the groups that hold it, outermost first. */
  readonly layers: readonly string[];
  /** Those of `layers` that are labels: a person wrote them. */
  readonly labels: readonly string[];
  /** Its own id and those of what holds it, its own first; in DXF none. */
  readonly ids: readonly string[];
  /** Line of the file, from 1. */
  readonly line: number;
}

/** Something of the file that is not taken: what it is called there, why, how many, where the first stands. */
export interface LeftOut {
  readonly what: string;
  readonly why: string;
  readonly count: number;
  readonly line: number;
}

export interface Drawn {
  readonly curves: readonly DrawnCurve[];
  /** Metres a unit as the file declares it; null: it does not. */
  readonly unit: number | null;
  /** y points down, as in SVG. */
  readonly yDown: boolean;
  readonly leftOut: readonly LeftOut[];
}

/** Why a file is refused. */
export interface DrawingFlaw {
  /** Line of the file, from 1, and column, from 1, where known. */
  readonly line: number;
  readonly column?: number;
  readonly expected: string;
  readonly found: string;
  readonly hint?: string;
}

export type DrawingRead =
  | { readonly ok: true; readonly drawn: Drawn }
  | { readonly ok: false; readonly flaws: readonly DrawingFlaw[] };
