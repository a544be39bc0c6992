/** Who can be seated: nobody of a size that was meant in another unit. */
import { describe, expect, it } from 'vitest';
import { readDesign } from '../../src/design/read-design.js';
import { designFunction } from '../../src/explore/design-function.js';
import { variablesOf } from '../../src/explore/variables.js';
import { mistakesIn, oneArc, sitters } from '../reading.js';

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

describe('a child in arms', () => {
  const withChild = (mass: string): string[] =>
    mistakesIn(`${oneArc}sitters: standard\nchild: { mass: ${mass} }\n`);

  it('of any size that is held in arms is taken', () => {
    expect(withChild('2.5 kg')).toEqual([]);
    expect(withChild('30 kg')).toEqual([]);
  });

  it.each([
    ['1e6 kg', 'found 1000000 kg'],
    ['80 kg', 'found 80 kg'],
    ['50 g', 'found 0.05 kg'],
  ])('of %s is refused there', (mass, words) => {
    const mistakes = withChild(mass);
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toMatch(/^design\.yaml:11:16:/);
    expect(mistakes[0]).toContain(`a mass of 0.5 to 60 kg, ${words}`);
  });
});

describe('a sitter whose size is varied', () => {
  const read = readDesign(`${oneArc}${sitters}`, 'design.yaml');
  if (!read.ok) throw new Error('a design that cannot be read');
  const named = (name: string) => variablesOf(read.value).filter((one) => one.name === name);

  it.each([
    ['short mass', 0, 'a mass of 3 to 400 kg'],
    ['short mass', -5, 'a mass of 3 to 400 kg'],
    ['tall mass', 1e5, 'a mass of 3 to 400 kg'],
    ['tall stature', 0, 'a stature of 0.5 to 2.5 m'],
    ['tall stature', 30, 'a stature of 0.5 to 2.5 m'],
  ])('to a %s of %d is nobody who can be seated', (name, value, expected) => {
    const tried = designFunction(read.value, named(name)).at([value]);
    expect(tried).toMatchObject({ ok: false, issues: [{ expected }] });
  });

  it('between those is seated', () => {
    expect(designFunction(read.value, named('short mass')).at([3]).ok).toBe(true);
    expect(designFunction(read.value, named('tall stature')).at([2.5]).ok).toBe(true);
  });
});
