/**
 * What to change where a load goes over. That is told once for all limits that the load fails by it: first what mends
 * them all, whatever else the chair fails; where nothing does, what mends some, and what is still not met then.
 */
import type { CheckResult } from '../check-design.js';
import type { JudgedLimit } from '../checks/verdict.js';
import { chosen } from '../explore/remedies.js';
import type { Remedy } from '../explore/remedy.js';

export interface OverRemedy {
  readonly remedy: Remedy;
  /** The one of the limits that it was found for. */
  readonly limit: JudgedLimit;
  /** Ids of those that it leaves not met. */
  readonly stillOpen: readonly string[];
}

/** @param failed the limits that one load fails by going over */
export function remediesOfOver(
  failed: readonly JudgedLimit[],
  remedies: CheckResult['remedies'],
): OverRemedy[] {
  const found = failed.flatMap((limit) =>
    (remedies.get(limit.id) ?? []).map((remedy): OverRemedy => {
      const stillOpen = failed.filter(({ id }) => remedy.notMet.includes(id)).map(({ id }) => id);
      return { remedy, limit, stillOpen };
    }),
  );
  const once = found.filter(
    (one, i) => found.findIndex((other) => sameChanges(one.remedy, other.remedy)) === i,
  );
  const whole = once.filter(({ stillOpen }) => stillOpen.length === 0);
  const told = whole.length > 0 ? whole : once;
  return chosen(told.map(({ remedy }) => remedy)).map((remedy) => told.find((one) => one.remedy === remedy)!);
}

const sameChanges = (a: Remedy, b: Remedy): boolean =>
  a.changes.length === b.changes.length &&
  a.changes.every(({ change, to }, i) => change === b.changes[i]?.change && to === b.changes[i].to);
