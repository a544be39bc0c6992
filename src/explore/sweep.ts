/** A sweep: dimensions, sizes of sitters and alterations over ranges, each design built, rolled and judged. */
import { overAmong, type Over } from '../checks/goes-over.js';
import { describeIssue, issueOfWhole, type Checked, type Issue } from '../design/issue.js';
import type { Words } from '../design/places.js';
import type { Design } from '../design/read-design.js';
import type { People } from '../loads/people.js';
import { loadsOf, whyNotRolled } from '../loads/loads-of.js';
import { loadIds, measures, type LoadId, type MeasureKey } from '../names.js';
import { shown } from '../quantity/source-text.js';
import { argumentIssue, unknownName } from './argument.js';
import { measuresNamed, nameOfAsked, type AskedMeasure } from './asked-measure.js';
import { designFunction, type BuiltDesign, type Tried } from './design-function.js';
import { gridOf, mostDesigns, type Grid } from './grid.js';
import { judgeFor, measureIn } from './judge.js';
import { isComfortable, tightest } from './room.js';
import { statedDesign, type DesignSource } from './stated-design.js';
import { readVaried, type Varied } from './varied.js';
import type { Verdict } from '../checks/verdict.js';

/** What is asked, as it is written: plain data, the same for every thread. */
export interface SweepRequest extends DesignSource {
  readonly vary: readonly string[];
  /** Measures; none: the usual ones. */
  readonly show: readonly string[];
  /** Which loads are rolled, with commas between; null: all. */
  readonly loads: string | null;
}

export interface SweepRow {
  /** Number in the sweep, from 1. */
  readonly number: number;
  /** SI, one of each that is varied. */
  readonly values: readonly number[];
  /** SI, one a column; null where it has no value. */
  readonly measures: readonly (number | null)[];
  readonly verdict: Verdict;
  readonly comfortable: boolean;
  /** Which of the loads that were rolled take the chair over. */
  readonly goesOver: readonly Over[];
  /** Ids of the limits that are not met or unknown. */
  readonly notMet: readonly string[];
  /** Of the limits that are met the one with the least room, and how much (room.ts). */
  readonly tightest: { readonly id: string; readonly room: number } | null;
  /** Why it cannot be built, or judged. */
  readonly problem: string | null;
}

export interface Sweep {
  readonly design: Design;
  readonly people: People;
  readonly grid: Grid;
  readonly loads: readonly LoadId[];
  readonly columns: readonly AskedMeasure[];
  /** @param index from 0 */
  readonly rowAt: (index: number) => SweepRow;
}

export function compileSweep(request: SweepRequest): Checked<Sweep> {
  const read = statedDesign(request);
  if (!read.ok) return read;
  const { design, stated } = read.value;
  const { people } = stated;
  const issues: Issue[] = [];
  const varied = variedIn(request, design, issues);
  const chosen = loadsIn(request, stated, issues);
  const columns = columnsIn(request, people, chosen, issues);
  const grid = gridOf(varied);
  if (issues.length === 0 && grid.count > mostDesigns) issues.push(tooMany(request, grid));
  if (issues.length > 0) return { ok: false, issues };
  const loads = rolledLoads(stated, [...chosen, ...columns.map(({ load }) => load)]);
  const { at } = designFunction(
    design,
    varied.map(({ variable }) => variable),
  );
  const judge = judgeFor(loads);
  const rowAt = (index: number): SweepRow => {
    const values = grid.valuesAt(index);
    return rowOf(index + 1, values, at(values), columns, loads, judge);
  };
  return { ok: true, value: { design, people, grid, loads, columns, rowAt } };
}

function variedIn({ vary }: SweepRequest, design: Design, issues: Issue[]): Varied[] {
  if (vary.length === 0)
    issues.push(
      issueOfWhole('--vary', 'what to vary, such as `--vary "radius=36 in..42 in:1/2 in"`', 'nothing'),
    );
  const varied: Varied[] = [];
  for (const text of vary) {
    const read = readVaried(text, design);
    const again = read.ok && varied.some(({ variable }) => variable.name === read.value.variable.name);
    if (read.ok && !again) varied.push(read.value);
    else {
      const words = read.ok
        ? { expected: 'each once', found: `${read.value.variable.name} again` }
        : read.words;
      issues.push(argumentIssue({ option: '--vary', text }, words));
    }
  }
  return varied;
}

