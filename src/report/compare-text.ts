/** What moved between two designs, for a terminal: what became worse first. */
import type { LimitChange } from '../checks/compare-limits.js';
import { cautionsOf } from './cautions.js';
import {
  dimensionTable,
  massTable,
  movedTables,
  newlyOver,
  nowOver,
  otherBounds,
  unmatchedLoads,
} from './compare-tables.js';
import type { Compared } from './compared.js';
import { limitChangeWords, sayLimitChange } from './limit-change-words.js';
import { printable } from './printable.js';
import { paintedTable, type Table } from './table.js';
import type { Style, TextSettings } from './text-settings.js';
import { sayVerdict } from './verdict-words.js';
import { wrap } from './wrap.js';

export type CompareSettings = Pick<TextSettings, 'columns' | 'paint'>;

export function printCompareText(compared: Compared, settings: CompareSettings): string {
  const { comparison } = compared;
  const { units } = compared.new.result.design;
  const tables = [dimensionTable(comparison, units), ...movedTables(comparison, units)];
  const moved = [
    flips(compared, settings),
    changedBounds(compared, settings),
    ...tables.map((table) => lines(table, settings)),
    lines(massTable(comparison, units), settings),
    listed('Loads of one design', unmatchedLoads(comparison), settings),
  ].filter((section) => section.length > 0);
  const sections = [
    verdicts(compared, settings),
    ...goingOver(compared, settings),
    ...(moved.length === 0 ? [['Nothing moved by as much as a maker could read.']] : moved),
    listed('Mind', cautionsOf(compared.new.result), settings),
  ];
  return `${sections.map((section) => section.join('\n')).join('\n\n')}\n`;
}

function verdicts({ old, new: now }: Compared, { paint, columns }: CompareSettings): string[] {
  const styles = { pass: 'good', fail: 'bad', unknown: 'doubt' } as const;
  const says = (word: string, { result }: typeof old): string =>
    paint(
      styles[result.verdict],
      wrap(`${word}, ${printable(result.file)}: ${printable(sayVerdict(result))}`, columns, '', '     '),
    );
  const names = [...new Set([old, now].map(({ result }) => printable(result.design.name)))];
  return [paint('heading', wrap(names.join(' → '), columns)), says('old', old), says('new', now)];
}

/** Before anything else: no change of a verdict or a number says as much. */
function goingOver({ comparison }: Compared, settings: CompareSettings): string[][] {
  const over = newlyOver(comparison);
  if (over.length === 0) return [];
  const lines = over.map((text) => wrap(printable(text), settings.columns, '  ', '    '));
  return [[settings.paint('bad', nowOver), ...lines]];
}

/** Each change of verdict once, under it the limits that it happened to. */
function flips(compared: Compared, settings: CompareSettings): string[] {
  const { paint, columns } = settings;
  const groups = new Map<string, string[]>();
  for (const change of compared.comparison.limits.filter((one) => one.change !== 'bounds')) {
    const words = limitChangeWords(change, compared);
    const head = paint(styleOf(change), `  ${words.old} → ${words.new}`);
    const line = wrap(printable(sayLimitChange(words)), columns, '    ', '      ');
    groups.set(head, [...(groups.get(head) ?? []), line]);
  }
  const body = [...groups].flatMap(([head, limits]) => [head, ...limits]);
  return headed('Verdicts that changed', body, settings);
}

function styleOf(change: LimitChange): Style {
  if (change.new === null || change.new.verdict === 'unknown') return 'doubt';
  return change.new.verdict === 'pass' ? 'good' : 'bad';
}

function changedBounds(compared: Compared, settings: CompareSettings): string[] {
  const changes = otherBounds(compared.comparison);
  return listed(
    'Limits with other bounds, the verdict as before',
    changes.map((change) => {
      const words = limitChangeWords(change, compared);
      return `${words.new}: ${sayLimitChange(words)}`;
    }),
    settings,
  );
}

function lines({ title, heads, rows }: Table, settings: CompareSettings): string[] {
  const clean = rows.map(({ label, cells }) => ({
    label: printable(label),
    cells: cells.map((cell) => cell && printable(cell)),
  }));
  return paintedTable({ title: printable(title), heads, rows: clean }, settings);
}

const listed = (title: string, texts: readonly string[], settings: CompareSettings): string[] =>
  headed(
    title,
    texts.map((text) => wrap(`- ${printable(text)}`, settings.columns, '  ', '    ')),
    settings,
  );

const headed = (title: string, body: readonly string[], { paint }: CompareSettings): string[] =>
  body.length === 0 ? [] : [paint('heading', title), ...body];
