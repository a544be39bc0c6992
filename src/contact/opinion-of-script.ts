/** The second calculation of a load that moves: its script given to a body that is free. */
import { hasFlatBetween } from '../geometry/profile.js';
import type { MeasureKey } from '../names.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import type { Course } from '../rolling/scripted-place.js';
import { turningLeans, type ScriptedRun } from '../rolling/scripted-roll.js';
import type { Sense } from '../rolling/tip.js';
import { rollFreely, topOfThree, type FreeRoll } from './free-roll.js';
import { stepFor, surely, withoutStep, type Compared, type SecondOpinion } from './second-opinion.js';

/** A peak that is compared. */
export interface Peak {
  readonly measure: MeasureKey;
  readonly sense: Sense;
  /** From when on it counts, seconds. */
  readonly from: number;
  /** Lean at the peak by the exact model, radians. */
  readonly lean: number;
}

export interface Scripted {
  readonly course: Course;
  readonly run: ScriptedRun;
  /** Which way it goes over by the exact model; null: it does not. */
  readonly goesOver: Sense | null;
  readonly surface: RunningSurface;
  /** The one that going over its way would be beyond first. */
  readonly peaks: readonly [Peak, ...Peak[]];
  /** Where it rests before: lean that peaks are counted from, radians, and how high G stands, metres. */
  readonly settled: number;
  readonly height: number;
  /** Of a small swing there, seconds; null: none. */
  readonly period: number | null;
  /** Of the floor. */
  readonly friction: number;
}

/** ε: three times what most chairs at random were off by. */
const energyTolerance = 0.003;
/** So much more of it where a chair has pivoted on an end of its runner and come down on its arc again. */
const cornerFactor = 3;
/** Of a peak that much energy is needed to move, radians. */
const peakTolerance = (0.03 * Math.PI) / 180;
/** Finer than for a swing’s slide: a chair that comes down from the corner of its nose feels the first facets of the arc. */
const fineShare = 0.02;
/** What a script does to a chair is sudden beside a swing. */
const finer = 1.5;
/** The facets go on for so far beyond where it turns by the exact model, radians. */
const margin = (5 * Math.PI) / 180;

const never = [
  'the friction asked for and the least force on the floor',
  'what is left, but as it follows from peaks',
];

export const opinionOfScript = (scripted: Scripted): SecondOpinion =>
  surely((more) => opinionBy(scripted, stepFor(scripted.period, scripted.height) / (finer * more)));

function opinionBy(scripted: Scripted, step: number): SecondOpinion {
  const { course, run, surface, friction } = scripted;
  const start = { lean: (run.legs[0]?.from ?? run.end).lean, rate: 0 };
  const leans = turningLeans(run);
  const [forward, back] = [Math.min(...leans), Math.max(...leans)];
  const rollOn = (grip: number, one = step): FreeRoll => {
    const facets = { from: forward - margin, to: back + margin, share: fineShare, step: one };
    return rollFreely(course, start, { facets, friction: grip });
  };
  const onFloor = rollOn(friction);
  const { slide, lifts } = onFloor;
  const without = (why: string): SecondOpinion => ({
    ...{ compared: [], slide, lifts },
    notCovered: [`peaks: ${why}`, ...never],
  });
  if (run.leavesFloor) return without('it leaves the floor');
  if (hasFlatBetween(course.profile, forward, back)) return without('flats on the way take energy');
  // What never slid goes the same way on a floor that grips.
  const gripped = slide === 0 ? onFloor : rollOn(Infinity);
  if (scripted.goesOver !== null && scripted.goesOver === gripped.goesOver)
    return without('it goes over, by both');
  if (scripted.goesOver !== gripped.goesOver) {
    const compared = overByOne(scripted, gripped);
    return compared === null
      ? without('it is just about to go over')
      : { compared: [compared], slide, lifts, notCovered: never };
  }
  const coarse = rollOn(Infinity, 2 * step);
  const pivots = forward < surface.nose.lean || back > surface.tail.lean;
  const share = energyTolerance * (pivots ? cornerFactor : 1);
  const compared = scripted.peaks.map((peak) => seenAt(peak, gripped, coarse, scripted.settled, share));
  return { compared, slide, lifts, notCovered: never };
}

interface Top {
  readonly lean: number;
  /** |θ̈| there, radians a second squared. */
  readonly turning: number;
}

/** The farthest that it goes a way, from a time on. */
function topOf({ sense, from }: Pick<Peak, 'sense' | 'from'>, { passed }: FreeRoll): Top {
  const sign = sense === 'back' ? 1 : -1;
  let top = passed.length - 1;
  for (const [i, { time, lean }] of passed.entries())
    if (time >= from && sign * lean > sign * passed[top]!.lean) top = i;
  const [here, after] = [passed[top]!, passed[top + 1]];
  const before = passed[top - 1] ?? here;
  const turned = after ?? here;
  const turning = Math.abs((turned.rate - before.rate) / (turned.time - before.time));
  // It may end where it turns.
  const lean = after === undefined ? here.lean : topOfThree(before.lean, here.lean, after.lean);
  return { lean, turning };
}

/** Half the square of the greatest rate: its energy over A. */
const fastest = ({ passed }: FreeRoll): number =>
  passed.reduce((most, { rate }) => Math.max(most, rate ** 2 / 2), 0);

/**
 * An error of a share ε of the energy of the fastest moment moves a peak, where A θ̈ is what turns it back, by
 *
 *     δθ = ε ½ A θ̇_max² / (A θ̈)
 */
function seenAt(peak: Peak, fine: FreeRoll, coarse: FreeRoll, settled: number, share: number): Compared {
  const sign = peak.sense === 'back' ? 1 : -1;
  const [at, atTwice] = [topOf(peak, fine), topOf(peak, coarse)];
  return {
    measure: peak.measure,
    second: sign * (withoutStep(at.lean, atTwice.lean) - settled),
    exact: sign * (peak.lean - settled),
    tolerance: peakTolerance + (share * fastest(fine)) / at.turning,
  };
}

/**
 * Only one of the two goes over. That is told apart from a knife’s edge by the energy that is left over at the point of no
 * return, or wanting there: of the fastest moment’s more than ε. Wanting, from a peak so far below it that turns back
 * with θ̈: half their product, as the moment falls to nothing there.
 * @returns null: too near to tell
 */
function overByOne({ course, goesOver, peaks, settled }: Scripted, gripped: FreeRoll): Compared | null {
  const way = (goesOver ?? gripped.goesOver)!;
  const sign = way === 'back' ? 1 : -1;
  const crest = course.guards.at(-1)![way];
  const end = gripped.passed.at(-1)!;
  const top = topOf({ sense: way, from: 0 }, gripped);
  const apart = goesOver === null ? end.rate ** 2 / 2 : (top.turning * sign * (crest - top.lean)) / 2;
  if (apart <= energyTolerance * fastest(gripped)) return null;
  const peak = peaks.find(({ sense }) => sense === way) ?? peaks[0];
  return {
    measure: peak.measure,
    second: sign * ((goesOver === null ? end.lean : top.lean) - settled),
    exact: sign * ((goesOver === null ? peak.lean : crest) - settled),
    // However near their leans: one is over.
    tolerance: 0,
  };
}
