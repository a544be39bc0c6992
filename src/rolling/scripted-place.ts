/** Where a chair is in its run through a script, and what holds there: shared by the ways it goes on from it. */
import { touchOn } from '../geometry/hull-element.js';
import { fullTurn } from '../geometry/lean.js';
import { elementOf, flatAfterOf, indexAt, lengthOn, type Profile } from '../geometry/profile.js';
import type { Missing } from '../numeric/missing.js';
import type { OdePoint } from '../numeric/ode.js';
import { accelerationAt, momentumFrom, noFoot, sumsAt, type FootForce, type Sums } from './moving-masses.js';
import type { Script } from './script.js';

/** From a time on, leans past which it has gone over. */
export interface Guard {
  readonly from: number;
  readonly back: number;
  readonly forward: number;
}

export interface Course {
  readonly profile: Profile;
  readonly script: Script;
  /** In order of time; the first from 0. */
  readonly guards: readonly Guard[];
  /** When it ends at the latest, seconds. */
  readonly until: number;
  /** Whether it ends, once the script is over, as soon as θ̇ ≤ 0. */
  readonly endsFalling: boolean;
  /** The longest step, seconds. */
  readonly longestStep?: number;
  /** Error of one step. */
  readonly closeness?: number;
}

export interface Place {
  readonly time: number;
  readonly lean: number;
  /** L about the contact, kg m²/s, and X_C, metres. */
  readonly momentum: number;
  readonly contactX: number;
  /** The element that carries it, counted on past whole turns; while it stands on a flat the one before that. */
  readonly index: number;
  /** Which way it rolls. */
  readonly sense: 1 | -1;
  readonly stands: boolean;
  readonly footOn: boolean;
}

/** It rolls one way on one element under one law, or stands on a flat. */
export interface Leg {
  readonly from: Place;
  /** States (θ, L, X_C) that it passed, its first and its last among them. */
  readonly points: readonly OdePoint[];
}

export interface LegEnd {
  readonly leg: Leg;
  /** Where it goes on from; missing: why it does not. */
  readonly next: Place | Missing;
  /** What grip a flat's impact asked for at its end. */
  readonly grip: number;
}

export const pointOf = ({ time, lean, momentum, contactX }: Place): OdePoint => ({
  time,
  state: [lean, momentum, contactX],
});

export const placeAt = (leg: Place, { time, state }: OdePoint): Place => ({
  ...leg,
  time,
  lean: state[0]!,
  momentum: state[1]!,
  contactX: state[2]!,
});

/** The sums of its masses about the contact on an element. */
export const sumsOn = ({ profile, script }: Course, index: number, lean: number, time: number): Sums =>
  sumsAt(script, touchOn(elementOf(profile, index).element, lean), lean, time);

/** The floor's push on the feet, until they have left it. */
export function footIn(
  { script: { foot } }: Course,
  { time, footOn }: Pick<Place, 'time' | 'footOn'>,
): FootForce {
  return foot !== null && footOn && time < foot.until ? { force: foot.force, x: foot.ankle.x } : noFoot;
}

export const guardAt = ({ guards }: Course, time: number): Guard =>
  guards.findLast(({ from }) => from <= time)!;

/** The next time at which a law changes, or it ends. */
export function nextBreak({ script: { breaks, foot }, guards, until }: Course, time: number): number {
  const times = [...breaks, ...guards.map(({ from }) => from), ...(foot ? [foot.until] : [])];
  return Math.min(until, ...times.filter((at) => at > time));
}

/** A place with its momentum and X_C about the contact on its element, turning at a rate. */
export function onElement(course: Course, place: Place, rate: number): Place {
  const { index, lean, time } = place;
  return {
    ...place,
    momentum: momentumFrom(sumsOn(course, index, lean, time), rate),
    contactX: -lengthOn(course.profile, index, lean),
  };
}

/** On a flat it stands while it has no speed; else it sets off the way that its speed or its acceleration says. */
export function placeAtStart(
  course: Course,
  { lean, rate }: { readonly lean: number; readonly rate: number },
): Place {
  const { profile } = course;
  const after = indexAt(profile, lean + there);
  const { element, turns } = elementOf(profile, after);
  const atJoint = Math.abs(lean - (element.from + turns * fullTurn)) <= there;
  const base = {
    time: 0,
    lean,
    momentum: 0,
    contactX: 0,
    index: after,
    sense: 1,
    stands: false,
    footOn: true,
  } as const;
  if (atJoint && rate === 0 && flatAfterOf(profile, after - 1) > 0)
    return onElement(course, { ...base, index: after - 1, stands: true }, 0);
  const set = onElement(course, base, rate);
  const urge =
    rate === 0 ? accelerationAt(sumsOn(course, after, lean, 0), 0, set.contactX, footIn(course, base)) : rate;
  if (urge >= 0) return set;
  return onElement(course, { ...base, index: atJoint ? after - 1 : after, sense: -1 }, rate);
}

/** A lean nearer to an element's beginning than this is there, radians: rests at joints are put there but for rounding. */
const there = 1e-12;
