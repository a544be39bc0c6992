/** The first screen, in a maker's order: may I cut, what is not met, what the sitter feels, what is left, what was assumed. */
import type { CheckResult } from '../check-design.js';
import type { MeasuredLoad } from '../checks/judge-loads.js';
import type { JudgedLimit } from '../checks/verdict.js';
import { measuresOf, type LoadId } from '../names.js';
import { uprightTests } from '../measures/upright-tests.js';
import { formatKilograms, formatLength, formatNewtons, formatPounds } from '../quantity/print.js';
import { assumptionsOf, firstAssumptions } from './assumptions.js';
import { cautionsOf } from './cautions.js';
import { feelingRows, fitRows, leftRows, measureRow, rollingRows, whyDash, type Row } from './first-rows.js';
import { delicateLines } from './delicate-words.js';
import { basisLine, limitLine, overLine, overRemedyLines, remedyLines, whereLines } from './limit-lines.js';
import { loadWords, measureWords } from './measure-words.js';
import { secondLine, secondOpinionLines } from './second-opinion-words.js';
import { saidOfLines } from './surface-words.js';
import { longestHead, paintedTable } from './table.js';
import type { TextSettings } from './text-settings.js';
import { shortened } from './text-width.js';
import { sayVerdict } from './verdict-words.js';
import { wrap } from './wrap.js';

export function printText(result: CheckResult, settings: TextSettings): string {
  const sections = [
    verdictLines(result, settings),
    notMet(result, settings),
    firstTable('How it sits and rocks', feelingRows, result, settings),
    firstTable('What is left', leftRows, result, settings),
    dashes(result, settings),
    delicateLines(result, settings),
    ...(settings.all
      ? [
          ...allMeasures(result, settings),
          uprightLines(result, settings),
          allLimits(result, settings),
          secondOpinionLines(result, settings),
        ]
      : []),
    ...(settings.parts ? [partWeights(result, settings)] : []),
    assumed(result, settings),
    cautions(result, settings),
  ];
  const written = sections.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
  return `${written.join('\n\n')}\n`;
}

const verdictStyles = { pass: 'good', fail: 'bad', unknown: 'doubt' } as const;

const verdictLines = (result: CheckResult, { paint, columns }: TextSettings): string[] => [
  paint('heading', wrap(result.design.name, columns)),
  paint(verdictStyles[result.verdict], wrap(sayVerdict(result), columns)),
];

/** A load without a rest, or that goes over, is told once: what else follows from that is left to `--all`. */
function notMet(result: CheckResult, settings: TextSettings): string[] {
  const { limits, loads, design, remedies } = result;
  const open = limits.filter((limit) => limit.verdict !== 'pass');
  if (open.length === 0) return [];
  const noRest = followersOf(open, loads, ({ noRest }) => noRest !== null, 'unknown');
  const over = followersOf(open, loads, ({ motion }) => Boolean(motion?.goesOver), 'fail');
  // The first limit that a load fails by going over stands for them all.
  const first = over.filter(
    (limit, i) => over.findIndex(({ load, sitter }) => load === limit.load && sitter === limit.sitter) === i,
  );
  const hidden = new Set([...noRest, ...over.filter((limit) => !first.includes(limit)), ...toldTwice(open)]);
  const lines = open
    .filter((limit) => !hidden.has(limit))
    .flatMap((limit) => {
      const own = remedies.get(limit.id);
      if (!first.includes(limit)) {
        const lines = [limitLine(limit, design.units, settings), ...whereLines(limit, result, settings)];
        return own === undefined ? lines : [...lines, ...remedyLines(limit, own, design.units, settings)];
      }
      const line = overLine(limit, settings);
      const failed = over.filter(({ load, sitter }) => load === limit.load && sitter === limit.sitter);
      return own === undefined
        ? [line]
        : [line, ...overRemedyLines(failed, remedies, design.units, settings)];
    });
  const failed = open.some(({ verdict }) => verdict === 'fail');
  return [
    settings.paint('heading', failed ? 'Not met' : 'Unknown'),
    ...saidOfLines(result).map((said) => wrap(`First of all: ${said}`, settings.columns, '  ')),
    ...lines,
    ...moreLine(noRest.length, 'unknown for want of a rest'),
    ...moreLine(over.length - first.length, 'not met with that'),
  ];
}

/** The empty chair that does not stand is told once, not again for a child on its tails. */
function toldTwice(open: readonly JudgedLimit[]): JudgedLimit[] {
  const rests = open.filter(({ measure }) => measure === null);
  const empty = rests.some(({ load }) => load === 'empty');
  return empty ? rests.filter(({ load }) => load === 'child-on-the-tails') : [];
}

/** Limits with one verdict on the loads of which something is so. */
function followersOf(
  open: readonly JudgedLimit[],
  loads: CheckResult['loads'],
  isSo: (record: MeasuredLoad['record']) => boolean,
  verdict: JudgedLimit['verdict'],
): JudgedLimit[] {
  const fallen = loads.filter(({ record }) => isSo(record)).map(({ record }) => record.load);
  return open.filter(
    (limit) =>
      limit.verdict === verdict &&
      fallen.some(({ id, sitter }) => id === limit.load && sitter === limit.sitter),
  );
}

const moreLine = (count: number, why: string): string[] =>
  count === 0 ? [] : [`  ${count} more ${count === 1 ? 'limit is' : 'limits are'} ${why}: --all.`];

/** A column a sitter, the empty chair first, those with the child in arms last. */
function firstTable(
  title: string,
  rows: readonly Row[],
  result: CheckResult,
  settings: TextSettings,
): string[] {
  return table(title, rows, firstOf(result), result, settings);
}

