/** The first screen, in a maker's order: may I cut, what is not met, what the sitter feels, what is left, what was assumed. */
import type { CheckResult } from '../check-design.js';
import type { MeasuredLoad } from '../checks/judge-loads.js';
import type { Verdict } from '../checks/verdict.js';
import { measuresOf, type LoadId } from '../names.js';
import { formatKilograms, formatPounds } from '../quantity/print.js';
import { assumptionsOf, firstAssumptions } from './assumptions.js';
import { cautionsOf } from './cautions.js';
import { feelingRows, leftRows, measureRow, type Row } from './first-rows.js';
import { basisLine, limitLine } from './limit-lines.js';
import { loadWords, measureWords } from './measure-words.js';
import { tableLines } from './table.js';
import type { TextSettings } from './text-settings.js';
import { wrap } from './wrap.js';

export function printText(result: CheckResult, settings: TextSettings): string {
  const sections = [
    verdictLines(result, settings),
    notMet(result, settings),
    firstTable('How it sits and rocks', feelingRows, result, settings),
    firstTable('What is left', leftRows, result, settings),
    ...(settings.all ? [...allMeasures(result, settings), allLimits(result, settings)] : []),
    ...(settings.parts ? [partWeights(result, settings)] : []),
    assumed(result, settings),
    cautions(result, settings),
  ];
  const written = sections.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
  return `${written.join('\n\n')}\n`;
}

function verdictLines(
  { design, people, verdict, limits }: CheckResult,
  { paint, columns }: TextSettings,
): string[] {
  const names = people.persons.map(({ name }) => name);
  const whom = names.length === 0 ? 'the empty chair only' : listed(names);
  const count = (of: Verdict): string =>
    `${limits.filter((limit) => limit.verdict === of).length} of ${limits.length}`;
  const words = {
    pass: `All listed limits met, for ${whom}, on ${design.floor.name ?? 'the floor of the design'}.`,
    fail: `Not all limits are met: ${count('fail')} fail.`,
    unknown: `Cannot say: ${count('unknown')} limits are unknown.`,
  };
  const styles = { pass: 'good', fail: 'bad', unknown: 'doubt' } as const;
  return [
    paint('heading', wrap(design.name, columns)),
    paint(styles[verdict], wrap(words[verdict], columns)),
  ];
}

function listed(names: readonly string[]): string {
  const [last, ...others] = names.toReversed();
  return others.length === 0 ? (last ?? '') : `${others.reverse().join(', ')} and ${last ?? ''}`;
}

function notMet({ limits, design }: CheckResult, settings: TextSettings): string[] {
  const lines = limits
    .filter(({ verdict }) => verdict !== 'pass')
    .map((limit) => limitLine(limit, design.units, settings));
  return lines.length === 0 ? [] : [settings.paint('heading', 'Not met'), ...lines];
}

/** A column a sitter, the empty chair first. */
function firstTable(
  title: string,
  rows: readonly Row[],
  result: CheckResult,
  settings: TextSettings,
): string[] {
  const shown = result.loads.filter(({ record }) => ['empty', 'seated'].includes(record.load.id));
  return table(title, rows, shown, result, settings);
}

function table(
  title: string,
  rows: readonly Row[],
  loads: readonly MeasuredLoad[],
  { design }: CheckResult,
  { columns, paint }: TextSettings,
): string[] {
  const standing = loads.filter(({ record }) => record.noRest === null);
  const heads = standing.map(({ record }) => record.load.sitter ?? loadWords[record.load.id]);
  const cells = rows.map(({ label, say }) => ({
    label,
    cells: standing.map((load) => say(load, design.units)),
  }));
  return tableLines({ title, heads, rows: cells }, columns, (text) => paint('heading', text));
}

/** Every measure, a table a load. */
function allMeasures(result: CheckResult, settings: TextSettings): string[][] {
  const ids = [...new Set(result.loads.map(({ record }) => record.load.id))];
  return ids.map((id: LoadId) => {
    const rows = measuresOf(id).map((key) => measureRow(measureWords[key] ?? key, key));
    const loads = result.loads.filter(({ record }) => record.load.id === id);
    return table(`Every measure, ${loadWords[id]}`, rows, loads, result, settings);
  });
}

function allLimits({ limits, design }: CheckResult, settings: TextSettings): string[] {
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
