import { describe, expect, it } from 'vitest';
import { gaussLegendre } from '../../src/numeric/gauss-legendre.js';

describe('the rule of Gauss and Legendre', () => {
  it('with three nodes is the printed one: 0, ±sqrt(3/5) with 8/9, 5/9 (Abramowitz and Stegun, table 25.4)', () => {
    const [last, middle, first] = gaussLegendre(3);
    expect(first!.x).toBeCloseTo(-Math.sqrt(3 / 5), 15);
    expect(middle!.x).toBeCloseTo(0, 15);
    expect(last!.weight).toBeCloseTo(5 / 9, 15);
    expect(middle!.weight).toBeCloseTo(8 / 9, 15);
  });

  it.each([2, 6, 24])('with %i nodes is exact for polynomials up to degree 2n - 1, not for 2n', (count) => {
    const integral = (power: number): number =>
      gaussLegendre(count).reduce((sum, { x, weight }) => sum + weight * x ** power, 0);
    for (let power = 0; power < 2 * count; power++) {
      // Twenty-odd roundings of numbers below 1.
      expect(Math.abs(integral(power) - (power % 2 === 0 ? 2 / (power + 1) : 0))).toBeLessThan(1e-14);
    }
    if (count <= 6) expect(Math.abs(integral(2 * count) - 2 / (2 * count + 1))).toBeGreaterThan(1e-5);
  });
});
