import { describe, expect, it } from 'vitest';
import { isWord, shown } from '../../src/quantity/source-text.js';

describe('words', () => {
  it.each(['radius', 'noseLength', 'x_1', '_a', 'länge', 'θ'])('%s can name a value', (text) => {
    expect(isWord(text)).toBe(true);
  });
  it.each(['', '1a', 'nose length', 'nose-length', 'a²', 'a.b', 'º'])('%j cannot', (text) => {
    expect(isWord(text)).toBe(false);
  });
});

it('shows a piece of text on one line, at most 60 characters', () => {
  expect(shown(' a \n +  b ')).toBe('`a + b`');
  expect(shown('a'.repeat(61))).toBe(`\`${'a'.repeat(57)}…\``);
});
