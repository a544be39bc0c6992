/**
 * How a free swing dies away: let go at a lean, rolled against rolling resistance c from turning point to turning
 * point until it stands still (`rolling-resistance.ts` has the equation). On the way flats take their impacts
 * (`flat-impact.ts`; c has no share in an impact, which takes no time).
 */
import type { MassProperties } from '../mass.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import { isMissing, missing, type Missing, type OrMissing } from '../numeric/missing.js';
import { atJoint } from './balance.js';
import { courseOf, halfRoll, type Course, type Sample } from './half-roll.js';
import { slopeOn, stretchAt, type Landscape } from './landscape.js';
import { holdsStill } from './rolling-resistance.js';
import { startIndex } from './swing.js';

export interface Turn {
  /** Seconds from the letting go. */
  readonly time: number;
  readonly lean: number;
}

export interface Decay {
  /** Where it was let go, its turning points, and last where it stood still or was left. */
  readonly turns: readonly Turn[];
  /**
   * From each turn to the next, how much nearer to its rest it came, radians. On a profile unlike before and behind
   * the rest the sides differ: there two together, a whole rock, are what was lost.
   */
  readonly losses: readonly number[];
  /** Whole rocks, there and back, before its end. */
  readonly rocks: number;
  readonly end: 'stands still' | 'below the least amplitude' | 'still rocks';
  /** When asked for: the motion step by step, fit to draw. */
  readonly samples: readonly Sample[];
}

export interface DecaySettings {
  /** c, metres */
  readonly resistance: number;
  /** It is left at the first turn nearer to its rest than this, radians. 0: only when it stands still. */
  readonly leastAmplitude?: number;
  /** It is left after so many half swings. */
  readonly mostHalfSwings?: number;
  readonly sampled?: boolean;
}

/** Wood on wood takes a third of a degree each: two thousand mean that nothing is lost. */
const plenty = 2000;

/**
 * @param rest lean of the rest that it swings about, radians
 * @param release lean at which it is let go, radians
 */
export function decay(
  landscape: Landscape,
  surface: RunningSurface,
  body: MassProperties,
  rest: number,
  release: number,
  { resistance, leastAmplitude = 0, mostHalfSwings = plenty, sampled = false }: DecaySettings,
): OrMissing<Decay> {
  if (!(resistance >= 0)) throw new RangeError(`decay: rolling resistance ${resistance} m`);
  const course = courseOf(landscape, surface, body, rest, release, resistance);
  const samples: Sample[] | null = sampled ? [{ time: 0, lean: release, rate: 0 }] : null;
  const turns: Turn[] = [{ time: 0, lean: release }];
  let sense: 1 | -1 = release > rest ? -1 : 1;
  let index = startIndex(landscape, release, sense);
  const fault = letGoWrong(course, index, rest, release);
  if (fault !== null) return fault;
  for (;;) {
    const here = turns.at(-1)!;
    const amplitude = Math.abs(here.lean - rest);
    // Over a flat each half swing takes the same share of the speed: without resistance it ends only in the limit.
    if (standsAt(course, index, here.lean) || amplitude < atJoint)
      return historyOf(turns, rest, 'stands still', samples);
    if (amplitude < leastAmplitude) return historyOf(turns, rest, 'below the least amplitude', samples);
    if (turns.length > mostHalfSwings) return historyOf(turns, rest, 'still rocks', samples);
    if (climbs(course, index, here.lean, sense)) return missing('turns back before it reaches its rest');
    const half = halfRoll(course, index, here, sense, samples);
    if (isMissing(half)) return half;
    turns.push({ time: half.time, lean: half.lean });
    if (half.onFlat) return historyOf(turns, rest, 'stands still', samples);
    index = half.index;
    sense = sense === 1 ? -1 : 1;
  }
}

const standsAt = ({ landscape, resistance }: Course, index: number, lean: number): boolean =>
  resistance > 0 && holdsStill(stretchAt(landscape, index), lean, resistance);

const climbs = ({ landscape }: Course, index: number, lean: number, sense: 1 | -1): boolean =>
  slopeOn(stretchAt(landscape, index), lean) * sense >= 0;

function letGoWrong(course: Course, index: number, rest: number, release: number): Missing | null {
  if (Math.abs(release - rest) < atJoint || standsAt(course, index, release)) return null;
  if (climbs(course, index, release, release > rest ? -1 : 1))
    return missing('let go past the point of no return');
  if (release > course.back.lean) return missing(course.back.reason);
  return release < course.forward.lean ? missing(course.forward.reason) : null;
}

function historyOf(
  turns: readonly Turn[],
  rest: number,
  end: Decay['end'],
  samples: readonly Sample[] | null,
): Decay {
  const away = turns.map(({ lean }) => Math.abs(lean - rest));
  const losses = away.slice(1).map((next, i) => away[i]! - next);
  return {
    turns,
    losses,
    rocks: Math.floor(losses.length / 2),
    end,
    samples: samples ?? [],
  };
}
