/** Which loads are calculated a second time, and what becomes of their limits where the two calculations disagree. */
import { opinionAtRest } from '../contact/opinion-at-rest.js';
import { opinionOfScript, type Peak } from '../contact/opinion-of-script.js';
import { allAgree, type SecondOpinion } from '../contact/second-opinion.js';
import type { MovingScript } from '../loads/load.js';
import type { LoadRecord } from '../measures/record.js';
import { isMissing } from '../numeric/missing.js';
import type { Motion } from '../measures/motion.js';
import { loads, type LoadId } from '../names.js';
import type { JudgedLimit } from './verdict.js';

export type Opinions = ReadonlyMap<LoadRecord, SecondOpinion>;

/** The empty chair, and the first sitter’s seated and moving loads, where they come to rest at all. */
const atRest: readonly LoadId[] = ['empty', 'seated'];

/**
 * @param friction of the floor
 * @param sitter the first; null: none
 */
export function secondOpinions(
  records: readonly LoadRecord[],
  friction: number,
  sitter: string | null,
): Opinions {
  const opinions = new Map<LoadRecord, SecondOpinion>();
  for (const record of records) {
    const { load } = record;
    if (load.sitter !== null && load.sitter !== sitter) continue;
    const opinion = loads[load.id].moving
      ? ofMotion(record, friction)
      : atRest.includes(load.id)
        ? ofRest(record, friction)
        : null;
    if (opinion !== null) opinions.set(record, opinion);
  }
  return opinions;
}

function ofRest({ chair, load, roll }: LoadRecord, friction: number): SecondOpinion | null {
  if (roll.atRest === null) return null;
  const { profile, surface } = chair;
  return opinionAtRest({
    profile,
    surface,
    body: load.settled,
    atRest: roll.atRest,
    swing: load.swing,
    friction,
  });
}

function ofMotion({ chair, load, roll, motion }: LoadRecord, friction: number): SecondOpinion | null {
  if (motion === null || roll.atRest === null) return null;
  const { course, run, goesOver } = motion;
  const { smallPeriod, rest } = roll.atRest;
  return opinionOfScript({
    course,
    run,
    goesOver,
    period: isMissing(smallPeriod) ? null : smallPeriod,
    surface: chair.surface,
    peaks: peaksOf(load.script, motion),
    settled: rest.lean,
    height: rest.height,
    friction,
  });
}

function peaksOf(script: MovingScript | null, { farthest, kick }: Motion): [Peak, ...Peak[]] {
  if (script?.kind !== 'getting-up')
    return [{ measure: 'peakBackDeg', sense: 'back', from: 0, lean: farthest.back }];
  const forward: Peak = { measure: 'peakForwardDeg', sense: 'forward', from: 0, lean: farthest.forward };
  if (kick === null) return [forward];
  return [forward, { measure: 'kickBackDeg', sense: 'back', from: script.settings.leaveTime, lean: kick }];
}

/** Why nothing is said of any limit then. */
export const disagree = 'the two calculations disagree: do not trust this one';

/** Where the two calculations disagree on one load, no number of the design is to be trusted. */
export function trusted(limits: readonly JudgedLimit[], opinions: Opinions): readonly JudgedLimit[] {
  if (allAgree(opinions.values())) return limits;
  return limits.map((limit) => ({ ...limit, verdict: 'unknown', reason: disagree }));
}
