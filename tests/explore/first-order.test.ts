import { describe, expect, it } from 'vitest';
import type { JudgedLimit } from '../../src/checks/verdict.js';
import { firstOrders, slopeAt } from '../../src/explore/first-order.js';
import { drawnError, type ShopError } from '../../src/explore/shop-errors.js';
import { trialOf, type Judged, type Trial } from '../../src/explore/trial.js';
import { evenPoints } from '../../src/numeric/owen-scramble.js';
import { spreadOf } from '../../src/numeric/spread.js';
import { dimensionOf } from '../../src/quantity/dimension.js';

/** Period of a circular arc of radius R about G at height y, a distance e behind its middle (textbook; physics of one arc). */
function arcPeriod(radius: number, height: number, behind: number): number {
  const [m, inertia, g] = [90, 10, 9.80665];
  const d = Math.hypot(behind, radius - height);
  const h = radius - d;
  return 2 * Math.PI * Math.sqrt((inertia + m * h * h) / (m * g * d));
}

const at = [1.05, 0.6, 0.05] as const;
const error = (name: string, size: number): ShopError => ({
  variable: { name, dimension: dimensionOf.length, stated: 0, of: null },
  spread: 'even',
  size,
  assumed: false,
});
const judged = (value: number): Judged =>
  new Map([['empty/period', { id: 'empty/period', value, verdict: 'pass' } as JudgedLimit]]);
const tryOut = (off: readonly number[]): Trial =>
  trialOf([...judged(arcPeriod(at[0] + off[0]!, at[1] + off[1]!, at[2] + off[2]!)).values()]);
const errorsOf = (size: number): ShopError[] => [
  error('radius', size),
  error('height', size / 2),
  error('behind', 2 * size),
];
const orderOf = (size: number) =>
  firstOrders(tryOut, errorsOf(size), judged(arcPeriod(...at))).get('empty/period')!;

describe('first order', () => {
  it('has the slopes of the closed form', () => {
    const [radius, height] = orderOf(1e-4).effects;
    // With e = 0, d = R - y and h = y: ln T = ½ ln(I + m y²) - ½ ln(R - y) + …; e = 0.05 changes it by some thousandths.
    const period = arcPeriod(...at);
    const d = at[0] - at[1];
    expect(radius!.slope! / (-period / (2 * d))).toBeCloseTo(1, 1);
    const ofHeight = period * ((90 * at[1]) / (10 + 90 * at[1] ** 2) + 1 / (2 * d));
    expect(height!.slope! / ofHeight).toBeCloseTo(1, 1);
    const step = 1e-6;
    const exact =
      (arcPeriod(at[0] + step, at[1], at[2]) - arcPeriod(at[0] - step, at[1], at[2])) / (2 * step);
    expect(radius!.slope).toBeCloseTo(exact, 6);
  });

  it('is the spread of small errors, and what it leaves out falls with their square', () => {
    const points = evenPoints(2 ** 14, 3, 9);
    const short = [0.08, 0.04, 0.02, 0.01].map((size) => {
      const errors = errorsOf(size);
      const values = points.map((point) => {
        const off = errors.map((one, i) => drawnError(one, point[i]!));
        return arcPeriod(at[0] + off[0]!, at[1] + off[1]!, at[2] + off[2]!);
      });
      // The same slopes for all: those of the smallest step.
      const first = Math.hypot(
        ...orderOf(1e-4).effects.map(({ slope }, i) => (slope! * errors[i]!.size) / Math.sqrt(3)),
      );
      return Math.abs(spreadOf(values)!.deviation / first - 1);
    });
    expect(short[0]).toBeGreaterThan(1e-3);
    for (const i of [0, 1]) expect(short[i]! / short[i + 1]!).toBeGreaterThan(3.5);
    for (const i of [0, 1]) expect(short[i]! / short[i + 1]!).toBeLessThan(4.5);
    expect(short[3]!).toBeLessThan(1e-3);
  });

  it('shares the variance among the dimensions', () => {
    const { effects, deviation } = orderOf(0.001);
    expect(effects.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    const byHand = Math.hypot(
      ...effects.map(({ slope }, i) => (slope! * [0.001, 0.0005, 0.002][i]!) / Math.sqrt(3)),
    );
    expect(deviation).toBeCloseTo(byHand, 12);
  });

  it('takes the steeper side of a kink, and the one side that has a value', () => {
    expect(slopeAt(0.1, 0, 0.3, 0.1)).toEqual({ slope: expect.closeTo(3, 12) as number, kinked: true });
    expect(slopeAt(-0.1, 0, 0.11, 0.1)).toEqual({ slope: expect.closeTo(1.05, 12) as number, kinked: false });
    expect(slopeAt(null, 0, 0.2, 0.1)).toEqual({ slope: 2, kinked: false });
    expect(slopeAt(null, 0, null, 0.1)).toEqual({ slope: null, kinked: false });
    expect(slopeAt(0, 0, 0, 0.1)).toEqual({ slope: 0, kinked: false });
  });
});
