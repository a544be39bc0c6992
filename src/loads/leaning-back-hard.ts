/**
 * The hard lean: the sitter sits with trunk, head and arms turned forward about the hip, throws them back onto the back
 * line as one body, and shoves the floor with the feet. The turn forward is
 *
 *     a (1 - σ(τ / throwTime)),     φ̇ = a σ' / throwTime
 *
 * Everything here is an assumption of this project: no publication says how people lean back hard.
 */
import { minus, times, type Point } from '../geometry/point.js';
import { combineMasses, type MassProperties } from '../mass.js';
import { smoothStep, smoothStepAcceleration, smoothStepRate } from '../rolling/smooth-step.js';
import type { MovingMass, Script } from '../rolling/script.js';
import { g } from '../rolling/gravity.js';
import { bodyLengths } from '../sitter/body-lengths.js';
import type { Segment } from '../sitter/segments.js';
import { massTurnedForward, trunkGroup } from '../sitter/trunk-turn.js';
import type { Person } from './people.js';

export const leaningDefaults = {
  trunkAhead: (15 * Math.PI) / 180,
  throwTime: 0.4,
  /** Of body weight. */
  shove: 0.2,
  shoveTime: 0.5,
} as const;
export type LeaningSettings = Readonly<Record<keyof typeof leaningDefaults, number>>;

export interface LeaningBackHard {
  readonly kind: 'leaning-back-hard';
  readonly settings: LeaningSettings;
  /** The chair with what rides without moving. */
  readonly fixed: MassProperties;
  /** Trunk, head, arms and a child in them, on the back line. */
  readonly trunk: MassProperties;
  readonly hip: Point;
  readonly knee: Point;
  readonly ankleHeight: number;
  /** Thigh and shank, metres. */
  readonly reach: number;
  /** Newton. */
  readonly bodyWeight: number;
}

export function leaningBackHard(
  chair: MassProperties,
  riders: readonly Segment[],
  { pose: { joints }, size }: Person,
  settings: LeaningSettings,
): LeaningBackHard {
  const lengths = bodyLengths(size.stature);
  return {
    kind: 'leaning-back-hard',
    settings,
    fixed: combineMasses([chair, ...riders.filter(({ group }) => group !== 'trunk')]),
    trunk: trunkGroup(riders),
    hip: joints.hip,
    knee: joints.knee,
    ankleHeight: lengths.ankleHeight,
    reach: lengths.thigh + lengths.shank,
    bodyWeight: size.mass * g,
  };
}

/** All that rolls, the trunk turned forward as at the start. */
export const bodyAtStart = ({ fixed, trunk, hip, settings }: LeaningBackHard): MassProperties =>
  combineMasses([fixed, massTurnedForward(trunk, hip, settings.trunkAhead)]);

/** @param ankle where the ankle stands on the floor */
export function leaningScript(lean: LeaningBackHard, ankle: Point): Script {
  const { throwTime, shove, shoveTime } = lean.settings;
  const force = shove * lean.bodyWeight;
  return {
    fixed: lean.fixed,
    moving: [thrownTrunk(lean)],
    presses: [],
    pushes: [],
    foot:
      force > 0 && shoveTime > 0
        ? { force, until: shoveTime, ankle, hip: lean.hip, reach: lean.reach }
        : null,
    breaks: [throwTime],
    end: throwTime,
  };
}

/** Turning clockwise by a: a place q about the hip moves at ȧ (q_y, -q_x), and is pulled inwards by ȧ². */
function thrownTrunk({ trunk, hip, settings: { trunkAhead, throwTime } }: LeaningBackHard): MovingMass {
  const { mass, inertia } = trunk;
  return {
    mass,
    inertia,
    motion: (time) => {
      const u = time / throwTime;
      const ahead = trunkAhead * (1 - smoothStep(u));
      const rate = (-trunkAhead * smoothStepRate(u)) / throwTime;
      const acceleration = (-trunkAhead * smoothStepAcceleration(u)) / throwTime ** 2;
      const { centre } = massTurnedForward(trunk, hip, ahead);
      const q = minus(centre, hip);
      const across = { x: q.y, y: -q.x };
      return {
        centre,
        velocity: times(across, rate),
        acceleration: {
          x: acceleration * across.x - rate * rate * q.x,
          y: acceleration * across.y - rate * rate * q.y,
        },
        turnRate: -rate,
        turnAcceleration: -acceleration,
      };
    },
  };
}
