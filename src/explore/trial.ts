/** A chair as it may turn out, judged. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { LoadId, MeasureKey } from '../names.js';
import { proportionOf, type Proportion } from '../numeric/proportion.js';
import { spreadOf, type Spread } from '../numeric/spread.js';

/** By id of the limit; null: it cannot be built as drawn. */
export type Trial = ReadonlyMap<string, JudgedLimit> | null;

export const trialOf = (limits: readonly JudgedLimit[]): Trial =>
  new Map(limits.map((limit) => [limit.id, limit]));

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
  /** At least one limit is missed. */
  readonly any: Proportion;
  readonly notBuilt: number;
}

const isMissed = ({ verdict }: JudgedLimit): boolean => verdict !== 'pass';

const missesAny = (trial: Trial): boolean => trial === null || [...trial.values()].some(isMissed);

/** How many miss each of some limits, and any at all; what cannot be built misses all. */
export function missesOf(
  trials: readonly Trial[],
  ids: readonly string[],
): { readonly each: readonly number[]; readonly any: number } {
  const each = ids.map(
    (id) =>
      trials.filter((trial) => {
        const limit = trial?.get(id);
        return trial === null || (limit !== undefined && isMissed(limit));
      }).length,
  );
  return { each, any: trials.filter(missesAny).length };
}

/** Of those that can be built; null where none can. */
export function outcomeOf(trials: readonly Trial[]): Outcome | null {
  const built = trials.filter((trial) => trial !== null);
  if (built.length === 0) return null;
  const seen = new Map(built.flatMap((trial) => [...trial].map(([id, limit]) => [id, limit] as const)));
  const limits = [...seen.values()].map(({ id, load, sitter, measure, range }): SpreadLimit => {
    const judged = built.flatMap((trial) => trial.get(id) ?? []);
    const values = judged.flatMap(({ value }) => (value === null ? [] : [value]));
    const missed = proportionOf(judged.filter(isMissed).length, built.length);
    return { id, load, sitter, measure, range, spread: spreadOf(values), missed };
  });
  const any = proportionOf(built.filter(missesAny).length, built.length);
  return { limits, any, notBuilt: trials.length - built.length };
}
