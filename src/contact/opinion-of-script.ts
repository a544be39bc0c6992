/** The second calculation of a load that moves: its script given to a body that is free. */
import { hasFlatBetween } from '../geometry/profile.js';
import type { MeasureKey } from '../names.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import type { Course } from '../rolling/scripted-place.js';
import { turningLeans, type ScriptedRun } from '../rolling/scripted-roll.js';
import { rollFreely, type FreeRoll } from './free-roll.js';
import { coarseShare, stepFor, type Compared, type SecondOpinion } from './second-opinion.js';

/** A peak that is compared. */
export interface Peak {
  readonly measure: MeasureKey;
  readonly sense: 'back' | 'forward';
  /** From when on it counts, seconds. */
  readonly from: number;
  /** Lean at the peak by the exact model, radians. */
  readonly lean: number;
}

export interface Scripted {
  readonly course: Course;
  readonly run: ScriptedRun;
  readonly surface: RunningSurface;
  readonly peaks: readonly Peak[];
  /** Lean that peaks are counted from, radians. */
  readonly settled: number;
  /** Of the floor. */
  readonly friction: number;
}

/** ε: 0.01 was measured where a chair pivots on a sharp nose, 0.004 elsewhere. */
const peakEnergy = 0.03;
/** So far beyond the ends of the runner something round may still roll, radians: the longer of two unlike rockers. */
const beyond = Math.PI / 4;
/** Of a peak, radians; more where little energy moves it far. */
const peakTolerance = (0.05 * Math.PI) / 180;

const never = ['what may be stepped on', 'rests under a load'];

export function opinionOfScript({ course, run, surface, peaks, settled, friction }: Scripted): SecondOpinion {
  const start = { lean: (run.legs[0]?.from ?? run.end).lean, rate: 0 };
  const facets = {
    from: surface.nose.lean - beyond,
    to: surface.tail.lean + beyond,
    share: coarseShare,
    step: stepFor(null) / 2,
  };
  const onFloor = rollFreely(course, start, { facets, friction });
  const { slide, lifts } = onFloor;
  const without = (why: string): SecondOpinion => ({
    compared: [],
    slide,
    lifts,
    notCovered: [`peaks: ${why}`, ...never],
  });
  if (run.leavesFloor) return without('it leaves the floor');
  const leans = turningLeans(run);
  if (hasFlatBetween(course.profile, Math.min(...leans), Math.max(...leans)))
    return without('flats on the way take energy');
  // What never slid goes the same way on a floor that grips.
  const gripped = slide === 0 ? onFloor : rollFreely(course, start, { facets, friction: Infinity });
  if (run.goesOver !== null || gripped.goesOver !== null)
    return without(run.goesOver === gripped.goesOver ? 'it goes over' : 'it is about to go over');
  return { compared: peaks.map((peak) => seenAt(peak, gripped, settled)), slide, lifts, notCovered: never };
}

/**
 * An error of a share ε of the energy of the fastest moment moves a peak, where A θ̈ is what turns it back, by
 *
 *     δθ = ε ½ A θ̇_max² / (A θ̈)
 */
function seenAt({ measure, sense, from, lean }: Peak, { passed }: FreeRoll, settled: number): Compared {
  const sign = sense === 'back' ? 1 : -1;
  let peak = passed.length - 1;
  for (const [i, { time }] of passed.entries())
    if (time >= from && sign * passed[i]!.lean > sign * passed[peak]!.lean) peak = i;
  const [before, after] = [passed[Math.max(0, peak - 1)]!, passed[Math.min(passed.length - 1, peak + 1)]!];
  const turning = Math.abs((after.rate - before.rate) / (after.time - before.time));
  const fastest = passed.reduce((most, { rate }) => Math.max(most, Math.abs(rate)), 0);
  return {
    measure,
    second: sign * (passed[peak]!.lean - settled),
    exact: sign * (lean - settled),
    tolerance: peakTolerance + (peakEnergy * fastest ** 2) / (2 * turning),
  };
}
