/** May I cut: the verdict in words, never a bare one. */
import type { CheckResult } from '../check-design.js';
import { allAgree } from '../contact/second-opinion.js';
import type { Verdict } from '../checks/verdict.js';

export const verdictWords: Readonly<Record<Verdict, string>> = {
  pass: 'met',
  fail: 'NOT MET',
  unknown: 'unknown',
};

export function sayVerdict({ design, people, verdict, limits, opinions }: CheckResult): string {
  if (opinions !== null && !allAgree(opinions.values()))
    return 'Cannot say: the two calculations disagree. Do not trust this one.';
  const names = people.persons.map(({ name }) => name);
  const whom = names.length === 0 ? 'the empty chair only' : listed(names);
  const count = (of: Verdict): number => limits.filter((limit) => limit.verdict === of).length;
  const [failed, open] = [count('fail'), count('unknown')];
  const also = open === 0 ? '' : `, ${open} ${open === 1 ? 'is' : 'are'} unknown`;
  switch (verdict) {
    case 'pass':
      return limits.length === 0
        ? 'Nothing was judged: the design has put every limit off.'
        : `All listed limits met, for ${whom}, on ${design.floor.name ?? 'the floor of the design'}.`;
    case 'fail':
      return `Not all limits are met: ${failed} of ${limits.length} ${failed === 1 ? 'fails' : 'fail'}${also}.`;
    case 'unknown':
      return `Cannot say: ${open} of ${limits.length} limits ${open === 1 ? 'is' : 'are'} unknown.`;
  }
}

function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
