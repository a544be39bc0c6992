/**
 * Rolls a chair through a script: leg by leg of its profile, through joints and corners, over flats, split where the
 * script changes its law, where a foot leaves the floor and at every turning point. (`moving-masses.ts` has the
 * equations, `roll-leg.ts` and `stand-on-flat.ts` the legs.)
 */
import { isMissing } from '../numeric/missing.js';
import { rollLeg } from './roll-leg.js';
import { guardAt, placeAt, placeAtStart, type Course, type Leg, type Place } from './scripted-place.js';
import { standOnFlat } from './stand-on-flat.js';
import type { Sense } from './tip.js';

export interface ScriptedRun {
  readonly legs: readonly Leg[];
  readonly end: Place;
  /** null: it does not. */
  readonly goesOver: Sense | null;
  readonly leavesFloor: boolean;
  /** Largest grip that a flat's impact asked for. */
  readonly grip: number;
}

/** More legs than any script takes: rather a fault than a loop without end. */
const mostLegs = 20000;

/**
 * @param start lean, radians, and θ̇, radians a second, at time 0
 * @throws RangeError when it comes to no end
 */
export function rollThrough(
  course: Course,
  start: { readonly lean: number; readonly rate: number },
): ScriptedRun {
  const legs: Leg[] = [];
  let here = placeAtStart(course, start);
  let grip = 0;
  while (legs.length < mostLegs) {
    const goesOver = goneOver(course, here);
    if (goesOver !== null || isOver(course, here, legs.length > 0))
      return { legs, end: here, goesOver, leavesFloor: false, grip };
    const ended = here.stands ? standOnFlat(course, here) : rollLeg(course, here);
    legs.push(ended.leg);
    grip = Math.max(grip, ended.grip);
    if (isMissing(ended.next)) {
      const end = placeAt(here, ended.leg.points.at(-1)!);
      return { legs, end, goesOver: null, leavesFloor: true, grip };
    }
    here = ended.next;
  }
  throw new RangeError(`rollThrough: no end after ${mostLegs} legs, at ${here.time} s`);
}

function goneOver(course: Course, { time, lean }: Place): Sense | null {
  const { back, forward } = guardAt(course, time);
  if (lean >= back) return 'back';
  return lean <= forward ? 'forward' : null;
}

/** What stands still at the beginning has not come to its end. */
function isOver(
  { script: { end, foot }, until, endsFalling }: Course,
  place: Place,
  hasMoved: boolean,
): boolean {
  const { time, sense, stands, footOn } = place;
  if (time >= until) return true;
  const shoves = foot !== null && footOn && time < foot.until;
  return endsFalling && hasMoved && time >= end && !shoves && (stands || sense < 0);
}

/** The leans at the ends of all legs, between which θ only grows or only falls: its extremes are among them. */
export const turningLeans = ({ legs, end }: ScriptedRun, from = 0): number[] => [
  ...legs.filter((leg) => leg.from.time >= from).map((leg) => leg.from.lean),
  ...(end.time >= from ? [end.lean] : []),
];
