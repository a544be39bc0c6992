/** A chair as it may turn out, judged. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { Issue } from '../design/issue.js';
import type { LoadId, MeasureKey } from '../names.js';
import { proportionOf, type Proportion } from '../numeric/proportion.js';
import { spreadOf, type Spread } from '../numeric/spread.js';

/** By id of the limit. */
export type Judged = ReadonlyMap<string, JudgedLimit>;

export const judgedById = (limits: readonly JudgedLimit[]): Judged =>
  new Map(limits.map((limit) => [limit.id, limit]));

/** Or the first reason why it cannot be built as drawn, or nobody seated in it. */
export type Trial = { readonly judged: Judged } | { readonly judged: null; readonly issue: Issue };

export const trialOf = (limits: readonly JudgedLimit[]): Trial => ({ judged: judgedById(limits) });
export const notBuilt = ([issue]: readonly Issue[]): Trial => ({ judged: null, issue: issue! });

export interface SpreadLimit {
  readonly id: string;
  readonly load: LoadId;
  readonly sitter: string | null;
  /** null: the limit is that it comes to rest at all. */
  readonly measure: MeasureKey | null;
  readonly range: JudgedLimit['range'];
  /** Of the trials that have a value. */
  readonly spread: Spread | null;
  /** Not met, or without the value that it is judged by. */
  readonly missed: Proportion;
}

export interface Outcome {
  readonly limits: readonly SpreadLimit[];
  /** Of all: at least one limit is missed, or it cannot be built. */
  readonly any: Proportion;
  readonly notBuilt: number;
  /** Of the first that cannot be built; null: all can. */
  readonly whyNotBuilt: Issue | null;
}

const isMissed = ({ verdict }: JudgedLimit): boolean => verdict !== 'pass';

const missesAny = (judged: Judged): boolean => [...judged.values()].some(isMissed);

/** How many miss each of some limits, and any at all; what cannot be built misses all. */
export function missesAmong(
  trials: readonly Trial[],
  ids: readonly string[],
): { readonly each: readonly number[]; readonly any: number } {
  const each = ids.map(
    (id) =>
      trials.filter(({ judged }) => {
        const limit = judged?.get(id);
        return judged === null || (limit !== undefined && isMissed(limit));
      }).length,
  );
  return { each, any: trials.filter(({ judged }) => judged === null || missesAny(judged)).length };
}

/** The limits of those that can be built; null where none can. */
export function outcomeOf(trials: readonly Trial[]): Outcome | null {
  const built = trials.flatMap(({ judged }) => judged ?? []);
  if (built.length === 0) return null;
  const seen = new Map(built.flatMap((judged) => [...judged].map(([id, limit]) => [id, limit] as const)));
  const limits = [...seen.values()].map(({ id, load, sitter, measure, range }): SpreadLimit => {
    const own = built.flatMap((judged) => judged.get(id) ?? []);
    const values = own.flatMap(({ value }) => (value === null ? [] : [value]));
    const missed = proportionOf(own.filter(isMissed).length, built.length);
    return { id, load, sitter, measure, range, spread: spreadOf(values), missed };
  });
  const failed = trials.find((trial) => trial.judged === null);
  return {
    limits,
    any: proportionOf(missesAmong(trials, []).any, trials.length),
    notBuilt: trials.length - built.length,
    whyNotBuilt: failed?.judged === null ? failed.issue : null,
  };
}
