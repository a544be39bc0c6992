/**
 * What moves in a rolling chair and what presses on it, as functions of time from the script's beginning. Places are in
 * the chair's frame, turns counter-clockwise like the lean. SI.
 */
import { ahead, upward } from '../geometry/lean.js';
import { distance, minus, type Point } from '../geometry/point.js';
import type { MassProperties } from '../mass.js';

/** How a mass moves relative to the chair. */
export interface MassMotion {
  readonly centre: Point;
  readonly velocity: Point;
  readonly acceleration: Point;
  /** φ̇ and φ̈ */
  readonly turnRate: number;
  readonly turnAcceleration: number;
}

export interface MovingMass {
  readonly mass: number;
  /** About its own centre. */
  readonly inertia: number;
  readonly motion: (time: number) => MassMotion;
}

/** A weight that presses straight down on a place of the chair without riding on it. */
export interface Press {
  readonly place: (time: number) => Point;
  /** Newton. */
  readonly force: (time: number) => number;
}

/** A level push towards -x at a place of the chair. */
export interface Push {
  readonly place: Point;
  readonly force: (time: number) => number;
}

/** The floor's push straight up on the feet of a sitter who rides. */
export interface FootShove {
  readonly force: number;
  /** When it ends, seconds, if the feet reach that long. */
  readonly until: number;
  /** Where the ankle stands on the floor, X as the profile counts lengths. */
  readonly ankle: Point;
  /** In the chair. */
  readonly hip: Point;
  /** Hip to ankle with the leg straight: from there on the foot has left, metres. */
  readonly reach: number;
}

export interface Script {
  /** What rides without moving, with the chair. */
  readonly fixed: MassProperties;
  readonly moving: readonly MovingMass[];
  readonly presses: readonly Press[];
  readonly pushes: readonly Push[];
  readonly foot: FootShove | null;
  /** Times at which a function changes its law, growing. */
  readonly breaks: readonly number[];
  /** From when on nothing moves or changes, but for the foot. */
  readonly end: number;
}

/** Mass of what rolls, kg. */
export const rollingMass = ({ fixed, moving }: Script): number =>
  moving.reduce((sum, { mass }) => sum + mass, fixed.mass);

/** How far the hip of the leaned chair is from the ankle on the floor, metres. */
export function hipToAnkle(
  { hip, ankle }: FootShove,
  contact: Point,
  lean: number,
  contactX: number,
): number {
  const over = minus(hip, contact);
  return distance({ x: contactX + ahead(over, lean), y: upward(over, lean) }, ankle);
}
