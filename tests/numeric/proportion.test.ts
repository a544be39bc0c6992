import { describe, expect, it } from 'vitest';
import { evenPoints } from '../../src/numeric/owen-scramble.js';
import { proportionOf } from '../../src/numeric/proportion.js';
import { quantileOf, spreadOf } from '../../src/numeric/spread.js';

describe('a proportion', () => {
  /** scipy 1.17.1, scipy.stats.binomtest(count, of).proportion_ci(method='wilson'). */
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i lies as another program has it', (count, of, low, high) => {
    const found = proportionOf(count, of);
    expect(found.share).toBe(count / of);
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
  });

  it('is certain of its ends only', () => {
    expect(proportionOf(0, 50).low).toBe(0);
    expect(proportionOf(50, 50).high).toBe(1);
    expect(() => proportionOf(3, 2)).toThrow(RangeError);
    expect(() => proportionOf(0, 0)).toThrow(RangeError);
  });

  it('of even points holds the truth at least as often as it says', () => {
    // The share of the unit cube where x + y + z < 1: 1/6.
    const holds = Array.from({ length: 200 }, (_, seed) => {
      const inside = evenPoints(128, 3, seed).filter((point) => point[0]! + point[1]! + point[2]! < 1);
      const { low, high } = proportionOf(inside.length, 128);
      return low <= 1 / 6 && 1 / 6 <= high;
    });
    expect(holds.filter(Boolean).length / 200).toBeGreaterThanOrEqual(0.95);
  });
});

describe('a spread', () => {
  it('is that of five numbers by hand', () => {
    const spread = spreadOf([5, 1, 4, 2, 3])!;
    expect(spread.mean).toBe(3);
    // (4 + 1 + 0 + 1 + 4) / 4 = 2.5
    expect(spread.deviation).toBeCloseTo(Math.sqrt(2.5), 14);
    expect([spread.low, spread.high]).toEqual([expect.closeTo(1.2, 12), expect.closeTo(4.8, 12)]);
    expect(quantileOf([1, 2], 0.25)).toBe(1.25);
  });

  it('of one number is none, of no numbers nothing', () => {
    expect(spreadOf([7])).toEqual({ mean: 7, deviation: 0, low: 7, high: 7 });
    expect(spreadOf([])).toBeNull();
    expect(() => quantileOf([], 0.5)).toThrow(RangeError);
  });
});
