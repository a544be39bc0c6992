import { describe, expect, it } from 'vitest';
import { follow, oneStep, type OdePoint, type Rate } from '../../src/numeric/ode.js';

const at = (time: number, ...state: number[]): OdePoint => ({ time, state });
const spring: Rate = (_, [x, v]) => [v!, -x!];

describe('one step', () => {
  it.each([0, 1, 2, 3, 4, 5, 6, 7])('is exact for ∫ t^%d dt, as a rule of order 8 is', (power) => {
    const { to } = oneStep((t) => [t ** power], at(0.3, 0), 0.8);
    expect(to.state[0]).toBeCloseTo((1.1 ** (power + 1) - 0.3 ** (power + 1)) / (power + 1), 14);
  });

  it('is not for t⁹', () => {
    expect(Math.abs(oneStep((t) => [t ** 9], at(0, 0), 1).to.state[0]! - 0.1)).toBeGreaterThan(1e-6);
  });

  // A pendulum let go level from upright's other side has no closed form of sines: one far finer run is what to meet.
  const pendulum: Rate = (t, [x, v]) => [v!, -Math.sin(x!) + 0.3 * Math.cos(2 * t)];
  const after = (steps: number, rate: Rate, start: OdePoint): OdePoint => {
    let point = start;
    for (let i = 0; i < steps; i++) point = oneStep(rate, point, 2 / steps).to;
    return point;
  };
  const off = (steps: number): number => {
    const [found, wanted] = [steps, 512].map((count) => after(count, pendulum, at(0, 1, 0)).state);
    return Math.hypot(found![0]! - wanted![0]!, found![1]! - wanted![1]!);
  };
  const estimate = (h: number): number => Math.abs(oneStep(pendulum, at(0.3, 0.9, 0.4), h).errors[0]!);

  // Half the step: 2⁻⁸ of the error after the same time, and of the difference from order 7 in one step.
  it('is of order 8, its estimate of order 7', () => {
    expect(Math.log2(off(4) / off(8))).toBeGreaterThan(7.3);
    expect(Math.log2(off(4) / off(8))).toBeLessThan(9.5);
    expect(Math.log2(estimate(0.4) / estimate(0.2))).toBeCloseTo(8, 0);
  });

  it('is what the sine says', () => {
    const { state } = after(8, spring, at(0, 1, 0));
    expect(state[0]).toBeCloseTo(Math.cos(2), 10);
    expect(state[1]).toBeCloseTo(-Math.sin(2), 10);
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

  // x = t - 2 t², up from zero and through it again at t = 1/2, all within a step of 1 s.
  it('ends where what begins at zero rises and falls back within a step, not where it begins', () => {
    const { point, end } = follow((t) => [1 - 4 * t], at(0, 0), [({ state }) => state[0]!], {
      scale: [1],
      firstStep: 1,
    });
    expect(end).toBe(0);
    expect(point.time).toBeCloseTo(0.5, 13);
  });

  it('ends at once on what is passed already', () => {
    const { point, end } = follow(() => [1], at(3, 1), [({ state }) => 1 - 1e-16 - state[0]!], {
      scale: [1],
      firstStep: 0.1,
    });
    expect([point.time, end]).toEqual([3, 0]);
  });

  it('ends when its time is up, on the second', () => {
    const { point, end } = follow(spring, at(0, 1, 0), [({ state }) => state[0]!], {
      ...settings,
      until: 0.7,
      longestStep: 0.01,
    });
    expect([point.time, end]).toEqual([0.7, null]);
    expect(point.state[0]).toBeCloseTo(Math.cos(0.7), 13);
    expect(follow(spring, point, [], { ...settings, until: 0.7 })).toEqual({ point, end: null });
  });

  it('takes no step longer than it may, and is as close as it is asked', () => {
    const times: number[] = [0];
    const loose = { ...settings, until: 20, longestStep: 0.25, closeness: 1e-4 };
    const { point } = follow(spring, at(0, 1, 0), [], { ...loose, each: ({ time }) => times.push(time) });
    expect(Math.max(...times.slice(1).map((time, i) => time - times[i]!))).toBeLessThan(0.25 + 1e-12);
    const far = follow(spring, at(0, 1, 0), [], { ...settings, until: 20, closeness: 1e-4 });
    expect(Math.abs(point.state[0]! - Math.cos(20))).toBeLessThan(1e-3);
    expect(Math.abs(far.point.state[0]! - Math.cos(20))).toBeGreaterThan(1e-9);
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
