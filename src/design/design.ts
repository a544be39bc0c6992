/**
 * What a design file says, as SI numbers: what `resolve` returns. Metres, kilograms, seconds, radians.
 * The chair's frame as drawn: x forward, y up.
 */
import type { Drawn } from '../drawing/read/drawn.js';
import type { Asked } from '../drawing/read/outlines.js';
import type { Point } from '../geometry/point.js';
import type { RigidMotion } from '../geometry/rigid-motion.js';
import type { AlterationName, ChairKind, LoadId, MeasureKey } from '../names.js';

export interface RockerArcInSI {
  readonly radius: number;
  /** Level distance behind `at` where this arc ends and the next begins (negative: ahead); null: to the tail. */
  readonly until: number | null;
}

export type OutlineInSI = { readonly hole: boolean } & (
  | {
      readonly word: 'rocker';
      /** From nose to tail. */
      readonly arcs: readonly RockerArcInSI[];
      readonly depth: number;
      readonly nose: number;
      readonly tail: number;
      readonly at: number;
      readonly along: 'level' | 'curve';
      /** How far wedges glued under the tail lower its end; 0 or left out: none. */
      readonly wedge?: number;
    }
  | { readonly word: 'bar'; readonly from: Point; readonly to: Point; readonly width: number }
  | { readonly word: 'circle'; readonly centre: Point; readonly radius: number }
  | { readonly word: 'rectangle'; readonly from: Point; readonly to: Point }
  /** SVG path data, y up, in a unit of `unit` metres. */
  | { readonly word: 'path'; readonly data: string; readonly unit: number }
  /** What a drawing file holds, and what is asked of it. */
  | { readonly word: 'drawing'; readonly file: string; readonly drawn: Drawn; readonly asked: Asked }
);

export interface PartInSI {
  readonly name: string;
  /** How many across the chair. */
  readonly count: number;
  /** Size of one piece across the chair. */
  readonly across: number | null;
  /** The wood as the design names it, and its density, or a stated density. */
  readonly wood: string | null;
  readonly density: number | null;
  /** Mass of one piece as weighed; wins over wood and density. */
  readonly mass: number | null;
  readonly side: 'left' | 'right' | null;
  readonly runs: { readonly from: Point; readonly to: Point } | null;
  readonly outline: readonly OutlineInSI[];
  /** Where an alteration of the design has taken it; left out: it stands as drawn. */
  readonly moved?: RigidMotion;
}

export interface ExtraInSI {
  readonly name: string;
  readonly mass: number;
  readonly at: Point;
  /** About its own centre. */
  readonly inertia: number;
}

export interface SitterInSI {
  readonly name: string;
  readonly body: 'female' | 'male';
  readonly stature: number | null;
  readonly mass: number | null;
  readonly percentile: number | null;
  readonly measured: {
    readonly kneeHollow: number | null;
    readonly buttockToKneeHollow: number | null;
    readonly elbowAboveSeat: number | null;
  };
}

/** A range; an end that is not stated is null. In SI. */
export interface RangeInSI {
  readonly min: number | null;
  readonly max: number | null;
}

export interface LimitInSI {
  readonly measure: MeasureKey;
  /** null: stated without a load. */
  readonly load: LoadId | null;
  /** null: off. */
  readonly range: RangeInSI | null;
}

/** How far off the shop may be in a named dimension, as the design says. SI. */
export interface ErrorInSI {
  readonly dimension: string;
  /** Even between ± `size`; or normal, `size` its standard deviation. */
  readonly spread: 'even' | 'normal';
  readonly size: number;
}

export interface DesignInSI {
  readonly name: string;
  readonly kind: ChairKind;
  readonly units: 'in' | 'mm' | 'cm' | 'm' | 'ft';
  readonly floor: {
    /** null when the design states its own numbers. */
    readonly name: string | null;
    readonly friction: number;
    /** Rolling arm, metres. */
    readonly rolling: number;
  };
  readonly wall: number | null;
  readonly spacing: number | null;
  readonly sitters: readonly SitterInSI[] | 'standard';
  readonly child: {
    readonly body: 'girl' | 'boy' | null;
    readonly age: number | null;
    readonly mass: number | null;
  } | null;
  readonly parts: readonly PartInSI[];
  readonly extras: readonly ExtraInSI[];
  readonly seat: { readonly front: Point; readonly rear: Point } | null;
  readonly back: { readonly foot: Point; readonly top: Point } | null;
  readonly arms: { readonly rear: Point; readonly front: Point } | null;
  /** What the design changes of the standard loads: SI numbers by setting name; null: the load is off. */
  readonly loads: Readonly<Partial<Record<LoadId, Readonly<Record<string, number>> | null>>>;
  readonly limits: readonly LimitInSI[];
  /** Each 0 where nothing is changed. */
  readonly alterations: Readonly<Record<AlterationName, number>>;
  readonly errors: readonly ErrorInSI[];
}
