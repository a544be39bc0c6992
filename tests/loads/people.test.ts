/** Who can be seated: nobody of a size that was meant in another unit. */
import { describe, expect, it } from 'vitest';
import { mistakesIn, oneArc } from '../reading.js';

const withSitter = (sizes: string): string[] =>
  mistakesIn(`${oneArc}sitters: [ { name: anna, body: female, ${sizes} } ]\n`);

describe('a sitter', () => {
  it('of usual sizes is seated', () => {
    expect(withSitter('stature: 1.68 m, mass: 60 kg')).toEqual([]);
    expect(withSitter('stature: 0.95 m, mass: 14 kg')).toEqual([]);
  });

  it.each([
    ['stature: 168, mass: 60 kg', 'a stature of 0.5 to 2.5 m, found 0.168 m'],
    ['stature: 168 m, mass: 60 kg', 'a stature of 0.5 to 2.5 m, found 168 m'],
    ['stature: 1.68 m, mass: 640 kg', 'a mass of 3 to 400 kg, found 640 kg'],
  ])('with %s is refused at that size', (sizes, words) => {
    const mistakes = withSitter(sizes);
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toContain(words);
  });
});
