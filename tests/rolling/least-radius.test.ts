import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastRadius } from '../../src/rolling/least-radius.js';
import { tipSideways } from '../../src/rolling/sideways.js';
import { between } from '../arbitraries/rolling.js';
import { roll } from './roll.js';
import { roundRunner } from './runners.js';

/** Whether a body with G at (-e, y) stands on an arc that touches at the origin and ends a level distance t behind. */
function stands(radius: number, y: number, e: number, t: number): boolean {
  if (radius <= t) return false;
  const { outline } = roundRunner({ x: 0, y: radius }, radius, -0.02, Math.asin(t / radius));
  return roll(outline, { mass: 1, centre: { x: -e, y }, inertia: 1 }).atRest !== null;
}

describe('least radius that stands', () => {
  const cases = fc.record({ y: between(0.2, 1), e: between(0.001, 0.3), t: between(0.05, 0.9) });

  it('every arc above it stands, none just below it does', () => {
    fc.assert(
      fc.property(cases, between(1e-5, 3), ({ y, e, t }, more) => {
        const least = leastRadius(y, e, t);
        if (e >= t) {
          expect(least).toBe(Infinity);
          expect(stands(1e3, y, e, t)).toBe(false);
          return;
        }
        // A radius of hundreds of metres turns micrometres into rounding.
        fc.pre(least < 100);
        expect(stands(least * (1 + more), y, e, t)).toBe(true);
        expect(stands(least * (1 - 1e-5), y, e, t)).toBe(false);
      }),
    );
  });

  it('is the height of G itself with G plumb over the touch', () => {
    expect(leastRadius(0.7, 0, 0.4)).toBeCloseTo(0.7, 14);
  });

  it('NaN does not stand', () => {
    expect(leastRadius(Number.NaN, 0.1, 0.4)).toBeNaN();
    expect(leastRadius(0.7, Number.NaN, 0.4)).toBe(Infinity);
    expect(leastRadius(0.7, 0.1, Number.NaN)).toBe(Infinity);
  });
});

describe('going over sideways', () => {
  it('at the angle whose tangent is half the spacing over the height, less what G is off the middle', () => {
    expect(tipSideways(0.5, 0.25)).toBeCloseTo(Math.PI / 4, 14);
    expect(Math.tan(tipSideways(0.5, 0.6, 0.05))).toBeCloseTo(0.2 / 0.6, 14);
    expect(tipSideways(0.5, 0.6, -0.05)).toBe(tipSideways(0.5, 0.6, 0.05));
  });

  it('at once with G over a rocker or beyond', () => {
    expect(tipSideways(0.5, 0.6, 0.25)).toBe(0);
    expect(tipSideways(0.5, 0.6, 0.3)).toBeLessThan(0);
  });
});