const firstOf = ({ loads }: CheckResult): MeasuredLoad[] =>
  loads.filter(({ record }) => firstLoads.includes(record.load.id));

function table(
  title: string,
  rows: readonly Row[],
  loads: readonly MeasuredLoad[],
  { design, loads: all }: CheckResult,
  settings: TextSettings,
): string[] {
  const standing = loads.filter(({ record }) => record.noRest === null);
  const heads = standing.map(({ record }) => headOf(record.load));
  const cells = rows.map(({ label, say }) => ({
    label,
    cells: standing.map((load) => say(load, design.units, all)),
  }));
  return paintedTable({ title, heads, rows: cells }, settings);
}

const firstLoads: readonly LoadId[] = ['empty', 'seated', 'with-a-child'];

function headOf({ id, sitter }: MeasuredLoad['record']['load']): string {
  if (sitter === null) return loadWords.empty;
  return id === 'with-a-child' ? `${shortened(sitter, longestHead - 8)} + child` : sitter;
}

/** Why the first rows show a dash, each reason once. */
function dashes(result: CheckResult, { columns }: TextSettings): string[] {
  const reasons = new Map<string, string[]>();
  for (const load of firstOf(result).filter(({ record }) => record.noRest === null))
    for (const row of [...feelingRows, ...leftRows]) {
      const why = whyDash(row, load, result.design.units, result.loads);
      if (why === null) continue;
      const reason = `${row.label.trim()}: ${why}`;
      reasons.set(reason, [...(reasons.get(reason) ?? []), headOf(load.record.load)]);
    }
  return [...reasons].map(([why, whom]) => wrap(`- ${whom.join(', ')}: ${why}`, columns, '  ', '    '));
}

/** Every measure, a table a load. */
function allMeasures(result: CheckResult, settings: TextSettings): string[][] {
  const ids = [...new Set(result.loads.map(({ record }) => record.load.id))];
  return ids.map((id: LoadId) => {
    const own = measuresOf(id).map((key) => measureRow(measureWords[key], key));
    const rows = [...rollingRows, ...own, ...(id === 'seated' ? fitRows : [])];
    const loads = result.loads.filter(({ record }) => record.load.id === id);
    return table(`Every measure, ${loadWords[id]}`, rows, loads, result, settings);
  });
}

/** Information, no limit: the loads of tests that are not meant for rocking chairs. */
function uprightLines({ loads, chair, design }: CheckResult, { paint, columns }: TextSettings): string[] {
  const rest = loads[0]?.record.emptyRest ?? null;
  const tests = rest === null ? [] : uprightTests(chair, rest);
  if (tests.length === 0) return [];
  const lines = tests.map(({ of, down, level, source, rockerLeft }) => {
    const way = of === 'back' ? 'back, at the back' : 'forward, at the front edge';
    const then =
      rockerLeft === null
        ? 'it comes to no rest'
        : rockerLeft === 0
          ? 'it rolls past the end of its rockers'
          : `it rolls until ${formatLength(rockerLeft, design.units)} of rocker are left`;
    return `${formatNewtons(down)} down on the seat and ${formatNewtons(level)} ${way}: ${then} (${source}).`;
  });
  const about =
    'For comparison only: tests of upright chairs hold the feet by stops and do not apply to rocking chairs. No conformity follows.';
  return [
    paint('heading', 'Under the loads of published tests of upright chairs, empty'),
    ...[...lines, about].map((line) => wrap(line, columns, '  ', '    ')),
  ];
}

function allLimits({ limits, design }: CheckResult, settings: TextSettings): string[] {
  if (limits.length === 0) return [];
  const lines = limits.flatMap((limit) => [
    limitLine(limit, design.units, settings),
    basisLine(limit, settings),
  ]);
  return [settings.paint('heading', 'Limits'), ...lines];
}

function partWeights({ chair }: CheckResult, settings: TextSettings): string[] {
  const row = (label: string, mass: number) => ({
    label,
    cells: [formatPounds(mass), formatKilograms(mass)],
  });
  const parts = [...chair.parts, ...chair.extras].map(({ name, count, mass }) =>
    row(count === 1 ? name : `${name} × ${count}`, mass),
  );
  const rows = [...parts, row('the whole chair', chair.body.mass)];
  const title = 'Weights, to check on a scale';
  return paintedTable({ title, heads: ['lb', 'kg'], rows }, settings);
}

function assumed(result: CheckResult, { paint, columns, all, assumed: whole }: TextSettings): string[] {
  const second = wrap(secondLine(result), columns, '  ', '    ');
  if (all || whole) {
    const lines = assumptionsOf(result).map(({ what, value, basis }) =>
      wrap(`${what}: ${value} (${basis})`, columns, '  ', '    '),
    );
    return [paint('heading', 'Assumed'), ...lines, second];
  }
  const first = firstAssumptions(result).map(({ what, value }) => `${what} ${value}`);
  const bodies = result.people.persons.length > 0 ? ['bodies as published tables have them'] : [];
  const habits = bodies.map(() => 'how people lean back hard and get up, which matters much');
  const line = `${[...first, ...bodies, ...habits].join('; ')}. Each with what it rests on: --assumed.`;
  return [paint('heading', 'Assumed'), wrap(line, columns, '  '), second];
}

function cautions(result: CheckResult, { paint, columns }: TextSettings): string[] {
  const lines = cautionsOf(result).map((caution) => wrap(`- ${caution}`, columns, '  ', '    '));
  return [paint('heading', 'Mind'), ...lines];
}
