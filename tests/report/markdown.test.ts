import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inMarkdown, nameInMarkdown } from '../../src/report/github-flavoured.js';
import { printMarkdown } from '../../src/report/markdown.js';
import type { Remedy, RemedyChange } from '../../src/explore/remedy.js';
import { dimensionOf } from '../../src/quantity/dimension.js';
import { printText } from '../../src/report/text.js';
import { tablesIn, withoutReferences } from '../oracles/markdown-table.js';
import { checked, designText, everyVerdict, hostileNames, limit, withLimits } from './made-up.js';

const all = everyVerdict();
const met = withLimits(checked(designText(['shortest', 'tallest'])), [
  limit('empty', null, 'seatSlopeDeg', [0, 9], 5.5),
]);
const unknown = withLimits(met, [limit('empty', null, 'seatSlopeDeg', [0, 9], 'no seat')]);
const titled = (markdown: string, head: string) =>
  tablesIn(markdown).find(({ heads }) => heads[0] === head) ?? { heads: [], rows: [] };

const inch = 0.0254;

describe('a comment for a pull request', () => {
  it('of two designs', async () => {
    await expect(printMarkdown([all, met])).toMatchFileSnapshot('../golden/check.md');
  });

  it.each([
    ['met', met],
    ['not met', all],
    ['unknown', unknown],
  ])('says the verdict first, in the words of the first screen: %s', (_, result) => {
    const [, second] = printText(result, {
      columns: Infinity,
      all: false,
      assumed: false,
      parts: false,
      paint: (_style, text) => text,
    }).split('\n');
    expect(printMarkdown([result]).split('\n')[0]).toBe(`### ${second!}`);
  });

  it('never says that a chair passes, is safe or is certified', () => {
    expect(printMarkdown([all, met, unknown])).not.toMatch(/\bpass(ed|es)?\b|\bsafe|certif/i);
  });

  it('shows what is not met with value, wanted and by how much; unknown with why', () => {
    expect(titled(printMarkdown([all]), 'not met')).toEqual({
      heads: ['not met', 'is', 'wanted', 'by how much, or why'],
      rows: [
        ['tallest: one full rock, small', '2.71 s', '1.8 s to 2.6 s', '0.11 s too much'],
        ['tallest: to the wall behind', '-1 in', 'at least 1/2 in', '1-1/2 in too little'],
        [
          'shortest, feet up: seat slope, front higher',
          'unknown',
          '0° to 14°',
          'the design has no seat line',
        ],
        [
          'tallest, leaning back hard: comes to rest on its rockers',
          'NOT MET',
          'a rest',
          expect.stringMatching(/their radius, 16 in, .* more than 24 in would stand$/),
        ],
      ],
    });
    expect(titled(printMarkdown([met]), 'not met').rows).toEqual([]);
  });

  it('shows what to change where something is known to help', () => {
    const change = (name: string, from: number, to: number): RemedyChange => {
      const variable = { name, dimension: dimensionOf.length, stated: from * inch, of: null };
      return {
        change: { variable, step: inch / 16, from: from * 16, least: -100, greatest: 100 },
        from: from * inch,
        to: to * inch,
        neededFor: [],
      };
    };
    const wanted = all.limits.find(({ id }) => id === 'seated/period/tallest')!.range;
    const remedy = {
      stage: 'drawing',
      value: 2.6,
      notMet: [],
      breaks: [],
      moves: [],
      mendsAll: false,
      range: wanted,
    } as const;
    const remedies = new Map<string, Remedy[]>([
      [
        'seated/period/tallest',
        [
          { ...remedy, changes: [change('radius', 42, 40.5)], mendsAll: true },
          {
            ...remedy,
            changes: [change('radius', 42, 41), change('tail', 21, 20)],
            breaks: ['seated/seatSlope/shortest'],
          },
        ],
      ],
    ]);
    const { heads, rows } = titled(printMarkdown([{ ...all, remedies }]), 'not met');
    expect(heads.at(-1)).toBe('what to change');
    expect(rows.map((row) => row.at(-1))).toEqual([
      'radius 42 in → 40-1/2 in (then 2.6 s; all limits met); or radius 42 in → 41 in and tail 21 in → 20 in (then 2.6 s; but no longer met: seated/seatSlope/shortest)',
      '',
      '',
      '',
    ]);
  });

  it('shows every limit, and a column a sitter, the empty chair first', () => {
    const markdown = printMarkdown([all]);
    expect(titled(markdown, 'limit').rows).toHaveLength(all.limits.length);
    const left = titled(markdown, 'what is left');
    expect(left.heads).toEqual(['what is left', 'empty', 'shortest', 'tallest']);
    expect(left.rows).toContainEqual(['leaning back hard: rocker left', '', '', '0 in']);
    expect(left.rows).toContainEqual(['at rest: to the point of no return, back', '64°', '22°', '17°']);
  });

  it('folds all but the verdict and what is not met', () => {
    const markdown = printMarkdown([all]);
    expect(markdown.match(/<details>\n<summary>[^<>]+<\/summary>\n\n/g)).toHaveLength(4);
    expect(markdown.match(/\n\n<\/details>\n/g)).toHaveLength(4);
    const open = markdown.slice(0, markdown.indexOf('<details>'));
    expect(tablesIn(open).map(({ heads }) => heads[0])).toEqual(['not met']);
  });

  it('of a design without limits or rests says so', () => {
    const markdown = printMarkdown([{ ...withLimits(met, []), loads: [] }]);
    expect(markdown).toContain('None: the design has dropped them all.');
  });
});

