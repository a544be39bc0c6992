import { describe, expect, it } from 'vitest';
import { segmentRows } from '../../src/sitter/segment-table.js';
import { deLeva1996 } from './published/de-leva-1996.js';

/** The row of the publication that each segment takes, and one of the same people with another second-named end. */
const rowsOf = {
  trunk: ['Trunk MIDS-MIDH', 'Trunk SUPR-MIDH'],
  head: ['Head VERT-CERV', 'Head VERT-MIDG'],
  'upper arms': ['Upper arm SJC-EJC', null],
  forearms: ['Forearm EJC-WJC', 'Forearm EJC-STYL'],
  hands: ['Hand WJC-MET3', 'Hand WJC-DAC3'],
  thighs: ['Thigh HJC-KJC', null],
  shanks: ['Shank KJC-AJC', 'Shank KJC-LMAL'],
  feet: ['Foot HEEL-TTIP', null],
} as const;

describe.each(['female', 'male'] as const)('segments of a %s body', (body) => {
  const published = deLeva1996[body];
  const rowNamed = (name: string) => segmentRows(body).find((row) => row.name === name)!;

  it('are those of the body, in the numbers it has them', () => {
    expect(segmentRows(body).map(({ name, number }) => [name, number])).toEqual(
      Object.keys(rowsOf).map((name) => [name, name === 'trunk' || name === 'head' ? 1 : 2]),
    );
  });

  it.each(Object.entries(rowsOf))('%s are as published: %s', (name, [row]) => {
    const { mass, centre, gyration } = rowNamed(name);
    expect([mass, centre, gyration]).toEqual(published[row]);
  });

  it('make up the whole body', () => {
    const sum = segmentRows(body).reduce((total, { number, mass }) => total + number * mass, 0);
    // Printed to four decimals; the women's sum to 0.9999. A hair more for the rounding of the sum.
    expect(Math.abs(sum - 1)).toBeLessThan(1.001e-4);
  });

  it('have a trunk of upper, middle and lower', () => {
    const parts = ['Upper trunk SUPR-XYPH', 'Middle trunk XYPH-OMPH', 'Lower trunk OMPH-MIDH'] as const;
    const sum = parts.reduce((total, part) => total + published[part][0], 0);
    expect(rowNamed('trunk').mass).toBeCloseTo(sum, 9);
  });

  // Centre and radius are lengths: written as fractions of another length, both change by the same factor. A slip in
  // copying one of them shows. 0.5 %: radii are printed to 0.001 of 0.2 to 0.5, two of them in the quotient.
  const twice = Object.entries(rowsOf).filter(([, [, other]]) => other !== null);
  it.each(twice)('%s: centre and radius of %s agree with %s', (name, [, other]) => {
    const row = rowNamed(name);
    const [, centre, gyration] = published[other!];
    // The trunk's two lengths share the hip, the end named last.
    const fromSharedEnd = name === 'trunk' ? (1 - row.centre) / (1 - centre) : row.centre / centre;
    expect(Math.abs(row.gyration / gyration / fromSharedEnd - 1)).toBeLessThan(0.005);
  });
});
