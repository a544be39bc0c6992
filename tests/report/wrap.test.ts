/** Broken lines lose nothing, keep to their width, and are as full as they can be. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { padEnd, padStart, shortened, splitAt, textWidth } from '../../src/report/text-width.js';
import { wrap } from '../../src/report/wrap.js';

describe('wrap', () => {
  it('breaks at spaces, the first line by itself indented', () => {
    expect(wrap('- one two three four', 9, '  ', '    ')).toBe('  - one\n    two\n    three\n    four');
    expect(wrap('one two three', 7)).toBe('one two\nthree');
    expect(wrap('one two three', 80, '  ')).toBe('  one two three');
  });

  it('breaks a word that is wider than the line', () => {
    expect(wrap('abcdefghij', 4)).toBe('abcd\nefgh\nij');
    expect(wrap('abcdefghij', 4, ' ', '  ')).toBe(' abc\n  de\n  fg\n  hi\n  j');
  });

  it('makes progress where there is no width at all', () => {
    expect(wrap('abc', 1, '  ')).toBe('  a\n  b\n  c');
    expect(wrap('', 10, '  ')).toBe('  ');
  });

  it('keeps to the width, loses no word, and has no line that the next word would fit on', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(words, fc.integer({ min: 14, max: 60 }), (list, width) => {
        const lines = wrap(list.join(' '), width, '', '  ').split('\n');
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
        expect(lines.flatMap((line) => line.trim().split(' '))).toEqual(list);
        lines.slice(1).forEach((line, i) => {
          expect(lines[i]!.length + 1 + line.trim().split(' ', 1)[0]!.length).toBeGreaterThan(width);
        });
      }),
    );
  });

  it('keeps to the width whatever the characters, as wide as they are', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 80 }),
        fc.integer({ min: 8, max: 40 }),
        (text, width) => {
          for (const line of wrap(text, width, '- ', '  ').split('\n'))
            expect(textWidth(line)).toBeLessThanOrEqual(width);
        },
      ),
    );
  });
});

describe('the width of a text', () => {
  it.each([
    ['ash', 3],
    ['1¾ in ×', 7],
    ['', 0],
    ['é', 1],
    ['e\u0301', 1],
    ['木', 2],
    ['ﾊﾟ', 1],
    ['한글', 4],
    ['🪑', 2],
    ['👩‍👩‍👧', 2],
    ['❤️', 2],
    ['\u200b', 0],
  ])('of %j is %i', (text, width) => {
    // UAX #11 (wide: two columns) and UAX #29 (what is one character).
    expect(textWidth(text)).toBe(width);
  });

  it('is that of its two ends together, wherever it is cut', () => {
    for (let width = 0; width < 12; width++) {
      const text = 'ab木c한🪑de\u0301';
      const [start, rest] = splitAt(text, width);
      expect(start + rest).toBe(text);
      expect(textWidth(start)).toBeLessThanOrEqual(width);
    }
  });

  it('is kept by padding and by shortening', () => {
    expect(padStart('木', 4)).toBe('  木');
    expect(padEnd('木', 4)).toBe('木  ');
    expect(padEnd('long', 2)).toBe('long');
    expect(shortened('木木木', 6)).toBe('木木木');
    expect(shortened('木木木木', 6)).toBe('木木…');
    expect(shortened('abcdef', 5)).toBe('abcd…');
  });
});
