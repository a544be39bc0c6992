import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestWord } from '../../src/quantity/nearest.js';

describe('nearestWord', () => {
  it.each([
    ['raduis', ['rail', 'radius'], 'radius'],
    ['noselength', ['tail', 'noseLength'], 'noseLength'],
    ['inchs', ['in', 'inch', 'inches'], 'inch'],
    ['Kg', ['g', 'kg'], 'kg'],
    ['MM', ['m', 'mm'], 'mm'],
    ['tial', ['tail'], 'tail'],
    ['widht', ['width'], 'width'],
    ['outlne', ['outline'], 'outline'],
  ])('%s', (word, known, nearest) => {
    expect(nearestWord(word, known)).toBe(nearest);
  });

  it.each([
    ['ab', ['ac', 'abc']],
    ['tail', ['nose', 'radius']],
    ['depth', ['width', 'death-watch']],
    ['', ['a']],
    ['x', []],
  ])('nothing near %s', (word, known) => {
    expect(nearestWord(word, known)).toBeUndefined();
  });

  it('takes the first of equally near ones', () => {
    expect(nearestWord('bat', ['cat', 'hat'])).toBe('cat');
  });

  it('finds a word again after one letter is lost or two are swapped', () => {
    const letters = fc.string({
      unit: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'),
      minLength: 4,
      maxLength: 12,
    });
    fc.assert(
      fc.property(letters, fc.nat(), (word, pick) => {
        const at = pick % (word.length - 1);
        const swapped = word.slice(0, at) + word[at + 1]! + word[at]! + word.slice(at + 2);
        expect(nearestWord(swapped, [word])).toBe(word);
        expect(nearestWord(word.slice(0, at) + word.slice(at + 1), [word])).toBe(word);
        expect(nearestWord(word.toUpperCase(), [word])).toBe(word);
      }),
    );
  });
});
