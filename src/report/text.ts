/** The first screen, in a maker's order: may I cut, what is not met, what the sitter feels, what is left, what was assumed. */
import type { CheckResult } from '../check-design.js';
import type { MeasuredLoad } from '../checks/judge-loads.js';
import type { JudgedLimit } from '../checks/verdict.js';
import { measuresOf, type LoadId } from '../names.js';
import { formatKilograms, formatPounds } from '../quantity/print.js';
import { assumptionsOf, firstAssumptions } from './assumptions.js';
import { cautionsOf } from './cautions.js';
import { feelingRows, leftRows, measureRow, rollingRows, whyDash, type Row } from './first-rows.js';
import { basisLine, limitLine } from './limit-lines.js';
import { loadWords, measureWords } from './measure-words.js';
import { longestHead, tableLines } from './table.js';
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
    ...(settings.all ? [...allMeasures(result, settings), allLimits(result, settings)] : []),
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

/** A load without a rest is told once: what else is unknown of it for that reason is left to `--all`. */
function notMet({ limits, loads, design }: CheckResult, settings: TextSettings): string[] {
  const fallen = loads.filter(({ record }) => record.noRest !== null).map(({ record }) => record.load);
  const follows = ({ load, sitter, verdict }: JudgedLimit): boolean =>
    verdict === 'unknown' && fallen.some((each) => each.id === load && each.sitter === sitter);
  const open = limits.filter((limit) => limit.verdict !== 'pass');
  const lines = open
    .filter((limit) => !follows(limit))
    .map((limit) => limitLine(limit, design.units, settings));
  const more = open.filter(follows).length;
  const rest =
    more === 0
      ? []
      : [`  ${more} more ${more === 1 ? 'limit is' : 'limits are'} unknown for want of a rest: --all.`];
  if (lines.length === 0) return [];
  const failed = open.some(({ verdict }) => verdict === 'fail');
  return [settings.paint('heading', failed ? 'Not met' : 'Unknown'), ...lines, ...rest];
}

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
  { design }: CheckResult,
  { columns, paint }: TextSettings,
): string[] {
  const standing = loads.filter(({ record }) => record.noRest === null);
  const heads = standing.map(({ record }) => headOf(record.load));
  const cells = rows.map(({ label, say }) => ({
    label,
    cells: standing.map((load) => say(load, design.units)),
  }));
  return tableLines({ title, heads, rows: cells }, columns, (text) => paint('heading', text));
}

const firstLoads: readonly LoadId[] = ['empty', 'seated', 'with-a-child'];

function headOf({ id, sitter }: MeasuredLoad['record']['load']): string {
  if (sitter === null) return loadWords[id];
  return id === 'with-a-child' ? `${shortened(sitter, longestHead - 8)} + child` : sitter;
}

/** Why the first rows show a dash, each reason once. */
function dashes(result: CheckResult, { columns }: TextSettings): string[] {
  const reasons = new Map<string, string[]>();
  for (const load of firstOf(result).filter(({ record }) => record.noRest === null))
    for (const row of [...feelingRows, ...leftRows]) {
      const why = whyDash(row, load, result.design.units);
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
    const rows = [...rollingRows, ...measuresOf(id).map((key) => measureRow(measureWords[key], key))];
    const loads = result.loads.filter(({ record }) => record.load.id === id);
    return table(`Every measure, ${loadWords[id]}`, rows, loads, result, settings);
  });
}

function allLimits({ limits, design }: CheckResult, settings: TextSettings): string[] {
  if (limits.length === 0) return [];
  const lines = limits.flatMap((limit) => [
    limitLine(limit, design.units, settings),
    basisLine(limit, settings),
  ]);
  return [settings.paint('heading', 'Limits'), ...lines];
}

function partWeights({ chair }: CheckResult, { paint, columns }: TextSettings): string[] {
  const row = (label: string, mass: number) => ({
    label,
    cells: [formatPounds(mass), formatKilograms(mass)],
  });
  const parts = [...chair.parts, ...chair.extras].map(({ name, count, mass }) =>
    row(count === 1 ? name : `${name} × ${count}`, mass),
  );
  const rows = [...parts, row('the whole chair', chair.body.mass)];
  const title = 'Weights, to check on a scale';
  return tableLines({ title, heads: ['lb', 'kg'], rows }, columns, (text) => paint('heading', text));
}

function assumed(result: CheckResult, { paint, columns, all, assumed: whole }: TextSettings): string[] {
  const second = '  No second calculation was made.';
  if (all || whole) {
    const lines = assumptionsOf(result).map(({ what, value, basis }) =>
      wrap(`${what}: ${value} (${basis})`, columns, '  ', '    '),
    );
    return [paint('heading', 'Assumed'), ...lines, second];
  }
  const first = firstAssumptions(result).map(({ what, value }) => `${what} ${value}`);
  const bodies = result.people.persons.length > 0 ? ['bodies as published tables have them'] : [];
  const line = `${[...first, ...bodies].join('; ')}. Each with what it rests on: --assumed.`;
  return [paint('heading', 'Assumed'), wrap(line, columns, '  '), second];
}

function cautions(result: CheckResult, { paint, columns }: TextSettings): string[] {
  const lines = cautionsOf(result).map((caution) => wrap(`- ${caution}`, columns, '  ', '    '));
  return [paint('heading', 'Mind'), ...lines];
}
