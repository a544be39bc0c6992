/**
 * Two changes at once that meet a limit and, but where nothing else is found, break none. Where one meets it, the other mends what that breaks; where none
 * does, one goes to where it comes nearest, or both to ends of their ranges, and they are drawn in from there.
 */
import type { JudgedLimit } from '../checks/verdict.js';
import {
  brokenBy,
  changeIn,
  leastAlone,
  remedyOf,
  shortfallIn,
  type Remedy,
  type Searched,
} from './remedy.js';
import type { Steps } from './stepped-design.js';
import { wayTowards } from './way-towards.js';

/** So many of those that break least, or come nearest, are tried with every other beside. */
const fewest = 4;
/** Meeting the one moves the other: they take turns so often. */
const turns = 3;

/** @param singles what meets it alone, breaking others */
export function remediesOfTwo(searched: Searched, limit: JudgedLimit, singles: readonly Remedy[]): Remedy[] {
  const pairs = singles.length > 0 ? besideThose(searched, limit, singles) : whereNoneDoes(searched, limit);
  const told = pairs.flatMap((steps) => toldOfTwo(searched, limit, steps) ?? []);
  const least = Math.min(...told.map(({ breaks }) => breaks.length));
  return told.filter(({ breaks }) => breaks.length === least);
}

function besideThose(searched: Searched, limit: JudgedLimit, singles: readonly Remedy[]): Steps[] {
  const firsts = singles
    .toSorted((a, b) => a.breaks.length - b.breaks.length || changeIn(a) - changeIn(b))
    .map(({ changes }) => searched.changeable.indexOf(changes[0]!.change));
  return [...new Set(firsts)]
    .slice(0, fewest)
    .flatMap((first) =>
      partnersOf(searched, first).flatMap((second) => inTurns(searched, limit, first, second, 0) ?? []),
    );
}

/** All others, but for what pulls against it: the weight at the other end. */
function partnersOf({ changeable }: Searched, first: number): number[] {
  const isWeight = (index: number): boolean => weights.includes(changeable[index]!.variable.name);
  return [...changeable.keys()].filter(
    (second) => second !== first && !(isWeight(first) && isWeight(second)),
  );
}

const weights = ['tail-weight', 'nose-weight'];

function whereNoneDoes(searched: Searched, limit: JudgedLimit): Steps[] {
  const ways = [...searched.changeable.keys()].flatMap((index) => wayTowards(searched, index, limit) ?? []);
  if (ways.length === 0) return fromEnds(searched, limit);
  const nearest = ways.sort((a, b) => a.left - b.left).slice(0, fewest);
  return nearest.flatMap(({ index, steps }) =>
    partnersOf(searched, index).flatMap((second) => {
      const beside = leastAlone(searched, second, [limit], new Map([[index, steps]]));
      return (beside !== null && inTurns(searched, limit, index, second, beside)) || [];
    }),
  );
}

/** Nothing tells how near one comes, as of a chair that settles nowhere: two at ends of their ranges, whichever. */
function fromEnds(searched: Searched, limit: JudgedLimit): Steps[] {
  const { changeable } = searched;
  const endsOf = (index: number): number[] => {
    const { least, greatest } = changeable[index]!;
    return [least, greatest].filter((end) => end !== 0);
  };
  return [...changeable.keys()].flatMap((first) =>
    partnersOf(searched, first)
      .filter((second) => second > first)
      .flatMap((second) =>
        endsOf(first).flatMap((one) =>
          endsOf(second).flatMap((end) => {
            const met =
              shortfallIn(
                searched,
                [limit],
                new Map([
                  [first, one],
                  [second, end],
                ]),
              ) === 0;
            const beside = met
              ? (leastAlone(searched, second, [limit], new Map([[first, one]])) ?? end)
              : null;
            return (beside !== null && inTurns(searched, limit, first, second, beside)) || [];
          }),
        ),
      ),
  );
}

/**
 * @param beside the steps of the second that the first begins with: 0 where the first meets it alone; else none does, and two
 * that break others are better than none
 */
function inTurns(
  searched: Searched,
  limit: JudgedLimit,
  first: number,
  second: number,
  beside: number,
): Steps | null {
  let [other, meeting]: [number, Steps | null] = [beside, null];
  const bothMeet = beside === 0 ? [] : [limit];
  for (let turn = 0; turn <= turns; turn++) {
    const besides: Steps = new Map(other === 0 ? [] : [[second, other]]);
    const own = leastAlone(searched, first, [limit], besides) ?? 0;
    const steps: Steps = new Map([[first, own], ...besides]);
    const broken = brokenBy(searched, limit, steps);
    const isPair = steps.size === 2 && own !== 0;
    if (broken?.length === 0) return isPair ? steps : null;
    if (beside !== 0 && broken !== null && isPair) meeting ??= steps;
    const goals = broken === null ? [limit] : [...bothMeet, ...broken];
    const mending = leastAlone(searched, second, goals, new Map([[first, own]]));
    if (mending === null) break;
    other = mending;
  }
  return meeting;
}

/** With what each of the two is for; what is for nothing is left out. */
function toldOfTwo(searched: Searched, limit: JudgedLimit, steps: Steps): Remedy | null {
  const kinds = [...steps].map(([own]) => {
    const without: Steps = new Map([...steps].filter(([index]) => index !== own));
    const broken = brokenBy(searched, limit, without);
    return { without, neededFor: (broken ?? [limit]).map(({ id }) => id) };
  });
  const idle = kinds.find(({ neededFor }) => neededFor.length === 0);
  if (idle) return remedyOf(searched, limit, idle.without);
  const remedy = remedyOf(searched, limit, steps);
  return (
    remedy && {
      ...remedy,
      changes: remedy.changes.map((change, i) => ({ ...change, neededFor: kinds[i]!.neededFor })),
    }
  );
}
