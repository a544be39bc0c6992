import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { profileOf } from '../../src/geometry/profile.js';
import { tiltAt, turnOfChair, turnOfContacts, type Rockers } from '../../src/rolling/unequal-rockers.js';
import { between } from '../arbitraries/rolling.js';
import { leanBack } from '../oracles/two-rockers.js';
import { roundRunner, runner, type Step } from './runners.js';

const degree = Math.PI / 180;
const inch = 0.0254;

/** Arcs about centres at these heights, 40° either way. */
const round = (centre: number, radius: number) =>
  profileOf([[roundRunner({ x: 0, y: centre }, radius, -40 * degree, 40 * degree).outline]]);
/** Both touch y = 0 plumb under the frame's origin. */
const level = (radius: number) => round(radius, radius);
const steps = (list: readonly Step[], nose: number) => profileOf([[runner(list, nose).outline]]);

const radii = between(0.5, 2);

describe('turn of the line of contacts', () => {
  // Trade figure, derived: half an inch of mismatch on a track of 500 mm, 10° forward to 10° back.
  it('is half a degree for ½ in on 500 mm over ±10°', () => {
    const rockers: Rockers = { left: level(1.07 + inch / 2), right: level(1.07), spacing: 0.5 };
    const turn = turnOfContacts(rockers, -10 * degree, 10 * degree) / degree;
    expect(turn).toBeCloseTo((0.0127 / 0.5) * 20, 12);
    expect(turn).toBeCloseTo(0.5, 1);
  });

  it('is (R₁ - R₂) Δθ / w towards the larger leaning back, undone on the way forward', () => {
    fc.assert(
      fc.property(
        radii,
        radii,
        between(0.3, 0.8),
        between(-0.6, 0.6),
        between(-0.6, 0.6),
        (R1, R2, w, a, b) => {
          const rockers: Rockers = { left: level(R1), right: level(R2), spacing: w };
          const turn = turnOfContacts(rockers, a, b);
          expect(turn).toBeCloseTo(((R1 - R2) * (b - a)) / w, 12);
          expect(turn + turnOfContacts(rockers, b, a)).toBeCloseTo(0, 14);
        },
      ),
    );
    const rockers: Rockers = { left: level(1.1), right: level(1), spacing: 0.5 };
    expect(turnOfContacts(rockers, 0, 0.1)).toBeGreaterThan(0);
  });

  it('counts what each side runs: two radii against one, a flat against none', () => {
    // 0.1 rad of 1.5 m and 0.1 rad of 0.8 m less 0.2 rad of 1 m: 0.03 m on 0.6 m.
    const two = steps(
      [
        { radius: 0.8, turn: 0.3 },
        { radius: 1.5, turn: 0.3 },
      ],
      -0.3,
    );
    expect(turnOfContacts({ left: two, right: level(1), spacing: 0.6 }, -0.1, 0.1)).toBeCloseTo(0.05, 12);
    const flat = steps([{ radius: 1, turn: 0.3 }, { flat: 0.03 }, { radius: 1, turn: 0.3 }], -0.3);
    expect(turnOfContacts({ left: flat, right: level(1), spacing: 0.6 }, -0.1, 0.1)).toBeCloseTo(0.05, 12);
  });
});

describe('tilt', () => {
  it('is how much higher one side stands over the spacing', () => {
    // A left rocker 5 mm deeper, else alike: left side up by 5 mm on 500 mm, at every lean by 5 mm cos θ.
    const rockers: Rockers = { left: round(0.995, 1), right: level(1), spacing: 0.5 };
    expect(tiltAt(rockers, 0)).toBeCloseTo(0.01, 13);
    expect(tiltAt({ ...rockers, left: rockers.right, right: rockers.left }, 0)).toBeCloseTo(-0.01, 13);
    const leant = tiltAt({ left: round(0.995, 1), right: level(1), spacing: 0.5 }, 0.4);
    expect(leant).toBeCloseTo((0.005 * Math.cos(0.4)) / 0.5, 13);
  });
});

describe('turn of the chair', () => {
  it('is that of two discs rolled in space', () => {
    const [w, lean] = [0.5, 10 * degree];
    const pairs = [
      [
        { centre: 1.0127, radius: 1.0127 },
        { centre: 1, radius: 1 },
      ],
      [
        { centre: 1, radius: 1.0127 },
        { centre: 1, radius: 1 },
      ],
      [
        { centre: 0.96, radius: 0.97 },
        { centre: 1, radius: 1.005 },
      ],
    ] as const;
    for (const discs of pairs) {
      const [left, right] = discs.map(({ centre, radius }) => round(centre, radius));
      const rockers: Rockers = { left: left!, right: right!, spacing: w };
      const solid = leanBack(discs, w, lean, 2000);
      // First order in the tilt: what is left out is its square, as a share, and 1e-9 of the steps.
      const omitted = (2 * Math.max(Math.abs(solid.tilt), 0.0127 / w)) ** 2;
      const near = (a: number, b: number): void => {
        expect(Math.abs(a - b)).toBeLessThan(omitted * Math.abs(b) + 1e-9);
      };
      near(turnOfContacts(rockers, 0, lean), solid.lineTurn);
      near(turnOfChair(rockers, 0, lean), solid.bodyTurn);
      near(tiltAt(rockers, lean), solid.tilt);
    }
  });

  it('hardly turns when both sides are level as drawn: (R₁ - R₂)(θ - sin θ)/w', () => {
    const rockers: Rockers = { left: level(1.0827), right: level(1.07), spacing: 0.5 };
    const lean = 10 * degree;
    const turn = turnOfChair(rockers, -lean, lean);
    expect(turn).toBeCloseTo((2 * 0.0127 * (lean - Math.sin(lean))) / 0.5, 13);
    expect(turn / turnOfContacts(rockers, -lean, lean)).toBeLessThan(0.006);
    expect(turn).toBeGreaterThan(1e-5);
  });

  it('is ∫ tilt dθ', () => {
    fc.assert(
      fc.property(radii, radii, between(-0.3, 0.3), between(-0.6, 0.6), (R1, R2, up, lean) => {
        const rockers: Rockers = { left: round(R1 + up, R1), right: level(R2), spacing: 0.5 };
        // Simpson's rule on a sine of 0.6 rad in 100 parts: error below 1e-11.
        const n = 100;
        const weight = (i: number): number => (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2);
        let sum = 0;
        for (let i = 0; i <= n; i++) sum += weight(i) * tiltAt(rockers, (lean * i) / n);
        expect(turnOfChair(rockers, 0, lean)).toBeCloseTo((sum * lean) / (3 * n), 10);
      }),
    );
  });
});
