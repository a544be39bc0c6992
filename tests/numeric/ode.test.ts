import { describe, expect, it } from 'vitest';
import { follow, oneStep, type OdePoint, type Rate } from '../../src/numeric/ode.js';

const at = (time: number, ...state: number[]): OdePoint => ({ time, state });
const spring: Rate = (_, [x, v]) => [v!, -x!];

describe('one step', () => {
  it.each([0, 1, 2, 3, 4])('is exact for ∫ t^%d dt, as a rule of order 5 is', (power) => {
    const { to } = oneStep((t) => [t ** power], at(0.3, 0), 0.8);
    expect(to.state[0]).toBeCloseTo((1.1 ** (power + 1) - 0.3 ** (power + 1)) / (power + 1), 14);
  });

  it('is not for t⁵, nor is its estimate of order 5 for t⁴', () => {
    expect(Math.abs(oneStep((t) => [t ** 5], at(0, 0), 1).to.state[0]! - 1 / 6)).toBeGreaterThan(1e-4);
    expect(Math.abs(oneStep((t) => [t ** 3], at(0, 0), 1).errors[0]!)).toBeLessThan(1e-15);
    expect(Math.abs(oneStep((t) => [t ** 4], at(0, 0), 1).errors[0]!)).toBeGreaterThan(1e-4);
  });

  const off = (steps: number): number => {
    let point = at(0, 1, 0);
    for (let i = 0; i < steps; i++) point = oneStep(spring, point, 1 / steps).to;
    return Math.hypot(point.state[0]! - Math.cos(1), point.state[1]! + Math.sin(1));
  };
  const firstError = (h: number): number => Math.abs(oneStep(spring, at(0, 1, 0), h).errors[1]!);

  // Half the step: 1/32 of the error after the same time, and of the difference from order 4 in one step.
  it('is of order 5, its estimate of order 4', () => {
    expect(Math.log2(off(16) / off(32))).toBeCloseTo(5, 0);
    expect(Math.log2(firstError(0.1) / firstError(0.05))).toBeCloseTo(5, 0);
  });
});

describe('follow', () => {
  const settings = { scale: [1, 1], firstStep: 1e-3 };

  it('keeps a spring for a hundred swings', () => {
    const { point } = follow(spring, at(0, 1, 0), [({ time }) => 200 * Math.PI - time], settings);
    // A few hundred steps a swing with 1e-12 each, much of which cancels.
    expect(point.state[0]).toBeCloseTo(1, 9);
    expect(point.state[1]).toBeCloseTo(0, 8);
  });

  it('ends where something falls through zero', () => {
    const fall: Rate = (_, [, v]) => [v!, -9.8];
    const { point, end } = follow(
      fall,
      at(0, 2, 0),
      [({ time }) => 9 - time, ({ state }) => state[0]!],
      settings,
    );
    expect(end).toBe(1);
    expect(point.time).toBeCloseTo(Math.sqrt(4 / 9.8), 13);
    expect(point.state[0]).toBeCloseTo(0, 13);
    expect(point.state[1]).toBeCloseTo(-Math.sqrt(4 * 9.8), 12);
  });

  it('ends at the first of two within a step', () => {
    const drift: Rate = () => [1];
    const ends = [1.0002, 1.0001].map(
      (limit) =>
        ({ state }: OdePoint) =>
          limit - state[0]!,
    );
    const { point, end } = follow(drift, at(0, 0), ends, { scale: [1], firstStep: 0.5 });
    expect(end).toBe(1);
    expect(point.time).toBeCloseTo(1.0001, 14);
  });

  it('ends at once on what is passed already', () => {
    const { point, end } = follow(() => [1], at(3, 1), [({ state }) => 1 - 1e-16 - state[0]!], {
      scale: [1],
      firstStep: 0.1,
    });
    expect([point.time, end]).toEqual([3, 0]);
  });

  it('shows every point that stands, in order, the last too', () => {
    const seen: OdePoint[] = [];
    const { point } = follow(spring, at(0, 1, 0), [({ state }) => state[0]!], {
      ...settings,
      each: (each) => seen.push(each),
    });
    expect(seen.at(-1)).toBe(point);
    expect(point.time).toBeCloseTo(Math.PI / 2, 11);
    for (let i = 1; i < seen.length; i++) expect(seen[i]!.time).toBeGreaterThan(seen[i - 1]!.time);
    for (const { time, state } of seen) expect(state[0]).toBeCloseTo(Math.cos(time), 10);
  });

  it('refuses what is no number, and what no step serves', () => {
    const never = [({ time }: OdePoint) => 2 - time];
    expect(() => follow(() => [NaN], at(0, 0), never, { scale: [1], firstStep: 0.1 })).toThrow(RangeError);
    // x' = x² from 1 has no value beyond t = 1.
    const blowUp: Rate = (_, [x]) => [x! * x!];
    expect(() => follow(blowUp, at(0, 1), never, { scale: [1], firstStep: 0.1 })).toThrow(RangeError);
  });
});
