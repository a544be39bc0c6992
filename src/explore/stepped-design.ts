/** A design changed by whole maker's steps, judged. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { Design } from '../design/read-design.js';
import { loadIds } from '../names.js';
import { valueAfter, type Changeable } from './changeable.js';
import { designFunction } from './design-function.js';
import { judgeFor, type Judgement } from './judge.js';

/** Whole steps by index of what is changed. */
export type Steps = ReadonlyMap<number, number>;

/**
 * The design with so many steps of each change, judged; null: it cannot be built. Only the loads and sitters of
 * some limits are rolled, or all.
 */
export type JudgedInSteps = (steps: Steps, goals: readonly JudgedLimit[] | null) => Judgement | null;

/** Each is judged once. */
export function judgedInSteps(design: Design, changeable: readonly Changeable[]): JudgedInSteps {
  const { at } = designFunction(
    design,
    changeable.map(({ variable }) => variable),
  );
  const judges = new Map<string, ReturnType<typeof judgeFor>>();
  const known = new Map<string, Judgement | null>();
  return (steps, goals) => {
    const loads = goals && [...new Set(goals.map(({ load }) => load))];
    const whom = goals && new Set(goals.map(({ sitter }) => sitter));
    const name = JSON.stringify([loads, whom && [...whom]]);
    const counts = changeable.map((_, i) => steps.get(i) ?? 0);
    const key = `${name}: ${counts.join(' ')}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const judge = judges.get(name) ?? judgeFor(loads ?? loadIds, whom ?? undefined);
    judges.set(name, judge);
    const values = changeable.map((each, i) =>
      counts[i] === 0 ? each.variable.stated : valueAfter(each, counts[i]!),
    );
    const tried = at(values);
    const judgement = tried.ok ? judge(tried) : null;
    known.set(key, judgement);
    return judgement;
  };
}
