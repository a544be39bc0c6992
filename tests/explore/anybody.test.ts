import { describe, expect, it } from 'vitest';
import { drawnSitter, type Whom } from '../../src/explore/anybody.js';
import { evenPoints } from '../../src/numeric/owen-scramble.js';
import { quantileOf } from '../../src/numeric/spread.js';
import { massAtPercentile, statureAtPercentile } from '../../src/sitter/percentiles.js';

const people = (whom: Whom, count: number, seed = 1) =>
  evenPoints(count, 3, seed).map((point) => drawnSitter(whom, point));

function correlationOf(a: readonly number[], b: readonly number[]): number {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [ma, mb] = [mean(a), mean(b)];
  const sum = (f: (i: number) => number) => a.reduce((total, _, i) => total + f(i), 0);
  return (
    sum((i) => (a[i]! - ma) * (b[i]! - mb)) /
    Math.sqrt(sum((i) => (a[i]! - ma) ** 2) * sum((i) => (b[i]! - mb) ** 2))
  );
}

describe('people drawn from the tables', () => {
  it.each([
    ['women', 0.53, 1986],
    ['men', 0.47, 4082],
  ] as const)(
    '%s: stature and mass go together as in the public data of ANSUR II 2012',
    (whom, rho, measured) => {
      const drawn = people(whom, 4096);
      const found = correlationOf(
        drawn.map(({ stature }) => stature!),
        drawn.map(({ mass }) => mass!),
      );
      // The data are of so many people: its own standard error is (1 - ρ²)/√n. Ends taken in take some 0.005 off.
      expect(Math.abs(found - rho)).toBeLessThan((1 - rho * rho) / Math.sqrt(measured));
    },
  );

  it.each([
    ['women', 'female'],
    ['men', 'male'],
  ] as const)('%s: as many lie below each printed size as the tables say', (whom, body) => {
    const drawn = people(whom, 4096);
    for (const [sizes, table] of [
      [drawn.map(({ stature }) => stature!), statureAtPercentile],
      [drawn.map(({ mass }) => mass!), massAtPercentile],
    ] as const) {
      const sorted = sizes.toSorted((a, b) => a - b);
      for (const percentile of [5, 25, 50, 75, 95])
        expect(quantileOf(sorted, percentile / 100) / (table(body, percentile) as number)).toBeCloseTo(1, 2);
      // Nobody lies outside the tables.
      expect(sorted[0]).toBe(table(body, 1));
      expect(sorted.at(-1)).toBe(table(body, 99));
    }
  });

  it('are as many women as men when both are asked for', () => {
    expect(people('both', 256).filter(({ body }) => body === 'female')).toHaveLength(128);
    expect(new Set(people('men', 16).map(({ body }) => body))).toEqual(new Set(['male']));
  });

  it('tall is not heavy: the medians of one stand with the median of the other', () => {
    expect(drawnSitter('women', [0.2, 0.5, 0.5])).toMatchObject({
      body: 'female',
      stature: statureAtPercentile('female', 50),
      mass: massAtPercentile('female', 50),
    });
  });
});
