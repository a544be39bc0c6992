import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maximum, topOf } from '../../src/numeric/maximum.js';
import { isMissing, missing } from '../../src/numeric/missing.js';
import { between } from '../arbitraries/rolling.js';

describe('maximum', () => {
  it('finds the top of one hill, wherever it lies', () => {
    fc.assert(
      fc.property(between(-3, 3), between(0.1, 4), (top, width) => {
        const f = (x: number): number => 2 - (x - top) ** 2 / width ** 2;
        const exact = f(Math.min(Math.max(top, -1), 2));
        expect(Math.abs(maximum(f, -1, 2) - exact)).toBeLessThan(1e-13 * (1 + 1 / width ** 2));
      }),
    );
  });

  it('finds a top nearer to an end than its first looks', () => {
    for (const top of [1e-2, 1e-3, 1e-4, 1e-6, 1e-9])
      for (const f of [(x: number) => -((x - top) ** 2), (x: number) => -((1 - x - top) ** 2)])
        expect(maximum(f, 0, 1)).toBeGreaterThan(-1e-12);
  });

  it('finds the higher of two hills that its looks tell apart', () => {
    const f = (x: number): number => Math.cos(4 * Math.PI * x) + x / 10;
    const top = Math.asin(1 / (40 * Math.PI)) / (4 * Math.PI);
    expect(maximum(f, -0.1, 0.9, 9)).toBeCloseTo(f(0.5 + top), 12);
  });

  it('at an end is the value there', () => {
    expect(maximum((x) => x, 0, 1)).toBe(1);
    expect(maximum((x) => -x, 0, 1)).toBe(-0);
    expect(maximum((x) => x, 1, 0)).toBe(1);
    expect(maximum((x) => x, 0.3, 0.3)).toBe(0.3);
  });

  it('says where it is', () => {
    fc.assert(
      fc.property(between(-3, 3), (top) => {
        const f = (x: number): number => 2 - (x - top) ** 2;
        const { x, value } = topOf(f, -1, 2);
        // The root of the last digit of the value.
        expect(Math.abs(x - Math.min(Math.max(top, -1), 2))).toBeLessThan(1e-7);
        expect(value).toBe(f(x));
        expect(value).toBe(maximum(f, -1, 2));
      }),
    );
  });

  it('of what is no number is none', () => {
    expect(maximum(() => Number.NaN, 0, 1)).toBeNaN();
  });
});

describe('missing', () => {
  it('is told from every number, record and nothing', () => {
    expect(isMissing(missing('why'))).toBe(true);
    for (const value of [0, Number.NaN, '', 'missing', null, undefined, {}, { period: 2 }])
      expect(isMissing(value)).toBe(false);
  });
});
