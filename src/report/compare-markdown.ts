/** What moved between two designs, as a comment for a pull request: what became worse first. */
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
import { bullets, folded, inMarkdown, markdownTable, nameInMarkdown } from './github-flavoured.js';
import { limitChangeWords } from './limit-change-words.js';
import type { Table } from './table.js';
import { sayVerdict } from './verdict-words.js';

export function printCompareMarkdown(compared: Compared): string {
  const { old, new: now, comparison } = compared;
  const { units, name } = now.result.design;
  const tables = [dimensionTable(comparison, units), ...movedTables(comparison, units)];
  const flipped = comparison.limits.filter(({ change }) => change !== 'bounds');
  const bounds = otherBounds(comparison);
  const over = newlyOver(comparison);
  const moved = [
    limitTable('verdict changed', flipped, compared),
    limitTable('other bounds, the verdict as before', bounds, compared),
    ...tables.map(setTable),
    setTable(massTable(comparison, units)),
    bullets(unmatchedLoads(comparison)),
  ].filter((part) => part !== '');
  const parts = [
    `### ${inMarkdown(sayVerdict(now.result))}`,
    `**${nameInMarkdown(name)}**, ${nameInMarkdown(now.result.file)} against ${nameInMarkdown(old.result.file)}, ` +
      `of which it was said: ${inMarkdown(sayVerdict(old.result))}`,
    ...(over.length === 0 ? [] : [`**${nowOver}:**\n\n${bullets(over)}`]),
    ...(moved.length === 0 ? ['Nothing moved by as much as a maker could read.'] : moved),
    folded('What to mind', bullets(cautionsOf(now.result))),
  ];
  return `${parts.join('\n\n')}\n`;
}

function limitTable(title: string, changes: readonly LimitChange[], compared: Compared): string {
  const rows = changes.map((change) => {
    const words = limitChangeWords(change, compared);
    return [words.limit, words.old, words.new, words.value ?? '-', words.wanted, words.why ?? ''];
  });
  return tableOf([title, 'old', 'new', 'is', 'wanted', 'by how much, or why'], rows, 'words');
}

const setTable = ({ title, heads, rows }: Table): string =>
  tableOf(
    [title, ...heads],
    rows.map(({ label, cells }) => [label, ...cells.map((cell) => cell ?? '')]),
    'numbers',
  );

/** Nothing where there is nothing to show. */
function tableOf(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  cells: 'words' | 'numbers',
): string {
  if (rows.length === 0) return '';
  const set = (texts: readonly string[]): string[] => texts.map((text) => inMarkdown(text));
  return markdownTable(set(heads), rows.map(set), cells);
}
