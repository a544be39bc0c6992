import { describe, expect, it } from 'vitest';
import { normalBelow, normalQuantile } from '../../src/numeric/normal.js';

/** mpmath 1.3, forty digits, printed to twenty. */
const quantiles: readonly (readonly [number, number])[] = [
  [0.5001, 0.00025066283008803509892],
  [0.6, 0.2533471031357997988],
  [0.9, 1.281551565544600467],
  [0.925, 1.4395314709384559153],
  [0.95, 1.6448536269514727149],
  [0.975, 1.9599639845400542355],
  [0.99, 2.3263478740408411009],
  [0.995, 2.575829303548900761],
  [0.9999, 3.7190164854556805644],
  [1e-6, -4.7534243088228989573],
  [1e-11, -6.7060231554951362961],
  [1e-12, -7.0344838253011319326],
  [1e-20, -9.2623400897984075796],
  [1e-100, -21.273453560965324294],
  [1e-300, -37.047096299361199237],
];
const chances: readonly (readonly [number, number])[] = [
  [-10, 7.619853024160526066e-24],
  [-5, 2.8665157187919391167e-7],
  [-3.0001, 0.0013494549132607171712],
  [-3, 0.0013498980316300945267],
  [-2.9999, 0.0013503412829549249056],
  [-1, 0.15865525393145705141],
  [0.5, 0.69146246127401310364],
  [2, 0.9772498680518207928],
  [4, 0.99996832875816688008],
];

describe('the normal distribution', () => {
  it.each(quantiles)('of the chance %d is as tabulated', (chance, z) => {
    // The chance itself is rounded, by 2^-54 at most: z moves by that over the density.
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const rounding = chance > 0.5 ? 2 ** -54 / density : 0;
    expect(Math.abs(normalQuantile(chance) - z)).toBeLessThan(2e-15 * Math.abs(z) + rounding);
  });

  it.each(chances)('below %d is as tabulated', (z, chance) => {
    // The series loses the digits that ½ and the sum share: some 2e-16 of 0.00135.
    expect(Math.abs(normalBelow(z) / chance - 1)).toBeLessThan(5e-13);
  });

  it('turns back: the quantile of the chance, over the whole range', () => {
    for (let z = -37; z <= 5; z += 0.37)
      expect(Math.abs(normalQuantile(normalBelow(z)) - z)).toBeLessThan(
        1e-11 * Math.exp(Math.max(0, z) ** 2 / 2),
      );
  });

  it('is symmetrical, endless at 0 and 1, and nothing outside', () => {
    for (const p of [0.001, 0.2, 0.4375]) expect(normalQuantile(1 - p)).toBeCloseTo(-normalQuantile(p), 12);
    expect([normalQuantile(0.5), normalQuantile(0), normalQuantile(1)]).toEqual([0, -Infinity, Infinity]);
    expect([normalBelow(-Infinity), normalBelow(0), normalBelow(Infinity)]).toEqual([0, 0.5, 1]);
    for (const p of [-0.1, 1.1, NaN]) expect(() => normalQuantile(p)).toThrow(RangeError);
    expect(() => normalBelow(NaN)).toThrow(RangeError);
  });
});