describe('a name from anywhere', () => {
  const commentOf = (name: string): string => {
    const result = everyVerdict(['first', 'second']);
    const limits = result.limits.map((one) => ({ ...one, sitter: one.sitter && name }));
    const loads = result.loads.map(({ record, measured }) => ({
      record: { ...record, load: { ...record.load, sitter: record.load.sitter && name } },
      measured,
    }));
    return printMarkdown([{ ...result, design: { ...result.design, name }, limits, loads, file: name }]);
  };
  const plain = commentOf('plain');

  it.each(hostileNames)('leaves every table and every fold as it was: %j', (name) => {
    const comment = commentOf(name);
    const shape = (markdown: string) =>
      tablesIn(markdown).map(({ heads, rows }) => [heads.length, ...rows.map((row) => row.length)]);
    expect(shape(comment)).toEqual(shape(plain));
    expect(comment.split('\n')).toHaveLength(plain.split('\n').length);
    expect(comment.match(/<[^>]*>/g)).toEqual(plain.match(/<[^>]*>/g));
    // GitHub takes no longer comment.
    expect(comment.length).toBeLessThan(65_536);
  });

  it('of any characters has none that can open markup, and reads as it was', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 70 }), (name) => {
        const set = inMarkdown(name);
        expect(set.replace(/&#\d+;/g, '')).not.toMatch(/[\\`*_{}[\]<>|~!&$^@#\n\r]|:\S/);
        const visible = name.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/gu, '');
        const squeezed = (text: string) => text.replace(/[\s\u200b]+/gu, '');
        expect(squeezed(withoutReferences(set))).toBe(squeezed(visible));
      }),
    );
  });

  it('calls nobody, and is no link', () => {
    expect(inMarkdown('@everyone')).toBe('&#64;&#8203;everyone');
    expect(inMarkdown('#12')).toBe('&#35;&#8203;12');
    expect(inMarkdown('https://example.org')).not.toContain('://');
    expect(inMarkdown('www.example.org')).not.toContain('www.');
    expect(inMarkdown(':tada:')).not.toContain(':t');
  });

  it('leaves sentences and numbers as they are', () => {
    const sentence = 'Not all limits are met: 1 of 5 fail, 1-3/4 in at 0.25 (the design’s own).';
    expect(inMarkdown(sentence)).toBe(sentence);
  });

  it('is cut without breaking a character, and is never nothing', () => {
    expect(nameInMarkdown('🪑'.repeat(200))).toMatch(/^(🪑)+…$/u);
    expect(nameInMarkdown('x'.repeat(80))).toBe('x'.repeat(80));
    expect(nameInMarkdown('x'.repeat(81))).toBe(`${'x'.repeat(79)}…`);
    expect(nameInMarkdown('\u0007 ')).toBe('(no name)');
  });
});
