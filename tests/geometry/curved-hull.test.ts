/** Hull and profile of ellipse arcs and cubics, kept as the curves they are. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexCurves } from '../../src/geometry/convex-curve.js';
import { radiusOn } from '../../src/geometry/hull-element.js';
import { pointOn, type Cubic, type EllipseArc, type Loop } from '../../src/geometry/piece.js';
import { contactAt, perimeter, profileOf, radiusAt, supportAt } from '../../src/geometry/profile.js';

/** Millimetres, points that coincide and control points on one line among them. */
const coordinate = fc.oneof(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: -2, max: 2 }));
const place = fc.record({ x: coordinate, y: coordinate }).map(({ x, y }) => ({ x: x / 1000, y: y / 1000 }));
const cubics: fc.Arbitrary<Cubic> = fc
  .tuple(place, place, place, place)
  .map(([from, control1, control2, to]) => ({ kind: 'cubic', from, control1, control2, to }));

const ellipse = (a: number, b: number, turned = 0, start = 0, sweep = 2 * Math.PI): EllipseArc => ({
  kind: 'ellipse-arc',
  centre: { x: 0.1, y: 0.3 },
  axisA: { x: a * Math.cos(turned), y: a * Math.sin(turned) },
  axisB: { x: -b * Math.sin(turned), y: b * Math.cos(turned) },
  start,
  sweep,
});

const leans = Array.from({ length: 1000 }, (_, i) => -Math.PI + (2 * Math.PI * i) / 1000);

