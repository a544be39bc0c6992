/** From one turning point to the next against rolling resistance, stretch by stretch, through joints and over flats. */
import type { MassProperties } from '../mass.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import { missing, type OrMissing } from '../numeric/missing.js';
import { follow, type FollowSettings, type OdePoint } from '../numeric/ode.js';
import { crestsBeside } from './balance.js';
import { flatImpact } from './flat-impact.js';
import { g } from './gravity.js';
import { heightAt, heightOn, slopeOn, stretchAt, type Landscape } from './landscape.js';
import { rollingLoad, rollingRate, type Rolling } from './rolling-resistance.js';

/** One point of a motion; where it strikes a flat's end there are two at one time. */
export interface Sample {
  readonly time: number;
  readonly lean: number;
  /** θ̇, radians a second */
  readonly rate: number;
}

/** What stays the same from half swing to half swing. */
export interface Course {
  readonly landscape: Landscape;
  readonly gyration2: number;
  readonly resistance: number;
  /** Leans that it must not pass, and why. */
  readonly back: Limit;
  readonly forward: Limit;
  readonly steps: FollowSettings;
}

interface Limit {
  readonly lean: number;
  readonly reason: string;
}

export function courseOf(
  landscape: Landscape,
  { nose, tail }: RunningSurface,
  { mass, inertia }: MassProperties,
  rest: number,
  release: number,
  resistance: number,
): Course {
  const gyration2 = inertia / mass;
  const amplitude = Math.max(Math.abs(release - rest), leastScale);
  // The time of a pendulum as long as the arm of G about the contact: with it errors scale as lengths do.
  const time = Math.sqrt(Math.sqrt(gyration2 + heightAt(landscape, rest) ** 2) / g);
  const [crestBack, crestForward] = crestsBeside(landscape, rest);
  const limit = (end: number, crest: number, name: string): Limit =>
    Math.abs(crest - rest) < Math.abs(end - rest)
      ? { lean: crest, reason: 'goes over: past the point of no return' }
      : { lean: end, reason: `the swing passes the ${name} end of the rockers` };
  return {
    landscape,
    gyration2,
    resistance,
    back: limit(tail.lean, crestBack, 'tail'),
    forward: limit(nose.lean, crestForward, 'nose'),
    steps: { scale: [amplitude, amplitude / time], firstStep: firstShare * time },
  };
}

/** For less than this, radians, a share of 1e-12 would ask for more than angles and heights of order 1 have digits. */
const leastScale = 1e-5;
/** A first step that any motion allows; the next are as long as its error permits. */
const firstShare = 1e-3;

export interface Turned {
  readonly time: number;
  readonly lean: number;
  /** The stretch it turns on. */
  readonly index: number;
  /** Whether it came to a stop on the flat at this lean. */
  readonly onFlat: boolean;
}

/** @param samples what is passed is added to it, when it is given */
export function halfRoll(
  course: Course,
  start: number,
  from: { readonly time: number; readonly lean: number },
  sense: 1 | -1,
  samples: Sample[] | null,
): OrMissing<Turned> {
  const { landscape, gyration2, resistance } = course;
  let index = start;
  let point: OdePoint = { time: from.time, state: [from.lean, 0] };
  for (;;) {
    const rolling = { stretch: stretchAt(landscape, index), gyration2, resistance, sense };
    const leg = overStretch(course, rolling, point, samples);
    if ('missing' in leg) return leg;
    const { time, state } = leg.point;
    if (leg.turned) return { time, lean: state[0]!, index, onFlat: false };
    const lean = sense > 0 ? rolling.stretch.to : rolling.stretch.from;
    const kept = speedKept(course, index, lean, sense);
    if (kept <= 0) return { time, lean, index, onFlat: true };
    point = { time, state: [lean, state[1]! * kept] };
    if (kept < 1) samples?.push({ time, lean, rate: point.state[1]! });
    index += sense;
  }
}

/** To the turning point on this stretch, or to the end of it. */
function overStretch(
  { back, forward, steps }: Course,
  rolling: Rolling,
  start: OdePoint,
  samples: Sample[] | null,
): OrMissing<{ readonly point: OdePoint; readonly turned: boolean }> {
  const { stretch, sense } = rolling;
  const limit = sense > 0 ? back : forward;
  const end = sense > 0 ? stretch.to : stretch.from;
  let least = rollingLoad(rolling, start);
  const each = (point: OdePoint): void => {
    least = Math.min(least, rollingLoad(rolling, point));
    samples?.push({ time: point.time, lean: point.state[0]!, rate: point.state[1]! });
  };
  const ends = [
    ({ state }: OdePoint) => sense * state[1]!,
    ({ state }: OdePoint) => sense * (limit.lean - state[0]!),
    ({ state }: OdePoint) => sense * (end - state[0]!),
  ];
  const followed = follow(rollingRate(rolling), start, ends, { ...steps, each });
  if (!(least > 0)) return missing('leaves the floor');
  if (followed.end === 1) return missing(limit.reason);
  return { point: followed.point, turned: followed.end === 0 };
}

/** θ̇⁺/θ̇⁻ from one stretch to the next: 1 where they meet, less over a flat. */
function speedKept({ landscape, gyration2 }: Course, index: number, lean: number, sense: 1 | -1): number {
  const [here, next] = [stretchAt(landscape, index), stretchAt(landscape, index + sense)];
  if ((sense > 0 ? here : next).flatAfter === 0) return 1;
  const [left, met] = [slopeOn(here, lean), slopeOn(next, lean)];
  return flatImpact(gyration2, heightOn(here, lean), left, met).speedRatio;
}
