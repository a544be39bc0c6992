import { expect, it } from 'vitest';
import { tablesIn, withoutReferences } from './markdown-table.js';

// GitHub Flavored Markdown 0.29, examples 198 and 200.
it('reads the tables of the specification', () => {
  expect(tablesIn('| foo | bar |\n| --- | --- |\n| baz | bim |\n\nwords')).toEqual([
    { heads: ['foo', 'bar'], rows: [['baz', 'bim']] },
  ]);
  expect(tablesIn('| f\\|oo  |\n| ------ |\n| b `\\|` az |\n| b **\\|** im |')).toEqual([
    { heads: ['f\\|oo'], rows: [['b `\\|` az'], ['b **\\|** im']] },
  ]);
});

it('finds a pipe that splits a cell', () => {
  expect(tablesIn('| a |\n| --- |\n| b | c |')[0]!.rows).toEqual([['b', 'c']]);
});

// CommonMark 0.31, example 26.
it('reads character references', () => {
  expect(withoutReferences('&#35; &#1234; &#992; &amp;')).toBe('# Ӓ Ϡ &amp;');
});
