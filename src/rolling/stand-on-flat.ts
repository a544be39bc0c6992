/**
 * One leg of a scripted run: standing on a flat while what moves and presses shifts its weight, until the moment about
 * one of the flat's ends turns it off over that end.
 */
import { lengthOn } from '../geometry/profile.js';
import { missing } from '../numeric/missing.js';
import { signChanges } from '../numeric/root.js';
import { accelerationAt, floorReaction } from './moving-masses.js';
import {
  footIn,
  nextBreak,
  onElement,
  pointOf,
  sumsOn,
  type Course,
  type LegEnd,
  type Place,
} from './scripted-place.js';

/** It is looked at so often, seconds: scripts take tenths of one. */
const watch = 5e-3;
/** A turning acceleration below this, radians a second squared, is rounding of none. */
const still = 1e-12;

export function standOnFlat(course: Course, here: Place): LegEnd {
  const stop = nextBreak(course, here.time);
  const looks = Math.max(1, Math.ceil((stop - here.time) / watch));
  const back = turnsOff(course, here, 1, stop, looks);
  const forward = turnsOff(course, here, -1, stop, looks);
  const until = Math.min(back, forward, stop);
  const points = timesBetween(here.time, until, stop, looks).map((time) =>
    pointOf(onElement(course, { ...here, time }, 0)),
  );
  const leg = { from: here, points };
  const foot = footIn(course, here);
  const lifts = points.some(({ time, state }) => {
    const sums = sumsOn(course, here.index, here.lean, time);
    return !(floorReaction(sums, 0, state[2]!, foot, 0).normal > 0);
  });
  if (lifts) return { leg, next: missing('leaves the floor'), grip: 0 };
  const reached = onElement(course, { ...here, time: until }, 0);
  if (until === stop && Math.min(back, forward) > stop) return { leg, next: reached, grip: 0 };
  const sense = back <= forward ? 1 : -1;
  const index = sense > 0 ? here.index + 1 : here.index;
  return { leg, next: onElement(course, { ...reached, index, sense, stands: false }, 0), grip: 0 };
}

/** When the moment about the rear (1) or the front (-1) end of the flat turns it off; infinite: not before `stop`. */
function turnsOff(course: Course, here: Place, sense: 1 | -1, stop: number, looks: number): number {
  const index = sense > 0 ? here.index + 1 : here.index;
  const contactX = -lengthOn(course.profile, index, here.lean);
  const foot = footIn(course, here);
  const urge = (time: number): number =>
    sense * accelerationAt(sumsOn(course, index, here.lean, time), 0, contactX, foot) - still;
  if (urge(here.time) > 0) return here.time;
  return signChanges(urge, here.time, stop, looks)[0] ?? Infinity;
}

function timesBetween(from: number, until: number, stop: number, looks: number): number[] {
  const regular = Array.from({ length: looks - 1 }, (_, i) => from + ((stop - from) * (i + 1)) / looks);
  return [from, ...regular.filter((time) => time < until), until];
}
