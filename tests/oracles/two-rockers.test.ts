import { describe, expect, it } from 'vitest';
import { leanBack } from './two-rockers.js';

describe('two discs rolled in space', () => {
  // A cone on a plane: its axis tilted by τ, tan τ = (R₁ - R₂)/w, goes round once for every 1/sin τ turns about itself,
  // and a turn s about the line it lies on is a turn s / cos τ about its axis.
  it('of one axis roll like a cone', () => {
    const discs = [
      { centre: 1, radius: 1.03 },
      { centre: 1, radius: 1 },
    ] as const;
    const tau = Math.atan(0.03 / 0.5);
    const { lineTurn, bodyTurn, tilt, gap } = leanBack(discs, 0.5, 0.3, 2000);
    // Second order in steps of 1.5e-4.
    expect(bodyTurn).toBeCloseTo(0.3 * Math.tan(tau), 9);
    expect(lineTurn).toBeCloseTo(bodyTurn, 9);
    expect(tilt).toBeCloseTo(tau, 9);
    expect(Math.abs(gap)).toBeLessThan(1e-9);
  });

  it('alike only lean', () => {
    const disc = { centre: 0.9, radius: 1 };
    const { lineTurn, bodyTurn, tilt } = leanBack([disc, disc], 0.5, 0.3, 100);
    expect([lineTurn, bodyTurn, tilt].every((each) => Math.abs(each) < 1e-14)).toBe(true);
  });

  it('mirrored, turn the other way', () => {
    const [a, b] = [
      { centre: 1, radius: 1.02 },
      { centre: 0.99, radius: 1 },
    ];
    const [one, two] = [leanBack([a, b], 0.5, 0.2, 500), leanBack([b, a], 0.5, 0.2, 500)];
    expect(one.lineTurn).toBeCloseTo(-two.lineTurn, 13);
    expect(one.bodyTurn).toBeCloseTo(-two.bodyTurn, 13);
    expect(one.lineTurn).toBeGreaterThan(1e-3);
  });
});
