import { describe, expect, it } from 'vitest';
import { smoothStep, smoothStepAcceleration, smoothStepRate } from '../../src/rolling/smooth-step.js';

const inside = Array.from({ length: 19 }, (_, i) => (i + 1) / 20);

describe('the smooth step', () => {
  it('goes from 0 to 1, as far after the middle as before it, and stays there', () => {
    expect([-3, 0, 0.5, 1, 4].map(smoothStep)).toEqual([0, 0, 0.5, 1, 1]);
    // u³ (10 - 15 u + 6 u²) at a quarter: (10 - 3.75 + 0.375) / 64.
    expect(smoothStep(0.25)).toBe(6.625 / 64);
    // A polynomial with terms of 15 rounds by some 1e-15.
    for (const u of inside) expect(smoothStep(u) + smoothStep(1 - u)).toBeCloseTo(1, 14);
  });

  it('starts and ends at a standstill, without a jump of its acceleration', () => {
    for (const u of [-1, 0, 1, 2])
      expect([smoothStepRate(u), smoothStepAcceleration(u)].map(Math.abs)).toEqual([0, 0]);
    // The steepest place: 30/16.
    expect(smoothStepRate(0.5)).toBe(1.875);
  });

  // Differences over h: order 2, so h²/6 of third derivatives of at most 60 and 360, and rounding of 1e-16/h.
  it('its rate and acceleration are the derivatives', () => {
    const h = 1e-5;
    for (const u of inside) {
      expect((smoothStep(u + h) - smoothStep(u - h)) / (2 * h)).toBeCloseTo(smoothStepRate(u), 8);
      expect((smoothStepRate(u + h) - smoothStepRate(u - h)) / (2 * h)).toBeCloseTo(
        smoothStepAcceleration(u),
        7,
      );
    }
  });
});
