/** Two changes at once that meet a limit and break none: one meets the limit, the other mends what the first breaks. */
import type { JudgedLimit } from '../checks/verdict.js';
import { changeIn, leastAlone, remedyOf, type Remedy, type Searched } from './remedy.js';
import type { Steps } from './stepped-design.js';

/** So many of those that break least are tried with another beside. */
const fewest = 4;
/** Meeting the one moves the other: they take turns so often. */
const turns = 3;

/** @param singles what meets it alone, breaking others */
export function remediesOfTwo(searched: Searched, limit: JudgedLimit, singles: readonly Remedy[]): Remedy[] {
  const { changeable } = searched;
  const firsts = singles
    .toSorted((a, b) => a.breaks.length - b.breaks.length || changeIn(a) - changeIn(b))
    .slice(0, fewest)
    .map(({ changes }) => changeable.indexOf(changes[0]!.change));
  return firsts.flatMap((first) =>
    changeable.flatMap((_, second) =>
      second === first ? [] : (inTurns(searched, limit, first, second) ?? []),
    ),
  );
}

function inTurns(searched: Searched, limit: JudgedLimit, first: number, second: number): Remedy | null {
  const meeting = (others?: Steps): number => leastAlone(searched, first, [limit], others) ?? 0;
  let steps: Steps = new Map([[first, meeting()]]);
  for (let turn = 0; turn < turns; turn++) {
    const breaks = remedyOf(searched, limit, steps)?.breaks;
    const goals = breaks?.map((id) => searched.before.get(id)!) ?? [limit];
    const mending = leastAlone(searched, second, goals, new Map([[first, steps.get(first)!]]));
    if (mending === null) return null;
    const other: Steps = new Map([[second, mending]]);
    steps = new Map([[first, meeting(other)], ...other]);
    const both = remedyOf(searched, limit, steps);
    if (both?.breaks.length === 0) return both;
  }
  return null;
}
