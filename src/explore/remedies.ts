/**
 * What to change, and by how much, so that a limit is met: for each dimension by itself the least change in whole maker's
 * steps, all limits judged again with it; and where none does it without breaking another limit, two together.
 */
import type { JudgedLimit } from '../checks/verdict.js';
import type { Design } from '../design/read-design.js';
import { changeableIn, valueAfter, type Changeable, type Stage } from './changeable.js';
import { designFunction } from './design-function.js';
import { leastChange } from './least-change.js';
import { movesBetween, type Move } from './moves.js';
import { worstOff } from './shortfall.js';
import { judgedInSteps, type Steps } from './stepped-design.js';

export interface RemedyChange {
  readonly change: Changeable;
  /** SI. */
  readonly from: number;
  readonly to: number;
}

export interface Remedy {
  readonly stage: Stage;
  readonly changes: readonly RemedyChange[];
  /** Of the limit's measure then, SI; null: it is none (that it comes to rest). */
  readonly value: number | null;
  /** Ids of limits that are met now and would not be. */
  readonly breaks: readonly string[];
  /** What a limit looks at and moves by what a maker would read, nothing of the limit itself. */
  readonly moves: readonly Move[];
  /** Whether every limit is met then. */
  readonly mendsAll: boolean;
}

/** By id of the limit that is not met; least change first. */
export type Remedies = ReadonlyMap<string, readonly Remedy[]>;

/** So many are told of one limit. */
const most = 3;

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
  const built = designFunction(design, []).at([]);
  if (!built.ok) throw new RangeError(`remediesFor: ${design.file} cannot be built`);
  const changeable = changeableIn(design, built, settings.stage);
  const search = searchOf(design, limits, changeable, settings.stage);
  const found = new Map<string, Remedy[]>(failing.map(({ id }) => [id, []]));
  changeable.forEach((_, i) => {
    settings.progress?.(i, changeable.length);
    // What mends one of them, and what mends them all.
    for (const goals of [...failing.map((limit) => [limit]), ...(failing.length > 1 ? [failing] : [])]) {
      const steps = search.alone(i, goals);
      if (steps === null) continue;
      for (const limit of goals) {
        const remedy = search.remedy(limit, new Map([[i, steps]]));
        const others = found.get(limit.id)!;
        if (remedy !== null && !others.some((other) => sameChanges(other, remedy))) others.push(remedy);
      }
    }
  });
  for (const limit of failing) {
    const singles = found.get(limit.id)!;
    if (!singles.some(({ breaks }) => breaks.length === 0)) singles.push(...search.together(limit, singles));
  }
  return new Map([...found].map(([id, remedies]) => [id, chosen(remedies)]));
}

const sameChanges = (a: Remedy, b: Remedy): boolean =>
  a.changes.every(({ change, to }, i) => change === b.changes[i]?.change && to === b.changes[i].to);

/** Those that break nothing before those that do; of each the least change first, and one that mends all among them. */
function chosen(remedies: readonly Remedy[]): Remedy[] {
  const whole = remedies.filter(({ breaks }) => breaks.length === 0);
  const sorted = (whole.length > 0 ? whole : remedies).toSorted((a, b) => sizeOf(a) - sizeOf(b));
  const first = sorted.slice(0, most);
  const mending = sorted.find(({ mendsAll }) => mendsAll);
  return mending === undefined || first.includes(mending) ? first : [...first.slice(0, most - 1), mending];
}

/** As a share of how far each may be changed. */
const sizeOf = ({ changes }: Remedy): number =>
  changes.reduce(
    (sum, { change, from, to }) => sum + shareOf(change, Math.round((to - from) / change.step)),
    0,
  );

const shareOf = ({ least, greatest }: Changeable, steps: number): number =>
  Math.abs(steps) / Math.max(1, steps < 0 ? -least : greatest);

interface Search {
  /** The least change of one that meets these limits; null: none in its range, or they are met. */
  readonly alone: (index: number, goals: readonly JudgedLimit[], others?: Steps) => number | null;
  /** null: the limit is not met with it. */
  readonly remedy: (limit: JudgedLimit, steps: Steps) => Remedy | null;
  /** Two at once that break nothing. @param singles what meets it alone, breaking others */
  readonly together: (limit: JudgedLimit, singles: readonly Remedy[]) => Remedy[];
}

/** So many of those that break least are tried with another beside. */
const fewest = 4;
/** Meeting the one moves the other: they take turns so often. */
const turns = 3;

function searchOf(
  design: Design,
  limits: readonly JudgedLimit[],
  changeable: readonly Changeable[],
  stage: Stage,
): Search {
  const judged = judgedInSteps(design, changeable);
  const before = new Map(limits.map((limit) => [limit.id, limit]));
  const units = design.written.units ?? 'in';

  /** How far the worst of some limits is from being met. */
  const shortfall = (goals: readonly JudgedLimit[], steps: Steps): number => {
    const judgement = judged(steps, goals);
    return judgement === null ? Infinity : worstOff(goals, judgement);
  };

  const alone: Search['alone'] = (index, goals, others = new Map()) => {
    const { least, greatest } = changeable[index]!;
    return leastChange((steps) => shortfall(goals, new Map([...others, [index, steps]])), least, greatest);
  };

  const remedy: Search['remedy'] = (limit, steps) => {
    const judgement = judged(steps, null);
    const after = judgement?.limits.find(({ id }) => id === limit.id);
    // Of a chair that comes to rest the limit that it does is not judged at all.
    const met = limit.measure === null ? after === undefined : after?.verdict === 'pass';
    if (judgement === null || !met) return null;
    const broken = judgement.limits.filter(
      ({ id, verdict }) => verdict !== 'pass' && before.get(id)?.verdict === 'pass',
    );
    return {
      stage,
      changes: [...steps].map(([i, count]) => ({
        change: changeable[i]!,
        from: changeable[i]!.variable.stated,
        to: valueAfter(changeable[i]!, count),
      })),
      value: after?.value ?? null,
      breaks: broken.map(({ id }) => id),
      moves: movesBetween(limits, judgement.limits, units).filter(({ id }) => id !== limit.id),
      mendsAll: judgement.verdict === 'pass',
    };
  };

  const beside = (limit: JudgedLimit, first: number, second: number): Remedy | null => {
    let steps: Steps = new Map([[first, alone(first, [limit]) ?? 0]]);
    for (let turn = 0; turn < turns; turn++) {
      const broken = remedy(limit, steps)?.breaks.map((id) => before.get(id)!) ?? [limit];
      const own = steps.get(first)!;
      const mended = alone(second, broken, new Map([[first, own]]));
      if (mended === null) return null;
      const other = new Map([[second, mended]]);
      steps = new Map([[first, alone(first, [limit], other) ?? 0], ...other]);
      const whole = remedy(limit, steps);
      if (whole?.breaks.length === 0) return whole;
    }
    return null;
  };

  const together: Search['together'] = (limit, singles) => {
    const firsts = singles
      .toSorted((a, b) => a.breaks.length - b.breaks.length || sizeOf(a) - sizeOf(b))
      .slice(0, fewest)
      .map(({ changes }) => changeable.indexOf(changes[0]!.change));
    return firsts.flatMap((first) =>
      changeable.flatMap((_, second) => (second === first ? [] : (beside(limit, first, second) ?? []))),
    );
  };
  return { alone, remedy, together };
}