/** Named one by one they are those of this design: what is not rolled would read as met. */
function loadsIn({ loads }: SweepRequest, stated: BuiltDesign, issues: Issue[]): readonly LoadId[] {
  if (loads === null) return loadIds;
  const has = new Set(rolledLoads(stated, loadIds));
  const words = new Set(loads.split(',').map((word) => word.trim()));
  return [...words].flatMap((word): LoadId[] => {
    const load = loadIds.find((id) => id === word);
    if (load !== undefined && has.has(load)) return [load];
    const mistake =
      load !== undefined
        ? notOfIt(load, stated)
        : word === ''
          ? { expected: 'loads with commas between', found: 'nothing between' }
          : unknownName('a load', word, [...has]);
    issues.push(argumentIssue({ option: '--loads', text: loads }, mistake));
    return [];
  });
}

const notOfIt = (load: LoadId, { design, people }: BuiltDesign): Words => ({
  expected: 'loads that this design has',
  found: `\`${load}\`: ${whyNotRolled(design, people)(load)}`,
});

/** Of those that are wanted the ones that there are, in the order of the contract. */
function rolledLoads({ design, chair, people }: BuiltDesign, wanted: readonly LoadId[]): LoadId[] {
  const ids = new Set(loadsOf(design, chair, people, wanted).map(({ id }) => id));
  return loadIds.filter((load) => ids.has(load));
}

/** What a maker looks at first. */
const usualColumns: readonly (readonly [LoadId, MeasureKey])[] = [
  ['seated', 'periodS'],
  ['seated', 'seatSlopeDeg'],
  ['leaning-back-hard', 'rockerLeftBackM'],
];
const ofEmpty: typeof usualColumns = [
  ['empty', 'periodS'],
  ['empty', 'seatSlopeDeg'],
  ['empty', 'tipBackDeg'],
];

function columnsIn(
  { show }: SweepRequest,
  people: People,
  loads: readonly LoadId[],
  issues: Issue[],
): AskedMeasure[] {
  if (show.length === 0) {
    const usual = people.persons.length > 0 ? usualColumns : ofEmpty;
    return usual
      .filter(([load]) => loads.includes(load))
      .flatMap(([load, measure]) => {
        const named = measuresNamed(`${load}/${measures[measure].limitKey}`, people);
        return named.ok ? named.value : [];
      });
  }
  const shownBefore = new Set<string>();
  return show.flatMap((text) => {
    const named = measuresNamed(text, people);
    const again = named.ok && named.value.some((one) => shownBefore.has(nameOfAsked(one)));
    if (named.ok) for (const one of named.value) shownBefore.add(nameOfAsked(one));
    if (again)
      issues.push(
        argumentIssue({ option: '--show', text }, { expected: 'each measure once', found: 'one again' }),
      );
    if (!named.ok) issues.push(argumentIssue({ option: '--show', text }, named.words));
    else if (named.value.length === 0)
      issues.push(
        argumentIssue(
          { option: '--show', text },
          { expected: 'a measure of this design', found: `${shown(text)}, which needs sitters or a child` },
        ),
      );
    return named.ok ? named.value : [];
  });
}

/** Of more designs nobody reads the number. */
const countable = 1e15;

function tooMany({ vary }: SweepRequest, { count }: Grid): Issue {
  const designs = (number: number): string =>
    number < countable
      ? `${number.toLocaleString('en')} designs`
      : `more than ${countable.toLocaleString('en')} designs`;
  return argumentIssue(
    { option: '--vary', text: vary.join(' × ') },
    {
      expected: `at most ${designs(mostDesigns)} in one sweep`,
      found: designs(count),
      hint: 'take larger steps',
    },
  );
}

const nothingJudged = 'no limit is about these loads: nothing was judged';

function rowOf(
  number: number,
  values: readonly number[],
  tried: Tried,
  columns: readonly AskedMeasure[],
  loads: readonly LoadId[],
  judge: ReturnType<typeof judgeFor>,
): SweepRow {
  if (!tried.ok) {
    const nothing = { comfortable: false, goesOver: [], notMet: [], tightest: null };
    const problem = describeIssue(tried.issues[0]!);
    return { number, values, measures: columns.map(() => null), verdict: 'unknown', ...nothing, problem };
  }
  const judgement = judge(tried);
  const { limits, verdict } = judgement;
  return {
    number,
    values,
    measures: columns.map((column) => measureIn(judgement, column)),
    // Nothing that is judged is nothing that is met.
    verdict: limits.length === 0 ? 'unknown' : verdict,
    comfortable: isComfortable(limits, loads),
    goesOver: overAmong(judgement.loads),
    notMet: limits.flatMap((limit) => (limit.verdict === 'pass' ? [] : [limit.id])),
    tightest: verdict === 'pass' ? tightest(limits) : null,
    problem: limits.length === 0 ? nothingJudged : null,
  };
}
