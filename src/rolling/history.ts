/** A run through a script moment by moment, fit to draw. */
import { oneStep, type OdePoint } from '../numeric/ode.js';
import { rateFrom } from './moving-masses.js';
import { rateAlong } from './roll-leg.js';
import { reactionAt } from './run-forces.js';
import { rollingMass } from './script.js';
import { footIn, sumsOn, type Course, type Leg } from './scripted-place.js';
import type { ScriptedRun } from './scripted-roll.js';
import { g } from './gravity.js';

export interface Moment {
  /** Seconds. */
  readonly time: number;
  /** Radians, and a second. */
  readonly lean: number;
  readonly rate: number;
  /** N over the weight of what rolls. */
  readonly floorForce: number;
  /** F over N, positive forward. */
  readonly friction: number;
}

/**
 * Every point of the run, and between them so often that none is farther from the next than an interval. Where something
 * jumps there are two at one time.
 * @param interval seconds
 */
export function historyOf(course: Course, run: ScriptedRun, interval: number): Moment[] {
  const weight = rollingMass(course.script) * g;
  return run.legs.flatMap((leg) =>
    pointsOf(course, leg, interval).map((point) => momentAt(course, leg, point, weight)),
  );
}

function pointsOf(course: Course, leg: Leg, interval: number): OdePoint[] {
  if (leg.from.stands) return [...leg.points];
  const rate = rateAlong(course, leg.from.index, footIn(course, leg.from));
  return leg.points.flatMap((point, k) => {
    const next = leg.points[k + 1];
    if (next === undefined) return [point];
    const parts = Math.ceil((next.time - point.time) / interval);
    const step = (next.time - point.time) / parts;
    return Array.from({ length: parts }, (_, i) => (i === 0 ? point : oneStep(rate, point, i * step).to));
  });
}

function momentAt(course: Course, { from }: Leg, point: OdePoint, weight: number): Moment {
  const { time, state } = point;
  const { normal, along } = reactionAt(course, from, point);
  const rate = from.stands ? 0 : rateFrom(sumsOn(course, from.index, state[0]!, time), state[1]!);
  return { time, lean: state[0]!, rate, floorForce: normal / weight, friction: along / normal };
}
