import { printable } from './printable.js';

/** Tables of words: a label column and right-aligned columns, set in blocks that keep to the width. */
export interface Table {
  readonly title: string;
  readonly heads: readonly string[];
  /** A cell that is null is left empty; a row of none but those is left out. */
  readonly rows: readonly { readonly label: string; readonly cells: readonly (string | null)[] }[];
}

const indent = '  ';
const gap = 2;
/** Characters of a column's heading. */
export const longestHead = 16;

/** Lines; the first of each block is its heading. None where there is nothing to show. */
export function tableLines(
  { title, heads, rows }: Table,
  columns: number,
  paintHeading: (text: string) => string,
): string[] {
  const shown = rows
    .filter(({ cells }) => cells.some((cell) => cell !== null))
    .map(({ label: own, cells }) => ({ label: inLine(own), cells }));
  if (shown.length === 0) return [];
  const label = Math.max(title.length, ...shown.map((row) => indent.length + row.label.length));
  const names = heads.map((head) => shortened(printable(head), longestHead));
  const widths = names.map(
    (name, i) => gap + Math.max(name.length, ...shown.map(({ cells }) => cells[i]?.length ?? 0)),
  );
  return blocksWithin(widths, columns - label).flatMap((block) => {
    const set = (cells: readonly (string | null)[]): string =>
      block.map((i) => (cells[i] ?? '').padStart(widths[i]!)).join('');
    return [
      paintHeading(`${title.padEnd(label)}${set(names)}`),
      ...shown.map((row) => `${(indent + row.label).padEnd(label)}${set(row.cells)}`.trimEnd()),
    ];
  });
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

/** Cut between characters, never inside one that two units make up. */
export function shortened(text: string, longest: number): string {
  const characters = Array.from(text);
  return characters.length <= longest ? text : `${characters.slice(0, longest - 1).join('')}…`;
}