describe('the hull of curves', () => {
  it('is as low as the lowest of many places on them, at 1,000 leans', () => {
    const steps = 2000;
    fc.assert(
      fc.property(fc.array(cubics, { minLength: 1, maxLength: 4 }), (pieces) => {
        // Each with a line home: the hull is that of closed loops.
        const loops = pieces.map((piece): Loop => [piece, { kind: 'line', from: piece.to, to: piece.from }]);
        const profile = profileOf([loops]);
        const places = pieces.flatMap((piece) =>
          Array.from({ length: steps + 1 }, (_, i) => pointOn(piece, i / steps)),
        );
        // A step h of the parameter passes a lowest place by h²|p''|/8 at most, |p''| ≤ 6 × 8 here: 1.5e-6.
        for (const lean of leans.filter((_, i) => i % 20 === 0)) {
          const [sin, cos] = [Math.sin(lean), Math.cos(lean)];
          const brute = places.reduce((low, { x, y }) => Math.max(low, -x * sin - y * cos), -Infinity);
          const support = supportAt(profile, lean);
          expect(support).toBeGreaterThanOrEqual(brute - 1e-12);
          expect(support).toBeLessThan(brute + 1.5e-6);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('touches where it is lowest, and bends there by S + S″ = ρ', () => {
    const profile = profileOf([[[ellipse(0.5, 0.4, 0.3)]]]);
    const h = 1e-4;
    for (const lean of leans) {
      const { x, y } = contactAt(profile, lean);
      expect(-x * Math.sin(lean) - y * Math.cos(lean)).toBeCloseTo(supportAt(profile, lean), 12);
      const bend =
        (supportAt(profile, lean + h) - 2 * supportAt(profile, lean) + supportAt(profile, lean - h)) / h ** 2;
      // Second differences: rounding 4 × 1e-16 / h² = 4e-8, truncation h² S''''/12 = 1e-8.
      expect(Math.abs(bend + supportAt(profile, lean) - radiusAt(profile, lean))).toBeLessThan(2e-7);
    }
  });

  it('of an ellipse has its support sqrt(a² cos² + b² sin²) and its radii b²/a and a²/b (textbook)', () => {
    const [a, b] = [0.5, 0.4];
    const profile = profileOf([[[ellipse(a, b)]]]);
    for (const lean of leans) {
      const about = -0.1 * Math.sin(lean) - 0.3 * Math.cos(lean);
      expect(supportAt(profile, lean)).toBeCloseTo(
        about + Math.hypot(a * Math.sin(lean), b * Math.cos(lean)),
        13,
      );
    }
    expect(radiusAt(profile, 0)).toBeCloseTo(a ** 2 / b, 12);
    expect(radiusAt(profile, Math.PI / 2)).toBeCloseTo(b ** 2 / a, 12);
  });

  it('of an ellipse has the perimeter 4 a E(e), E by the arithmetic-geometric mean (Abramowitz and Stegun 17.6)', () => {
    const [a, b] = [0.5, 0.4];
    let [mean, geometric, c, sum, power] = [a, b, Math.sqrt(a * a - b * b), 0, 0.5];
    for (let i = 0; i < 8; i++) {
      sum += power * c * c;
      [mean, geometric, c, power] = [
        (mean + geometric) / 2,
        Math.sqrt(mean * geometric),
        (mean - geometric) / 2,
        2 * power,
      ];
    }
    const circumference = (2 * Math.PI * (a * a - sum)) / mean;
    expect(perimeter(profileOf([[[ellipse(a, b)]]]))).toBeCloseTo(circumference, 11);
  });

  it('joins a curve and a corner by a flat that touches both', () => {
    const half = ellipse(0.5, 0.2, 0, Math.PI, Math.PI);
    const [right, left, top] = [
      { x: 0.6, y: 0.3 },
      { x: -0.4, y: 0.3 },
      { x: 0.1, y: 1.5 },
    ];
    const profile = profileOf([
      [[half, { kind: 'line', from: right, to: top }, { kind: 'line', from: top, to: left }]],
    ]);
    const kinds = profile.elements.map((element) => element.kind);
    expect(kinds.filter((kind) => kind === 'round').length).toBeGreaterThanOrEqual(1);
    const flats = [...profile.flatAfter].filter((length) => length > 0);
    expect(flats).toHaveLength(2);
    // The tangent from (0, 1.2) to x²/a² + y²/b² = 1 touches at y = b²/1.2 (pole and polar), here above its own ends.
    for (const flat of flats) expect(flat).toBeCloseTo(Math.hypot(0.5, 1.2), 12);
  });
});

describe('a curve cut where its curvature is extreme', () => {
  it('turns one way by at most 90° on each cut', () => {
    fc.assert(
      fc.property(cubics, (cubic) => {
        for (const { from, to } of convexCurves(cubic).curves) {
          expect(to).toBeGreaterThan(from);
          // Near a cusp p' is small and its direction known to a rounding over its size.
          expect(to - from).toBeLessThanOrEqual(Math.PI / 2 + 1e-6);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('of a curve as runners have them has a radius that only grows or only falls', () => {
    // Legs of the control polygon of 0.2 to 0.4 m that turn by up to 40° each: no cusp, no extremes side by side.
    const leg = fc.double({ min: 0.2, max: 0.4, noNaN: true });
    const turn = fc.double({ min: 0.05, max: 0.7, noNaN: true });
    fc.assert(
      fc.property(leg, leg, leg, turn, turn, (first, second, third, one, two) => {
        const control1 = { x: first, y: 0 };
        const control2 = { x: first + second * Math.cos(one), y: second * Math.sin(one) };
        const last = one + two;
        const to = { x: control2.x + third * Math.cos(last), y: control2.y + third * Math.sin(last) };
        const { curves } = convexCurves({ kind: 'cubic', from: { x: 0, y: 0 }, control1, control2, to });
        for (const curve of curves) {
          const carrier = { kind: 'curve' as const, curve, owner: 0 };
          const radii = Array.from({ length: 9 }, (_, i) =>
            radiusOn(carrier, curve.from + ((curve.to - curve.from) * i) / 8),
          );
          const rises = radii.slice(1).map((radius, i) => radius - radii[i]!);
          const noise = 1e-9 * Math.max(...radii);
          expect(rises.every((rise) => rise > -noise) || rises.every((rise) => rise < noise)).toBe(true);
        }
      }),
    );
  });

  it('with a control point on its end has no radius there and carries on', () => {
    const pieces: Loop = [
      {
        kind: 'cubic',
        from: { x: 0, y: 0 },
        control1: { x: 0, y: 0 },
        control2: { x: 1, y: 0 },
        to: { x: 1, y: 1 },
      },
      { kind: 'line', from: { x: 1, y: 1 }, to: { x: 0, y: 0 } },
    ];
    const profile = profileOf([[pieces]]);
    for (const lean of leans) expect(supportAt(profile, lean)).toBeLessThan(2);
  });
});
