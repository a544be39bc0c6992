import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rootBetween, signChanges } from '../../src/numeric/root.js';
import { between } from '../arbitraries/rolling.js';

/** f with the number of places that were looked at. */
function counted(f: (x: number) => number): { f: (x: number) => number; looks: () => number } {
  let looks = 0;
  return {
    f: (x) => {
      looks++;
      return f(x);
    },
    looks: () => looks,
  };
}

describe('rootBetween', () => {
  // Closed forms; a root cannot be told from its neighbours nearer than rounding of f over its slope.
  it.each([
    ['cos x = 0', Math.cos, 0, 3, Math.PI / 2],
    ['x³ = 2', (x: number) => x ** 3 - 2, 0, 2, Math.cbrt(2)],
    ['e^x = 5', (x: number) => Math.exp(x) - 5, -4, 20, Math.log(5)],
    ['x - 1e-9 = 0', (x: number) => x - 1e-9, -1, 1, 1e-9],
    ['a jump', (x: number) => (x < 0.3 ? -1 : 2), 0, 1, 0.3],
    ['a root at an end', (x: number) => x - 1, 0, 1, 1],
    ['a steep wall', (x: number) => Math.atan(1e6 * (x - 0.7)), 0, 1, 0.7],
  ])('%s', (_, f, a, b, exact) => {
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const { f: seen, looks } = counted(f);
      expect(Math.abs(rootBetween(seen, from, to) - exact)).toBeLessThan(
        4e-15 * Math.max(1, Math.abs(exact)),
      );
      // Brent 1973: never many more than bisection's steps, some 55 to the last digit.
      expect(looks()).toBeLessThan(120);
    }
  });

  it("takes a dozen looks for a smooth function, not bisection's fifty", () => {
    const { f, looks } = counted((x) => Math.exp(x) - 2);
    rootBetween(f, 0, 1);
    expect(looks()).toBeLessThan(13);
  });

  it('finds the root of any cubic through a sign change', () => {
    fc.assert(
      fc.property(between(-3, 3), between(-1, 1), between(0.1, 2), (bend, root, slope) => {
        // (x - root) (slope + bend² (x - root)²): one root only.
        const f = (x: number): number => (x - root) * (slope + bend ** 2 * (x - root) ** 2);
        expect(Math.abs(rootBetween(f, -1.5, 2) - root)).toBeLessThan(4e-15);
      }),
    );
  });

  it('refuses a bracket that holds none, and numbers that are none', () => {
    expect(() => rootBetween((x) => x * x + 1, -1, 1)).toThrow(RangeError);
    expect(() => rootBetween(() => Number.NaN, -1, 1)).toThrow(RangeError);
  });
});

describe('signChanges', () => {
  it('finds every one that its steps show, in order', () => {
    const roots = signChanges(Math.sin, 1, 20, 32);
    expect(roots).toHaveLength(6);
    roots.forEach((root, i) => {
      expect(root).toBeCloseTo((i + 1) * Math.PI, 13);
    });
  });

  it('of one sign are none', () => {
    expect(signChanges(Math.exp, 0, 1, 8)).toEqual([]);
  });

  it('within noise are none', () => {
    expect(signChanges((x) => 1e-16 * Math.sin(50 * x), 0, 1, 32, 1e-15)).toEqual([]);
    const [root, ...more] = signChanges((x) => (Math.abs(x) < 0.1 ? 1e-17 : x), -1, 1, 33, 1e-15);
    expect(more).toEqual([]);
    expect(Math.abs(root!)).toBeLessThanOrEqual(0.1);
  });
});
