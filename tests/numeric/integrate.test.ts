import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate } from '../../src/numeric/integrate.js';
import { between } from '../arbitraries/rolling.js';

describe('integrate', () => {
  // ∫ xⁿ dx = (bⁿ⁺¹ - aⁿ⁺¹)/(n + 1).
  it('is exact for polynomials up to degree 22', () => {
    fc.assert(
      fc.property(
        fc.array(between(-1, 1), { minLength: 1, maxLength: 23 }),
        between(-1.2, 1.2),
        between(-1.2, 1.2),
        (powers, a, b) => {
          const f = (x: number): number => powers.reduceRight((sum, power) => sum * x + power, 0);
          const exact = powers.reduce(
            (sum, power, n) => sum + (power * (b ** (n + 1) - a ** (n + 1))) / (n + 1),
            0,
          );
          const size = powers.reduce((sum, power, n) => sum + Math.abs(power) * 1.2 ** n, 0);
          // Sums of 15 terms of this size: some 10 roundings.
          expect(Math.abs(integrate(f, a, b) - exact)).toBeLessThan(3e-15 * (size + 1));
        },
      ),
    );
  });

  it('takes one look at a polynomial that both rules know, 15 places', () => {
    for (let degree = 0; degree <= 13; degree++) {
      const seen: number[] = [];
      integrate(
        (x) => {
          seen.push(x);
          return x ** degree + 1;
        },
        -1,
        1,
      );
      expect(seen).toHaveLength(15);
      expect(new Set(seen).size).toBe(15);
    }
  });

  // Kronrod 1965: the 8 added nodes make all 15 exact beyond degree 14, up to 22: weights from the nodes alone.
  it('has the nodes of Gauss 7 and Kronrod 15', () => {
    const seen: number[] = [];
    integrate((x) => (seen.push(x), 1), -1, 1);
    const nodes = seen.toSorted((a, b) => a - b);
    const product = (x: number): number => nodes.reduce((all, node) => all * (x - node), 1);
    // The nodal polynomial is orthogonal to all of degree up to 7: that is what makes degree 22.
    for (let degree = 0; degree <= 7; degree++)
      expect(Math.abs(integrate((x) => product(x) * x ** degree, -1, 1))).toBeLessThan(1e-18);
  });

  it.each([
    ['a peak 1e-3 wide', (x: number) => 1 / (1e-6 + x * x), -1, 2, 1e3 * (Math.atan(2e3) + Math.atan(1e3))],
    [
      'a peak 1e-6 wide, off the middle',
      (x: number) => 1 / (1e-12 + (x - 0.3) ** 2),
      0,
      1,
      1e6 * (Math.atan(0.7e6) + Math.atan(0.3e6)),
    ],
    ['waves', (x: number) => Math.cos(50 * x), 0, 1, Math.sin(50) / 50],
    ['e^x', Math.exp, -3, 4, Math.exp(4) - Math.exp(-3)],
    ['a jump', (x: number) => (x < 1 / 3 ? 0 : 1), 0, 1, 2 / 3],
    ['nothing', () => 0, 0, 1, 0],
    ['no range', Math.exp, 2, 2, 0],
  ])('%s', (_, f, a, b, exact) => {
    expect(Math.abs(integrate(f, a, b) - exact)).toBeLessThanOrEqual(1e-12 * (1 + Math.abs(exact)));
  });

  it('changes sign with the ends', () => {
    expect(integrate(Math.exp, 1, 0)).toBe(-integrate(Math.exp, 0, 1));
  });

  it('an odd function over an even range is nothing', () => {
    expect(Math.abs(integrate((x) => Math.sin(x) ** 3, -2, 2))).toBeLessThan(1e-15);
  });

  it.each([
    ['1/x over 0', (x: number) => 1 / x, -1, 1],
    ['1/x from 0', (x: number) => 1 / x, 0, 1],
    ['what is no number', () => Number.NaN, 0, 1],
    ['what is no number at one place', (x: number) => (x > 0.6 ? Math.sqrt(0.6 - x) : 1), 0, 1],
    ['what has no end', Math.exp, 0, Infinity],
    ['1/(x - 1/3)²', (x: number) => (x - 1 / 3) ** -2, 0, 1],
    [
      'what is rough everywhere, in a moment',
      (x: number) => Math.abs((Math.sin(x * 1e5) * 43758.5453) % 1),
      0,
      1,
    ],
  ])('refuses %s', (_, f, a, b) => {
    expect(() => integrate(f, a, b)).toThrow(RangeError);
  });
});
