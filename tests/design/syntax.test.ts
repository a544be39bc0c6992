/** Texts that are no design at all: one mistake each, at its place, and soon. */
import { describe, expect, it } from 'vitest';
import { disc, mistakesIn } from './read.js';

/** The one thing told of a text. */
function mistakeIn(text: string): string {
  const mistakes = mistakesIn(text);
  expect(mistakes).toHaveLength(1);
  return mistakes[0]!;
}

describe('the file as a whole', () => {
  it.each([
    ['empty', '', /^chair\.yaml: .* found nothing$/],
    ['blank', ' \n\n', /^chair\.yaml: .* found nothing$/],
    ['only a comment', '# a chair\n', /^chair\.yaml: .* found nothing$/],
    ['a list', '\n- trueroll: 1\n', /^chair\.yaml:2:1: expected a design: .* found a list of 1$/],
    ['a text', 'rocking chair', /^chair\.yaml:1:1: .* found the text `rocking chair`$/],
    ['10 MB', `${disc}# ${'x'.repeat(10_000_000)}`, /^chair\.yaml: expected .* 4 MB/],
    [
      'binary',
      `${disc}kind: \u0000\u0001`,
      /^chair\.yaml:7:7: expected a text file in UTF-8, found .*U\+0000/,
    ],
    ['another encoding', `${disc}name: 1\uFFFD`, /^chair\.yaml:7:8: .*U\+FFFD/],
    ['two documents', `${disc}---\n${disc}`, /^chair\.yaml:7:1: expected one design/],
    ['an older YAML', `%YAML 1.1\n---\n${disc}`, /^chair\.yaml:1:1: expected YAML 1\.2/],
  ])('%s', (_, text, wanted) => {
    expect(mistakeIn(text)).toMatch(wanted);
  });
});

describe('YAML that does not hold together', () => {
  it.each([
    [
      'a tab before a key',
      'trueroll: 1\nparts:\n\t- name: a\n',
      ':3:1: expected spaces before a key, found a tab',
    ],
    ['a second colon', 'name: chair: porch\n', ':1:7: expected one `key: value` on a line'],
    ['an open bracket', 'parts: [1, 2\nname: a\n', ':2:1: expected a closing ] or }'],
    ['an open brace at the end', '{ trueroll: 1', ':1:14: expected a closing ] or }, found the end'],
    [
      'an open quote',
      "trueroll: 1\nname: 'a\nkind: porch\n",
      ':2:7: expected a text that ends with the quote mark',
    ],
    ['a mark in front', 'name: @home\n', ':1:7: expected a value, found `@home`'],
    ['text behind a quote', 'name: "a" b\n', ':1:11: expected YAML'],
    ['a list as key', '? [a]\n: 3\n', ':1:3: expected a word as key'],
    ['an unknown tag', 'name: !ash 1\n', ':1:7: expected a value without a tag, found `!ash 1`'],
    [
      'a tag that makes a set',
      'a: 1\nname: !!set { x }\n',
      ':2:13: expected a value without a tag, found the tag !!set',
    ],
  ])('%s', (_, text, start) => {
    expect(mistakeIn(text)).toContain(`chair.yaml${start}`);
  });

  it.each([
    ['period: >= 1.8 s', 11, '>= 1.8 s'],
    ['period: > 1.8 s', 11, '> 1.8 s'],
    ['{ period: >= 1.8 s }', 13, '>= 1.8 s'],
  ])('%s: a comparison is written as a range', (line, column, found) => {
    const place = `chair.yaml:2:${column}`;
    expect(mistakeIn(`limits:\n  ${line}\n`)).toContain(
      `${place}: expected a range, found \`${found}\`. Hint: write \`1.8 s ..\` for at least`,
    );
  });
});

describe('texts that would keep a machine busy', () => {
  const bomb = [
    'a: &a [x, x]',
    ...'bcdefghij'.split('').map((key, i) => {
      const before = 'abcdefghij'.charAt(i);
      return `${key}: &${key} [*${before}, *${before}, *${before}]`;
    }),
  ].join('\n');

  it.each([
    ['aliases of aliases', bomb, ':2:8: expected the value itself, found the alias *a'],
    ['20 000 brackets', `a: ${'['.repeat(20_000)}`, ': expected at most 64 levels'],
    ['20 000 dashes', '- '.repeat(20_000), ': expected at most 64 levels'],
    ['20 000 braces', '{a: '.repeat(20_000), ': expected at most 64 levels'],
    [
      '40 000 keys',
      Array.from({ length: 40_000 }, (_, i) => `k${i}: 1\n`).join(''),
      ':1:1: expected at most 1000 keys',
    ],
    ['a million items', `a: [${'1,'.repeat(1_000_000)}1]`, ' words and marks'],
  ])('%s', (_, text, part) => {
    const start = performance.now();
    expect(mistakeIn(text)).toContain(part);
    // A hundred times what it takes here; without the limits some take minutes or overflow the stack.
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});

it('reads what editors of every system write', () => {
  expect(mistakesIn(`\uFEFF${disc}`)).toEqual([]);
  expect(mistakesIn(disc.replace(/\n/g, '\r\n'))).toEqual([]);
  expect(mistakesIn(`---\n${disc}...\n`)).toEqual([]);
  expect(mistakesIn(disc.trimEnd())).toEqual([]);
  expect(mistakesIn(`%YAML 1.2\n---\n${disc}`)).toEqual([]);
});
