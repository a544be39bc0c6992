import { describe, expect, it } from 'vitest';
import {
  loosestTolerances,
  mostUnder,
  tolerancesHeld,
  type Line,
} from '../../src/explore/loosest-tolerances.js';
import { drawnError, type ShopError } from '../../src/explore/shop-errors.js';
import { evenPoints } from '../../src/numeric/owen-scramble.js';
import { dimensionOf } from '../../src/quantity/dimension.js';

const inch = 0.0254;
const length = (name: string): ShopError => ({
  variable: { name, dimension: dimensionOf.length, stated: 1, of: null },
  spread: 'even',
  size: inch / 32,
  assumed: true,
});
const held = tolerancesHeld('in');
const points = evenPoints(512, 2, 1);
const missed = (lines: readonly Line[]) => (errors: readonly ShopError[]) => {
  const trials = points.map((point) =>
    lines.map(({ value, slopes, range }) => {
      const moved = slopes.reduce((sum, slope, i) => sum + slope * drawnError(errors[i]!, point[i]!), value);
      return moved > range.max!;
    }),
  );
  const each = lines.map((_, l) => trials.filter((one) => one[l]).length);
  return { each, any: trials.filter((one) => one.includes(true)).length };
};
const seek = (lines: readonly Line[], errors: readonly ShopError[], chance: number, prove = missed(lines)) =>
  loosestTolerances(lines, errors, points, held, chance, prove);
const steps = (errors: readonly ShopError[]) => errors.map(({ size }) => size / inch);

describe('the loosest tolerances', () => {
  it('of one size and one limit are the largest that keep the chance, in closed form', () => {
    // x even in ±t, missed where x > 1/10 in: the chance is (1 - 0.1/t)/2. t = 1/8 in: 10 %, 1/4 in: 30 %, 1/16 in: 0.
    const line = { id: 'x', range: { min: null, max: inch / 10 }, value: 0, slopes: [1] };
    expect(steps(seek([line], [length('x')], 0.2).errors)).toEqual([1 / 8]);
    expect(steps(seek([line], [length('x')], 0.05).errors)).toEqual([1 / 16]);
    expect(steps(seek([line], [length('x')], 0.4).errors)).toEqual([1 / 4]);
    expect(seek([line], [length('x')], 0.2).any.share).toBeCloseTo(0.1, 2);
  });

  it('hold what matters close and leave alone what does not', () => {
    const line = { id: 'x', range: { min: null, max: inch / 10 }, value: 0, slopes: [1, 0.01] };
    const found = seek([line], [length('x'), length('y')], 0.05);
    expect(steps(found.errors)).toEqual([1 / 16, 1 / 2]);
    expect(found.met).toBe(true);
  });

  it('leave what is no length as it is', () => {
    const weight: ShopError = {
      ...length('weight'),
      variable: { name: 'weight', dimension: dimensionOf.mass, stated: 1, of: null },
    };
    const line = { id: 'x', range: { min: null, max: inch / 10 }, value: 0, slopes: [1, 0] };
    expect(seek([line], [length('x'), weight], 0.05).errors[1]).toBe(weight);
  });

  it('are chosen again, closer, where chairs that are rolled miss more than straight lines', () => {
    const line = { id: 'x', range: { min: null, max: inch / 10 }, value: 0, slopes: [1] };
    // What is proved is twice as steep: ±1/16 in misses 1/10 in at 10 %, ±1/32 in never.
    const found = seek([line], [length('x')], 0.05, missed([{ ...line, slopes: [2] }]));
    expect(steps(found.errors)).toEqual([1 / 32]);
    expect(found.met).toBe(true);
  });

  it('say so when the closest are too loose', () => {
    const line = { id: 'x', range: { min: null, max: inch / 1000 }, value: 0, slopes: [1] };
    const found = seek([line], [length('x')], 0.05);
    expect([steps(found.errors), found.met]).toEqual([[1 / 64], false]);
    expect(found.any.share).toBeGreaterThan(0.4);
    expect(found.missedMost).toMatchObject({ id: 'x', missed: { share: found.any.share } });
  });

  it('are steps that a maker holds, metric for metric files', () => {
    expect(tolerancesHeld('mm')).toEqual(
      [0.25, 0.5, 1, 2, 5, 10].map((mm) => expect.closeTo(mm / 1000, 12) as number),
    );
    expect(tolerancesHeld('ft')).toEqual(held);
  });

  it('take no chance that so few chairs cannot show', () => {
    // Wilson, 0 of n: z²/(n + z²), z² = 3.84.
    expect(mostUnder(0.014, 256)).toBe(-1);
    expect(mostUnder(0.015, 256)).toBe(0);
    expect(mostUnder(0.05, 512)).toBeGreaterThan(10);
  });
});
