/** A chair as bodies in SI, in its own frame as drawn: x forward, y up. */
import type { DesignInSI } from '../design/design.js';
import type { Side } from '../geometry/mean-surface.js';
import type { Outline } from '../geometry/piece.js';
import type { Point } from '../geometry/point.js';
import type { Profile } from '../geometry/profile.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import type { SurfaceShape } from '../geometry/surface-shape.js';
import type { MassProperties } from '../mass.js';
import type { TakenFromFile } from './part-outline.js';

/** Something that weighs; mass and inertia are those of all pieces. */
export interface Weighed extends MassProperties {
  readonly name: string;
  readonly count: number;
}

export interface ChairPart extends Weighed {
  /** Side view. */
  readonly outline: Outline;
  /** Size of one piece across the chair, metres; null where the design does not say. */
  readonly across: number | null;
  /** What of it was taken from drawing files. */
  readonly drawn: readonly TakenFromFile[];
}

export interface Chair {
  readonly parts: readonly ChairPart[];
  /** Fittings that weigh but touch nothing. */
  readonly extras: readonly Weighed[];
  /** The empty chair. */
  readonly body: MassProperties;
  /** How far its centre of gravity lies to the sitter's left of the middle plane, metres. */
  readonly offset: number;
  /** The convex hull of all parts; where the sides are unlike, the mean of both. Its owners are indices of `parts`. */
  readonly profile: Profile;
  readonly surface: RunningSurface;
  readonly surfaceShape: SurfaceShape;
  /** What each side rolls on where they are unlike; null: alike. */
  readonly sides: { readonly left: Side; readonly right: Side } | null;
  readonly seat: DesignInSI['seat'];
  readonly back: DesignInSI['back'];
  readonly arms: DesignInSI['arms'];
  /** Rockers, centre line to centre line, metres. */
  readonly spacing: number | null;
  /** Free space behind the rearmost point of the empty chair at rest, metres. */
  readonly wall: number | null;
}

/** Angle of a line over the level, radians, its second end ahead of its first. */
export const slopeOf = (rear: Point, front: Point): number => Math.atan2(front.y - rear.y, front.x - rear.x);
