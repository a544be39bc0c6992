/** The gap's tolerance where outlines are curved: never off by more than a twentieth of a millimetre. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapBetween, silhouetteOf, type Silhouette } from '../../src/geometry/gap.js';
import { pointOn, polygon, type Cubic, type Loop } from '../../src/geometry/piece.js';
import { distance, touching, type Point } from '../../src/geometry/point.js';

const shape = (boundary: Loop): Silhouette => silhouetteOf([{ boundary, holes: [] }]);
const round = (centre: Point, a: number, b: number): Silhouette =>
  shape([
    {
      kind: 'ellipse-arc',
      centre,
      axisA: { x: a, y: 0 },
      axisB: { x: 0, y: b },
      start: 0,
      sweep: 2 * Math.PI,
    },
  ]);
const disc = (centre: Point, radius: number): Silhouette =>
  shape([{ kind: 'arc', centre, radius, start: 0.3, sweep: 2 * Math.PI }]);
const rounding = 1e-12;
/** Between `touching` and 0 it is 0; chords lie inside what bulges. */
const agrees = (found: number, wanted: number): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(touching + rounding);
};

describe('the gap between', () => {
  const place = fc.record({
    x: fc.double({ min: -2, max: 2, noNaN: true }),
    y: fc.double({ min: -2, max: 2, noNaN: true }),
  });
  const radius = fc.double({ min: 0.005, max: 1, noNaN: true });

  it('two discs is the way between their centres less both radii', () => {
    fc.assert(
      fc.property(place, radius, radius, (centre, one, other) => {
        const wanted = Math.hypot(centre.x, centre.y) - one - other;
        agrees(gapBetween(disc({ x: 0, y: 0 }, one), disc(centre, other), 5), Math.max(0, wanted));
      }),
    );
  });

  it('two discs that touch is none, at any angle', () => {
    for (let angle = 0; angle < 6.3; angle += 0.17) {
      const centre = { x: 1.5 * Math.cos(angle), y: 1.5 * Math.sin(angle) };
      expect(gapBetween(disc({ x: 0, y: 0 }, 1), disc(centre, 0.5), 5)).toBe(0);
    }
  });

  it('a disc and a plank below it is its height less its radius, however it lies', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (gap, angle) => {
          const at = (x: number, y: number): Point => ({
            x: x * Math.cos(angle) - y * Math.sin(angle),
            y: x * Math.sin(angle) + y * Math.cos(angle),
          });
          const plank = shape(polygon([at(-1, -0.1), at(1, -0.1), at(1, 0), at(-1, 0)]));
          agrees(gapBetween(disc(at(0.2, 0.4 + gap), 0.4), plank, 5), gap);
        },
      ),
    );
  });

  it('an ellipse and a plank over its flat side, and beside its sharp one', () => {
    const ellipse = round({ x: 0, y: 0 }, 0.9, 0.3);
    const box = (left: number, foot: number, right: number, top: number) =>
      shape(
        polygon([
          { x: left, y: foot },
          { x: right, y: foot },
          { x: right, y: top },
          { x: left, y: top },
        ]),
      );
    agrees(gapBetween(ellipse, box(-1, 0.31, 1, 0.4), 1), 0.01);
    agrees(gapBetween(ellipse, box(0.905, -1, 1, 1), 1), 0.005);
    // (0.54, 0.24) lies on it, its normal (2, 9)/sqrt(85): a corner 4 mm off along that.
    const corner = { x: 0.54 + (0.004 * 2) / Math.sqrt(85), y: 0.24 + (0.004 * 9) / Math.sqrt(85) };
    agrees(gapBetween(ellipse, box(corner.x, corner.y, 2, 2), 1), 0.004);
  });

  it('a large cubic and a point of a box: against a fine walk along the curve', () => {
    const cubic: Cubic = {
      kind: 'cubic',
      from: { x: -1, y: 0 },
      control1: { x: -0.2, y: 1.4 },
      control2: { x: 0.9, y: 0.9 },
      to: { x: 1, y: 0 },
    };
    const hill = shape([cubic, { kind: 'line', from: cubic.to, to: cubic.from }]);
    for (const corner of [
      { x: 0.2, y: 0.95 },
      { x: -0.6, y: 0.8 },
      { x: 0.9, y: 0.75 },
    ]) {
      const spike = shape(polygon([corner, { x: corner.x + 0.3, y: 3 }, { x: corner.x - 0.3, y: 3 }]));
      const walked = Math.min(
        ...Array.from({ length: 20001 }, (_, i) => distance(pointOn(cubic, i / 20000), corner)),
      );
      agrees(gapBetween(hill, spike, 1), walked);
      expect(walked).toBeGreaterThan(0.01);
    }
  });

  it('a runner of any radius, however large, is worked out', () => {
    for (const R of [1e-9, 1, 1e3, 1e12, 1e300]) {
      const boundary: Loop = [
        { kind: 'arc', centre: { x: 0, y: 0 }, radius: R, start: 0, sweep: 1e-3 / Math.max(R, 1e-3) },
      ];
      expect(silhouetteOf([{ boundary, holes: [] }]).rings[0]!.length).toBeLessThan(100);
    }
  });

  it('is the same both ways round', () => {
    fc.assert(
      fc.property(place, radius, radius, (centre, a, b) => {
        const [one, other] = [round({ x: 0, y: 0 }, a, b), disc(centre, a)];
        expect(gapBetween(one, other, 1)).toBe(gapBetween(other, one, 1));
      }),
      { numRuns: 40 },
    );
  });
});
