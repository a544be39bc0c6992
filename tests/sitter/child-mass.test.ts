import { describe, expect, it } from 'vitest';
import { childMass, month } from '../../src/sitter/child-mass.js';
import { present } from './people-seated.js';
import { whoMedian } from './published/who-median.js';

const massAt = (body: 'girl' | 'boy' | null, months: number) =>
  present(childMass({ body, age: months * month, mass: null })).mass;

describe('mass of a child in arms', () => {
  // 0.005 kg: the table is rounded to two decimals, the median of the growth standard has four. A hair more for the
  // one that ends in 5.
  it.each(whoMedian)('is the published median: %s, %i months', (body, months, mass) => {
    expect(Math.abs(massAt(body, months) - mass)).toBeLessThan(0.00501);
  });

  // Between 15 and 18 months: 9.60 and 10.23, by hand.
  it('is linear between printed months', () => {
    expect(massAt('girl', 16)).toBeCloseTo(9.81, 12);
    expect(massAt('girl', 16.5)).toBeCloseTo(9.915, 12);
  });

  it('is the mean of girl and boy when the body is not said', () => {
    expect(massAt(null, 9)).toBeCloseTo((8.23 + 8.9) / 2, 12);
  });

  it('reaches to the second birthday', () => {
    expect(massAt('boy', (2 * 365.25 * 86400) / month)).toBe(12.15);
  });

  it.each([
    [24.1, '24.1 months'],
    [-1, '-1 months'],
    [Number.NaN, 'NaN months'],
  ])('is not known at %f months', (months, said) => {
    const { missing } = childMass({ body: 'girl', age: months * month, mass: null }) as { missing: string };
    expect(missing).toMatch(said);
    expect(missing).toMatch('0 to 24 months');
  });

  it('is what is stated, whatever the age', () => {
    expect(present(childMass({ body: 'girl', age: 60 * month, mass: 9 }))).toMatchObject({
      mass: 9,
      basis: { from: 'stated' },
    });
  });

  it('is missing when neither mass nor age is stated', () => {
    expect(childMass({ body: 'boy', age: null, mass: null })).toEqual({
      missing: 'neither the child’s mass nor its age is stated',
    });
  });

  it.each([0, -9, Number.NaN, Infinity])('refuses a stated mass of %f', (mass) => {
    expect(() => childMass({ body: null, age: null, mass })).toThrow(RangeError);
  });
});
