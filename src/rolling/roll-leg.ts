/**
 * One leg of a scripted run: rolling one way on one element of the profile under one law, until it turns, passes the
 * element's end, has gone over, lifts, or its feet leave the floor. Over a flat the momentum rule holds:
 *
 *     L⁺ = L⁻ + L_flat p_y sgn θ̇        about the new contact
 */
import { contactOn, touchOn } from '../geometry/hull-element.js';
import { fullTurn } from '../geometry/lean.js';
import { elementOf, flatAfterOf } from '../geometry/profile.js';
import { missing } from '../numeric/missing.js';
import { follow, type End, type FollowSettings, type OdePoint, type Rate } from '../numeric/ode.js';
import {
  floorReaction,
  motionRate,
  rateFrom,
  sumsAt,
  upwardMomentum,
  type FootForce,
  type Sums,
} from './moving-masses.js';
import { hipToAnkle } from './script.js';
import {
  footIn,
  guardAt,
  nextBreak,
  onElement,
  placeAt,
  pointOf,
  sumsOn,
  type Course,
  type LegEnd,
  type Place,
} from './scripted-place.js';

/** (θ̇, L̇, Ẋ_C) along a leg. */
export function rateAlong({ profile, script }: Course, index: number, foot: FootForce): Rate {
  const { element } = elementOf(profile, index);
  return (time, state) =>
    motionRate(sumsAt(script, touchOn(element, state[0]!), state[0]!, time), state, foot);
}

/** What ends a leg: index of the list that `endsOf` makes. */
const turned = 0;
const passed = 1;
const lifted = 3;
const footLeft = 4;

export function rollLeg(course: Course, here: Place): LegEnd {
  const foot = footIn(course, here);
  const { element, turns } = elementOf(course.profile, here.index);
  const bound = (here.sense > 0 ? element.to : element.from) + turns * fullTurn;
  const points: OdePoint[] = [pointOf(here)];
  const { point, end } = follow(
    rateAlong(course, here.index, foot),
    points[0]!,
    endsOf(course, here, bound, foot),
    settingsOf(course, here, points),
  );
  const leg = { from: here, points };
  const reached = placeAt(here, point);
  if (end === turned) return { leg, next: { ...reached, sense: here.sense > 0 ? -1 : 1 }, grip: 0 };
  if (end === passed) return { leg, ...crossed(course, { ...reached, lean: bound }) };
  if (end === lifted) return { leg, next: missing('leaves the floor'), grip: 0 };
  return { leg, next: end === footLeft ? { ...reached, footOn: false } : reached, grip: 0 };
}

function endsOf(course: Course, { index, sense, time }: Place, bound: number, foot: FootForce): End[] {
  const guard = guardAt(course, time)[sense > 0 ? 'back' : 'forward'];
  const sums = ({ time: at, state }: OdePoint): Sums => sumsOn(course, index, state[0]!, at);
  const load = (point: OdePoint): number => {
    const all = sums(point);
    return floorReaction(all, rateFrom(all, point.state[1]!), point.state[2]!, foot).normal;
  };
  const ends: End[] = [
    (point) => sense * rateFrom(sums(point), point.state[1]!),
    ({ state }) => sense * (bound - state[0]!),
    ({ state }) => sense * (guard - state[0]!),
    load,
  ];
  const { foot: shove } = course.script;
  if (shove === null || foot.force === 0) return ends;
  const { element } = elementOf(course.profile, index);
  return [
    ...ends,
    ({ state }) => shove.reach - hipToAnkle(shove, contactOn(element, state[0]!), state[0]!, state[2]!),
  ];
}

/** What counts as large, radians, and metres of a rocker; in momentum, A times that in a second. */
const large = 0.3;
/** Error of one step: with some dozens of steps a second the sum stays below 1e-9 rad. */
const usualCloseness = 1e-12;
/** A first step that any motion allows, seconds; the next are as long as their error permits. */
const firstStep = 0.03;

function settingsOf(course: Course, here: Place, points: OdePoint[]): FollowSettings {
  const { longestStep, closeness = usualCloseness } = course;
  const { arm } = sumsOn(course, here.index, here.lean, here.time);
  return {
    scale: [large, large * arm, large],
    firstStep,
    until: nextBreak(course, here.time),
    each: (point) => points.push(point),
    ...(longestStep !== undefined && { longestStep }),
    closeness,
  };
}

/** From one element to the next. */
function crossed(course: Course, here: Place): Pick<LegEnd, 'next' | 'grip'> {
  const { index, sense, lean, time, momentum } = here;
  const next = index + sense;
  const front = sense > 0 ? index : next;
  const flat = flatAfterOf(course.profile, front);
  if (flat === 0) return { next: { ...here, index: next }, grip: 0 };
  const [before, after] = [sumsOn(course, index, lean, time), sumsOn(course, next, lean, time)];
  const rate = rateFrom(before, momentum);
  const left = rateFrom(after, momentum + flat * sense * upwardMomentum(before, rate));
  if (sense * left > standstill)
    return {
      next: onElement(course, { ...here, index: next }, left),
      grip: gripAt(before, rate, after, left),
    };
  const stood = onElement(course, { ...here, index: front, stands: true }, 0);
  return { next: stood, grip: gripAt(before, rate, after, 0) };
}

/**
 * |impulse along the floor| over the impulse up: the changes of p_x and p_y, in which what moves in the chair has no share.
 * What stands still asks for none.
 */
function gripAt(before: Sums, rate: number, after: Sums, left: number): number {
  const along = Math.abs(left * after.above - rate * before.above);
  return along === 0 ? 0 : along / Math.abs(left * after.ahead - rate * before.ahead);
}

/** Slower than this, radians a second, it stands: it would take months for a degree. */
const standstill = 1e-9;
