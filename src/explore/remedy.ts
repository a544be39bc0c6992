/** One way to meet a limit that is not met: what is changed, and all that comes of it. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { LengthUnit } from '../quantity/units.js';
import { valueAfter, type Changeable } from './changeable.js';
import { leastChange } from './least-change.js';
import { movesBetween, type Move } from './moves.js';
import type { Stage } from './reaches.js';
import { worstOff } from './shortfall.js';
import type { JudgedInSteps, Steps } from './stepped-design.js';

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
  /** What is wanted of it then: a bound may move with the design. */
  readonly range: JudgedLimit['range'];
  /** Ids of limits that are not met then. */
  readonly notMet: readonly string[];
  /** Ids of limits that are met now and would not be. */
  readonly breaks: readonly string[];
  /** What a limit looks at and moves by what a maker would read, nothing of the limit itself. */
  readonly moves: readonly Move[];
  /** Whether every limit is met then. */
  readonly mendsAll: boolean;
}

/** A design that is looked through for remedies. */
export interface Searched {
  readonly stage: Stage;
  readonly units: LengthUnit;
  readonly changeable: readonly Changeable[];
  /** As they were judged on the design itself, by id. */
  readonly before: ReadonlyMap<string, JudgedLimit>;
  readonly judged: JudgedInSteps;
}

/**
 * The least change of one that meets these limits, all at once; null: none in its range, or they are met.
 * @param others what is changed besides
 */
export function leastAlone(
  { changeable, judged }: Searched,
  index: number,
  goals: readonly JudgedLimit[],
  others: Steps = new Map(),
): number | null {
  const { least, greatest } = changeable[index]!;
  const shortfall = (count: number): number => {
    const judgement = judged(new Map([...others, [index, count]]), goals);
    return judgement === null ? Infinity : worstOff(goals, judgement);
  };
  return leastChange(shortfall, least, greatest);
}

/** null: the limit is not met with these changes. */
export function remedyOf(
  { stage, units, changeable, before, judged }: Searched,
  limit: JudgedLimit,
  steps: Steps,
): Remedy | null {
  const judgement = judged(steps, null);
  const after = judgement?.limits.find(({ id }) => id === limit.id);
  // Of a chair that comes to rest the limit that it does is not judged at all.
  const met = limit.measure === null ? after === undefined : after?.verdict === 'pass';
  if (judgement === null || !met) return null;
  return {
    stage,
    changes: [...steps].map(([i, count]) => {
      const change = changeable[i]!;
      return { change, from: change.variable.stated, to: valueAfter(change, count) };
    }),
    value: after?.value ?? null,
    range: after?.range ?? limit.range,
    notMet: judgement.limits.flatMap(({ id, verdict }) => (verdict === 'pass' ? [] : [id])),
    breaks: judgement.limits
      .filter(({ id, verdict }) => verdict !== 'pass' && before.get(id)?.verdict === 'pass')
      .map(({ id }) => id),
    moves: movesBetween([...before.values()], judgement.limits, units).filter(({ id }) => id !== limit.id),
    mendsAll: judgement.verdict === 'pass',
  };
}

/** How much is changed, each as a share of how far it may be. */
export const changeIn = ({ changes }: Remedy): number =>
  changes.reduce(
    (sum, { change, from, to }) => sum + shareOf(change, Math.round((to - from) / change.step)),
    0,
  );

const shareOf = ({ least, greatest }: Changeable, steps: number): number =>
  Math.abs(steps) / Math.max(1, steps < 0 ? -least : greatest);
