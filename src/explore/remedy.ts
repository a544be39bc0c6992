/** One way to meet a limit that is not met: what is changed, and all that comes of it. */
import type { JudgedLimit } from '../checks/verdict.js';
import { loadIds } from '../names.js';
import type { LengthUnit } from '../quantity/units.js';
import { valueAfter, type Changeable } from './changeable.js';
import { leastChange } from './least-change.js';
import { movesBetween, type Move } from './moves.js';
import type { Stage } from './reaches.js';
import { worstOff } from './shortfall.js';
import type { JudgedInSteps, JudgedSteps, Steps } from './stepped-design.js';

export interface RemedyChange {
  readonly change: Changeable;
  /** SI. */
  readonly from: number;
  readonly to: number;
  /** Of two together the limits that would not be met without this one: what it is for; none of one by itself. */
  readonly neededFor: readonly string[];
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
  /** Ids of limits that are met now and would not be, or cannot be judged now and would fail. */
  readonly breaks: readonly string[];
  /** What a limit looks at and moves by what a maker would read, nothing of the limit itself. */
  readonly moves: readonly Move[];
  /** Whether every limit is met then. */
  readonly mendsAll: boolean;
}

/** A design that is looked through for remedies. */
export interface Searched extends JudgedInSteps {
  readonly stage: Stage;
  readonly units: LengthUnit;
  readonly changeable: readonly Changeable[];
  /** As they were judged on the design itself, by id. */
  readonly before: ReadonlyMap<string, JudgedLimit>;
}

/**
 * The least change of one that meets these limits, all at once; null: none in its range, or they are met.
 * @param others what is changed besides
 */
export function leastAlone(
  searched: Searched,
  index: number,
  goals: readonly JudgedLimit[],
  others: Steps = new Map(),
): number | null {
  const { least, greatest } = searched.changeable[index]!;
  const shortfall = (count: number): number =>
    shortfallIn(searched, goals, new Map([...others, [index, count]]));
  const ends = [least >> 1, least, greatest >> 1, greatest];
  if (searched.changeable.length > many && isHopeless(shortfall, ends)) return null;
  return leastChange(shortfall, least, greatest);
}

/** With more sizes than this one that does nothing much is not walked step by step. */
const many = 20;
/** What leaves as much of a shortfall, as far as it goes, does nothing much. */
const idle = 0.8;

function isHopeless(shortfall: (count: number) => number, places: readonly number[]): boolean {
  const start = shortfall(0);
  return places.every((count) => {
    const there = shortfall(count);
    return Math.sign(there) === Math.sign(start) && Math.abs(there) >= idle * Math.abs(start);
  });
}

/**
 * Of the worst of these limits on the first load that misses any, with so many steps changed; infinite where it cannot be
 * built. What is missed at rest need not be rolled through what moves.
 */
export function shortfallIn({ judged }: Searched, goals: readonly JudgedLimit[], steps: Steps): number {
  for (const load of loadIds) {
    const own = goals.filter((goal) => goal.load === load);
    if (own.length === 0) continue;
    const judgement = judged(steps, own);
    const off = judgement === null ? Infinity : worstOff(own, judgement);
    if (off !== 0) return off;
  }
  return 0;
}

/** null: the limit is not met with these changes. */
export function remedyOf(searched: Searched, limit: JudgedLimit, steps: Steps): Remedy | null {
  const { stage, units, changeable, before, judged, all } = searched;
  const judgement = judged(steps, all);
  if (judgement === null || !isMetIn(judgement, limit)) return null;
  const after = judgement.limits.find(({ id }) => id === limit.id);
  return {
    stage,
    changes: [...steps].map(([i, count]) => {
      const change = changeable[i]!;
      return { change, from: change.variable.stated, to: valueAfter(change, count), neededFor: [] };
    }),
    value: after?.value ?? null,
    range: after?.range ?? limit.range,
    notMet: judgement.limits.flatMap(({ id, verdict }) => (verdict === 'pass' ? [] : [id])),
    breaks: brokenIn(judgement, before).map(({ id }) => id),
    moves: movesBetween([...before.values()], judgement.limits, units).filter(({ id }) => id !== limit.id),
    mendsAll: judgement.limits.every(({ verdict }) => verdict === 'pass'),
  };
}

/** Of a chair that comes to rest the limit that it does is not judged at all. */
function isMetIn({ limits }: JudgedSteps, { id, measure }: JudgedLimit): boolean {
  const after = limits.find((limit) => limit.id === id);
  return measure === null ? after === undefined : after?.verdict === 'pass';
}

const brokenIn = ({ limits }: JudgedSteps, before: Searched['before']): JudgedLimit[] =>
  limits.filter(({ id, verdict }) => {
    const was = before.get(id)?.verdict;
    return verdict === 'fail' ? was !== 'fail' : verdict === 'unknown' && was === 'pass';
  });

/** What these changes break on the first load on which they break anything; null: they do not meet the limit. */
export function brokenBy(
  { judged, all, before }: Searched,
  limit: JudgedLimit,
  steps: Steps,
): readonly JudgedLimit[] | null {
  const own = judged(steps, [limit]);
  if (own === null || !isMetIn(own, limit)) return null;
  for (const load of loadIds) {
    const ridden = all.filter((one) => one.load === load);
    const judgement = ridden.length === 0 ? null : judged(steps, ridden);
    const broken = judgement === null ? [] : brokenIn(judgement, before);
    if (broken.length > 0) return broken;
  }
  return [];
}

/** What is broken is asked for too, and what that breaks: so often. */
const rounds = 4;

/**
 * The least changes of one that meet these limits: the first by itself, then each with what the one before it breaks
 * asked for besides; the last breaks nothing, or nothing better is in reach.
 */
export function leastInRounds(
  searched: Searched,
  index: number,
  goals: readonly JudgedLimit[],
  others: Steps = new Map(),
): readonly number[] {
  const found: number[] = [];
  let asked = goals;
  for (let round = 0; round <= rounds; round++) {
    const steps = leastAlone(searched, index, asked, others);
    if (steps === null) break;
    found.push(steps);
    const broken = brokenBy(searched, goals[0]!, new Map([...others, [index, steps]])) ?? [];
    const more = broken.filter(({ id }) => !asked.some((goal) => goal.id === id));
    if (more.length === 0) break;
    asked = [...asked, ...more];
  }
  return found;
}

/** How much is changed, each as a share of how far it may be. */
export const changeIn = ({ changes }: Remedy): number =>
  changes.reduce(
    (sum, { change, from, to }) => sum + shareOf(change, Math.round((to - from) / change.step)),
    0,
  );

const shareOf = ({ least, greatest }: Changeable, steps: number): number =>
  Math.abs(steps) / Math.max(1, steps < 0 ? -least : greatest);
