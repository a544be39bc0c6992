/** Scripts to roll chairs through, and the same put to the Lagrangian in tests/oracles. */
import { profileOf } from '../../src/geometry/profile.js';
import type { Point } from '../../src/geometry/point.js';
import type { MassProperties } from '../../src/mass.js';
import { floorPlace } from '../../src/rolling/floor-place.js';
import { rateFrom } from '../../src/rolling/moving-masses.js';
import { reactionAt } from '../../src/rolling/run-forces.js';
import type { FootShove, MovingMass, Script } from '../../src/rolling/script.js';
import { sumsOn, type Course } from '../../src/rolling/scripted-place.js';
import type { ScriptedRun } from '../../src/rolling/scripted-roll.js';
import { floorPlace as placeOnArcs, turningAbout, type MovingLoad } from '../oracles/moving-lagrangian.js';
import type { Runner } from './runners.js';

/** A body that rolls as it is. */
export const still = (body: MassProperties): Script => ({
  fixed: body,
  moving: [],
  presses: [],
  pushes: [],
  foot: null,
  breaks: [],
  end: 0,
});

export const noFall = { from: 0, back: Infinity, forward: -Infinity };

export const courseOn = (made: Runner, script: Script, more: Partial<Course> = {}): Course => ({
  profile: profileOf([[made.outline]]),
  script,
  guards: [noFall],
  until: 5,
  endsFalling: false,
  ...more,
});

/** A trunk turned by an angle about a hip, its rates by hand. */
export type Turn = Parameters<typeof turningAbout>[2];

export function thrown(hip: Point, trunk: MassProperties, by: Turn): MovingMass {
  const { mass, inertia, place, velocity, acceleration } = turningAbout(hip, trunk, by);
  const motion: MovingMass['motion'] = (time) => ({
    centre: place(time),
    velocity: velocity(time),
    acceleration: acceleration(time),
    turnRate: by(time).rate,
    turnAcceleration: by(time).acceleration,
  });
  return { mass, inertia, motion };
}

/** From a to 0 within `during` seconds: a (1 - u)² (1 + 2 u), which starts and ends at a standstill, its push at once. */
export const thrownBack =
  (a: number, during: number): Turn =>
  (time) => {
    const u = Math.min(time / during, 1);
    return {
      angle: a * (1 - u) ** 2 * (1 + 2 * u),
      rate: (-6 * a * u * (1 - u)) / during,
      acceleration: time < during ? (-6 * a * (1 - 2 * u)) / during ** 2 : 0,
    };
  };

/** X of a place as the profile counts it less X as the arcs count it. */
export const floorShift = ({ tracks, ends: { nose } }: Runner, { profile }: Course): number =>
  floorPlace(profile, nose, tracks[0]!.to).x - placeOnArcs(tracks, nose, tracks[0]!.to).x;

/** @param footLeft when the foot leaves the floor, seconds */
export function lagrangianOf(made: Runner, course: Course, footLeft: number = Infinity): MovingLoad {
  const { fixed, moving, presses, pushes, foot, breaks } = course.script;
  const none = { x: 0, y: 0 };
  const unmoved = { centre: fixed.centre, velocity: none, acceleration: none };
  const all = [{ ...fixed, motion: () => ({ ...unmoved, turnRate: 0, turnAcceleration: 0 }) }, ...moving];
  const until = Math.min(foot?.until ?? 0, footLeft);
  return {
    arcs: made.tracks,
    masses: all.map(({ mass, inertia, motion }) => ({
      ...{ mass, inertia },
      place: (time: number) => motion(time).centre,
      velocity: (time: number) => motion(time).velocity,
      acceleration: (time: number) => motion(time).acceleration,
      turnRate: (time: number) => motion(time).turnRate,
      turnAcceleration: (time: number) => motion(time).turnAcceleration,
    })),
    presses: presses.map(({ force, place }) => ({ force, at: place })),
    pushes: pushes.map(({ force, place }) => ({ force, at: () => place })),
    ...(foot && {
      foot: {
        force: (time: number) => (time < until ? foot.force : 0),
        x: foot.ankle.x - floorShift(made, course),
      },
    }),
    breaks: [...breaks, until],
  };
}

export interface Passed {
  readonly time: number;
  readonly lean: number;
  readonly rate: number;
  readonly contactX: number;
  readonly normal: number;
  readonly along: number;
}

/** What a run passed inside its legs, where nothing jumps. */
export const passedBy = (course: Course, { legs }: ScriptedRun): Passed[] =>
  legs.flatMap(({ from, points }) =>
    points.slice(1, -1).map((point) => {
      const { time, state } = point;
      const [lean, momentum, contactX] = state as [number, number, number];
      const rate = rateFrom(sumsOn(course, from.index, lean, time), momentum);
      return { time, lean, rate, contactX, ...reactionAt(course, from, point) };
    }),
  );

/** How far the hip is from the ankle on arcs, by the oracle's places. */
export const legOnArcs = (made: Runner, course: Course, foot: FootShove, lean: number): number => {
  const hip = placeOnArcs(made.tracks, foot.hip, lean);
  return Math.hypot(hip.x + floorShift(made, course) - foot.ankle.x, hip.y - foot.ankle.y);
};
