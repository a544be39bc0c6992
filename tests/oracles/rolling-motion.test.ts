import { describe, expect, it } from 'vitest';
import { periodAt } from './round-runner.js';
import { blockSpeedRatio } from './textbook-periods.js';
import { armAt, rollToTurn, type Track } from './rolling-motion.js';

const person = { mass: 80, inertia: 9, centre: { x: 0, y: 0.6 } };
const arc: Track = { from: -1, to: 1, centre: { x: 0, y: 1.07 }, radius: 1.07 };
const degree = Math.PI / 180;

describe('motion step by step', () => {
  it('has the period of the energy integral', () => {
    const exact = periodAt({ ...arc, body: person }, 15 * degree);
    const { time, turn } = rollToTurn([arc], person, 15 * degree, -1, 1e-3);
    expect(Math.abs((2 * time) / exact - 1)).toBeLessThan(1e-11);
    expect(turn! + 15 * degree).toBeCloseTo(0, 11);
  });

  // Order 4: half the step, a sixteenth of the error.
  it('converges with order four', () => {
    const exact = periodAt({ ...arc, body: person }, 15 * degree);
    const error = (step: number) =>
      Math.abs(2 * rollToTurn([arc], person, 15 * degree, -1, step).time - exact);
    expect(error(0.04) / error(0.02)).toBeGreaterThan(12);
    expect(error(0.04) / error(0.02)).toBeLessThan(22);
  });

  it('a period cut in pieces at joints that change nothing is the same', () => {
    const pieces = [-1, -0.2, 0, 0.13, 1].flatMap((from, i, all) =>
      i + 1 < all.length ? [{ ...arc, from, to: all[i + 1]! }] : [],
    );
    const whole = rollToTurn([arc], person, 15 * degree, -1, 1e-3);
    const cut = rollToTurn(pieces, person, 15 * degree, -1, 1e-3);
    expect(Math.abs(cut.time / whole.time - 1)).toBeLessThan(1e-11);
    expect(cut.impacts).toEqual([]);
  });

  // Housner 1963: speed after over before = 1 - 1.5 sin² α for a uniform block, whatever its speed.
  it('a block keeps (1 - 1.5 sin² α)² of its energy on landing', () => {
    const [half, high] = [0.1, 0.4];
    const block = { mass: 30, inertia: 10 * (half ** 2 + high ** 2), centre: { x: 0, y: high } };
    const tracks: Track[] = [
      { from: -1, to: 0, centre: { x: half, y: 0 }, radius: 0 },
      { from: 0, to: 1, centre: { x: -half, y: 0 }, radius: 0 },
    ];
    const { impacts } = rollToTurn(tracks, block, 0.1, -1, 1e-3);
    expect(impacts).toHaveLength(1);
    const kept = blockSpeedRatio(Math.atan2(half, high)) ** 2;
    expect(impacts[0]!.after / impacts[0]!.before).toBeCloseTo(kept, 12);
    // Energy before it lands is what the fall gave: m g (H(0.1) - H(0)).
    const fall = armAt(tracks[1]!, block.centre, 0.1).y - high;
    expect(impacts[0]!.before / (30 * 9.80665 * fall)).toBeCloseTo(1, 9);
  });
});
