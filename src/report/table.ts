/** Tables of words: a label column and right-aligned columns, set in blocks that keep to the width. */
import { printable } from './printable.js';
import type { TextSettings } from './text-settings.js';
import { padEnd, padStart, shortened, textWidth } from './text-width.js';

export interface Table {
  readonly title: string;
  readonly heads: readonly string[];
  /** A cell that is null is left empty; in a block a row of none but those is left out. */
  readonly rows: readonly Row[];
}

interface Row {
  readonly label: string;
  readonly cells: readonly (string | null)[];
}

const indent = '  ';
const gap = 2;
/** Columns that a heading may take. */
export const longestHead = 16;

/** Its lines as they are shown: as wide as the screen, its headings painted. */
export const paintedTable = (
  table: Table,
  { columns, paint }: Pick<TextSettings, 'columns' | 'paint'>,
): string[] => tableLines(table, columns, (text) => paint('heading', text));

/** Lines; the first of each block is its heading. None where there is nothing to show. */
export function tableLines(
  { title, heads, rows }: Table,
  columns: number,
  paintHeading: (text: string) => string,
): string[] {
  const shown = rows
    .filter(hasSome)
    .map(({ label, cells }): Row => ({ label: indent + inLine(label), cells }));
  if (shown.length === 0) return [];
  const names = heads.map((head) => shortened(printable(head), longestHead));
  const widths = names.map(
    (name, i) => gap + Math.max(textWidth(name), ...shown.map(({ cells }) => textWidth(cells[i] ?? ''))),
  );
  const label = labelWidth([title, ...shown.map((row) => row.label)], widths, columns);
  return blocksWithin(widths, columns - label).flatMap((block, number) => {
    const set = (first: string, cells: readonly (string | null)[]): string =>
      padEnd(shortened(first, label), label) +
      block.map((i) => padStart(cells[i] ?? '', widths[i]!)).join('');
    const own = shown.filter(({ cells }) => hasSome({ cells: block.map((i) => cells[i] ?? null) }));
    return [
      ...(number === 0 ? [] : ['']),
      paintHeading(set(title, names)),
      ...own.map((row) => set(row.label, row.cells).trimEnd()),
    ];
  });
}

const hasSome = ({ cells }: Pick<Row, 'cells'>): boolean => cells.some((cell) => cell !== null);

/** Columns that a label may always take: none of this tool's own needs more; names of parts may. */
const ownLabel = 48;

/** Wide enough for every label; longer ones are cut where they would push columns off, and always leave room for one. */
function labelWidth(labels: readonly string[], widths: readonly number[], columns: number): number {
  const longest = Math.max(...labels.map(textWidth));
  const left = columns - widths.reduce((sum, width) => sum + width, 0);
  return Math.min(longest, Math.max(left, ownLabel), columns - Math.max(...widths));
}

/** Indices of the columns of each block, as many as fit and at least one. */
function blocksWithin(widths: readonly number[], room: number): number[][] {
  const blocks: number[][] = [];
  let left = 0;
  widths.forEach((width, i) => {
    const block = blocks.at(-1);
    if (block === undefined || width > left) {
      blocks.push([i]);
      left = room - width;
    } else {
      block.push(i);
      left -= width;
    }
  });
  return blocks;
}

/** What leads a label is its indent; the rest is somebody's words. */
const inLine = (label: string): string => `${/^ */u.exec(label)![0]}${printable(label)}`;
