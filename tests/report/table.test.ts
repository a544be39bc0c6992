/** Tables of words: what stands where, at any width. */
import { describe, expect, it } from 'vitest';
import { longestHead, tableLines, type Table } from '../../src/report/table.js';
import { textWidth } from '../../src/report/text-width.js';

const plain = (text: string): string => text;
const bench: Table = {
  title: 'On the bench',
  heads: ['left', 'right'],
  rows: [
    { label: 'length', cells: ['41 in', '9-1/16 in'] },
    { label: '  of the tail', cells: [null, '7'] },
    { label: 'never drawn', cells: [null, null] },
  ],
};

describe('a table', () => {
  it('has labels to the left, numbers to the right, and no row without a cell', () => {
    expect(tableLines(bench, 80, plain)).toEqual([
      'On the bench      left      right',
      '  length         41 in  9-1/16 in',
      '    of the tail                 7',
    ]);
  });

  it('paints its headings and nothing else', () => {
    const painted = tableLines(bench, 80, (text) => `<${text}>`);
    expect(painted.map((line) => line.startsWith('<'))).toEqual([true, false, false]);
    expect(painted[0]).toBe('<On the bench      left      right>');
  });

  it('that shows nothing is none', () => {
    expect(tableLines({ ...bench, rows: [{ label: 'nothing', cells: [null, null] }] }, 80, plain)).toEqual(
      [],
    );
    expect(tableLines({ ...bench, heads: [], rows: [{ label: 'x', cells: [] }] }, 80, plain)).toEqual([]);
  });

  it('too wide goes on in blocks, an empty line between, each with the rows that it has', () => {
    expect(tableLines(bench, 28, plain)).toEqual([
      'On the bench      left',
      '  length         41 in',
      '',
      'On the bench         right',
      '  length         9-1/16 in',
      '    of the tail          7',
    ]);
  });

  it.each([40, 60, 80, 100])('keeps to %i columns, with every cell in it once', (columns) => {
    const heads = Array.from({ length: 12 }, (_, i) => `sitter ${i + 1} of a dozen`);
    const cells = heads.map((_, i) => `${100 + i} in`);
    const lines = tableLines({ title: 'Many', heads, rows: [{ label: 'height', cells }] }, columns, plain);
    for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(columns);
    for (const cell of cells) expect(lines.join('\n').split(cell)).toHaveLength(2);
  });

  it('cuts a head that is too long, and counts a wide character as two', () => {
    const heads = ['a name much longer than the column', '木の椅子'];
    const lines = tableLines({ title: 'T', heads, rows: [{ label: 'l', cells: ['1', '2'] }] }, 80, plain);
    expect(lines[0]).toContain(`${'a name much longer than the column'.slice(0, longestHead - 1)}…`);
    expect(new Set(lines.map(textWidth)).size).toBe(1);
  });

  it('cuts a label that leaves no room for a column', () => {
    const rows = [{ label: 'so long that no column has a place beside it', cells: ['12 in'] }];
    const lines = tableLines({ title: 'T', heads: ['one'], rows }, 40, plain);
    for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(40);
    expect(lines[1]).toMatch(/^ {2}so long .*… +12 in$/);
  });

  it('lets no label or head leave its line or paint the terminal', () => {
    const rows = [{ label: '\u001b[31mred\u001b[0m\nrow', cells: ['1'] }];
    const lines = tableLines({ title: 'T', heads: ['a\u0007\nb'], rows }, 80, plain);
    expect(lines).toHaveLength(2);
    for (const line of lines) expect(line).not.toMatch(/\p{Cc}/u);
  });
});
