import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isMissing } from '../../src/numeric/missing.js';
import { massAtPercentile, printedStatures, statureAtPercentile } from '../../src/sitter/percentiles.js';
import { present } from './people-seated.js';
import { ansur2012 } from './published/ansur2012.js';

const rows = (['female', 'male'] as const).flatMap((body) =>
  Object.entries(ansur2012[body].stature.percentiles).map(([p, stature]) => ({
    body,
    percentile: Number(p),
    stature,
    mass: ansur2012[body].mass.percentiles[Number(p) as 1],
  })),
);

describe('stature and mass by percentile', () => {
  it.each(rows)('are those printed: $body, $percentile', ({ body, percentile, stature, mass }) => {
    expect(present(statureAtPercentile(body, percentile))).toBeCloseTo(stature / 1000, 12);
    expect(present(massAtPercentile(body, percentile))).toBe(mass);
  });

  // Half way from 25 to 50: (75.6 + 84.6) / 2, (1.5862 + 1.626) / 2, by hand.
  it('are linear between', () => {
    expect(present(massAtPercentile('male', 37.5))).toBeCloseTo(80.1, 12);
    expect(present(statureAtPercentile('female', 37.5))).toBeCloseTo(1.6061, 12);
  });

  it('grow with the percentile', () => {
    const percentile = fc.double({ min: 1, max: 99, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom('female', 'male'), percentile, percentile, (body, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        for (const at of [statureAtPercentile, massAtPercentile])
          expect(present(at(body, high))).toBeGreaterThanOrEqual(present(at(body, low)));
      }),
    );
  });

  it.each([0, 0.999, 99.001, 100, -5, Number.NaN, Infinity])('have no percentile %f', (percentile) => {
    expect(isMissing(statureAtPercentile('female', percentile))).toBe(true);
    expect(massAtPercentile('male', percentile)).toEqual({
      missing: `percentile ${percentile} is outside the table, which goes from 1 to 99`,
    });
  });

  // Another survey: University of Rhode Island, BME 207 sheet after Huston 2009, read. 1 %: other people (the worst,
  // women at 95, differ by 0.9 %).
  it.each([
    ['male', 5, 1.649],
    ['male', 50, 1.759],
    ['male', 95, 1.869],
    ['female', 5, 1.518],
    ['female', 50, 1.618],
    ['female', 95, 1.724],
  ] as const)('are like those of a second survey: %s, %i', (body, percentile, stature) => {
    expect(Math.abs(present(statureAtPercentile(body, percentile)) / stature - 1)).toBeLessThan(0.01);
  });

  it('go from the 1st to the 99th', () => {
    expect(printedStatures('female')).toEqual({ least: 1.4825, greatest: 1.7776 });
    expect(printedStatures('male')).toEqual({ least: 1.6016, greatest: 1.927 });
  });
});
