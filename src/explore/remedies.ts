/**
 * What to change, and by how much, so that a limit is met: for each dimension by itself the least change in whole maker's
 * steps, all limits judged again with it; and where none does it without breaking another limit, two together.
 */
import type { JudgedLimit } from '../checks/verdict.js';
import type { Design } from '../design/read-design.js';
import { changeableIn } from './changeable.js';
import { designBuilder } from './design-function.js';
import type { Stage } from './reaches.js';
import { changeIn, leastInRounds, remedyOf, type Remedy, type Searched } from './remedy.js';
import { remediesOfTwo } from './remedy-pairs.js';
import { judgedInSteps } from './stepped-design.js';

/** By id of the limit that is not met; least change first. */
export type Remedies = ReadonlyMap<string, readonly Remedy[]>;

export interface RemedySettings {
  readonly stage: Stage;
  /** Told how many of how many dimensions were tried. */
  readonly progress?: (done: number, of: number) => void;
}

/** @param limits as they were judged on the design itself */
export function remediesFor(
  design: Design,
  limits: readonly JudgedLimit[],
  settings: RemedySettings,
): Remedies {
  const failing = limits.filter(({ verdict }) => verdict === 'fail');
  const searched = searchedIn(design, limits, settings.stage);
  const singles = remediesOfOne(searched, failing, settings.progress);
  return new Map(
    failing.map((limit) => {
      const own = singles.get(limit.id)!;
      const whole = own.some(({ breaks }) => breaks.length === 0);
      return [limit.id, chosen(whole ? own : [...own, ...remediesOfTwo(searched, limit, own)])];
    }),
  );
}

function searchedIn(design: Design, limits: readonly JudgedLimit[], stage: Stage): Searched {
  const built = designBuilder(design)();
  if (!built.ok) throw new RangeError(`remediesFor: ${design.file} cannot be built`);
  const changeable = changeableIn(design, built, stage);
  return {
    stage,
    units: built.design.units,
    changeable,
    before: new Map(limits.map((limit) => [limit.id, limit])),
    ...judgedInSteps(design, changeable),
  };
}

/** Of each size the least change that mends one of the limits, the least that mends them all, and each without breaking others. */
function remediesOfOne(
  searched: Searched,
  failing: readonly JudgedLimit[],
  progress: RemedySettings['progress'],
): ReadonlyMap<string, readonly Remedy[]> {
  const found = new Map<string, Remedy[]>(failing.map(({ id }) => [id, []]));
  const goals = [...failing.map((limit) => [limit]), ...(failing.length > 1 ? [failing] : [])];
  searched.changeable.forEach((_, i) => {
    progress?.(i, searched.changeable.length);
    for (const limits of goals) {
      for (const steps of leastInRounds(searched, i, limits))
        for (const limit of limits) {
          const remedy = remedyOf(searched, limit, new Map([[i, steps]]));
          const others = found.get(limit.id)!;
          if (remedy !== null && !others.some((other) => sameChanges(other, remedy))) others.push(remedy);
        }
    }
  });
  return found;
}

const sameChanges = (a: Remedy, b: Remedy): boolean =>
  a.changes.every(({ change, to }, i) => change === b.changes[i]?.change && to === b.changes[i].to);

/** So many are told of one limit. */
const most = 3;

/** Where some break nothing those only; of them the least change first, and one that mends all among them. */
export function chosen(remedies: readonly Remedy[]): Remedy[] {
  const whole = remedies.filter(({ breaks }) => breaks.length === 0);
  const sorted = (whole.length > 0 ? whole : remedies).toSorted((a, b) => changeIn(a) - changeIn(b));
  const first = sorted.slice(0, most);
  const mending = sorted.find(({ mendsAll }) => mendsAll);
  return mending === undefined || first.includes(mending) ? first : [...first.slice(0, most - 1), mending];
}
