import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexHull } from '../../src/geometry/convex-hull.js';
import { radiusOn, type HullElement } from '../../src/geometry/hull-element.js';
import { polygon, type Arc, type Loop } from '../../src/geometry/piece.js';
import type { Point } from '../../src/geometry/point.js';
import { contactAt, perimeter, profileOf, supportAt, type Profile } from '../../src/geometry/profile.js';
import { arcLoops, between } from '../arbitraries/rolling.js';
import { soundLoops, starShaped } from '../arbitraries/outlines.js';
import { bruteSupport, sizeOf } from '../oracles/brute-support.js';
import { monotoneChain, perimeterOf } from '../oracles/monotone-chain.js';
import { movedLoop } from '../oracles/moved-loop.js';
import { roundRunner, runner } from '../rolling/runners.js';
import { hullOutline } from './hull-outline.js';

type Bodies = readonly (readonly Loop[])[];

const turn = 2 * Math.PI;

/** Largest |S - S by brute force| over the size, at places that have nothing to do with the outline, and at its joints. */
function worst(bodies: Bodies, profile: Profile, count: number): number {
  const size = sizeOf(bodies);
  const byForce = bruteSupport(bodies);
  const spread = Array.from({ length: count }, (_, i) => -4 + (turn * (i + 0.377)) / count);
  const joints = profile.elements.flatMap(({ from, to }) => [from, to, (from + to) / 2]);
  return Math.max(
    ...[...spread, ...joints].map((lean) => Math.abs(supportAt(profile, lean) - byForce(lean)) / size),
  );
}

const radiusOf = (element: HullElement): number => radiusOn(element, element.from);

/** What every hull must be: one turn without gap, in order; neighbours not the same carrier. */
function expectWhole(elements: readonly HullElement[]): void {
  elements.forEach((element, i) => {
    const { from, to } = element;
    expect(to).toBeGreaterThan(from);
    expect(radiusOf(element)).toBeGreaterThanOrEqual(0);
    if (i + 1 < elements.length) expect(elements[i + 1]!.from).toBe(to);
  });
  expect(elements.at(-1)!.to - elements[0]!.from).toBeCloseTo(turn, 14);
}

/** Some twenty roundings of sums of coordinates: the brute force makes as many. */
const rounding = 1e-14;

const bodiesAtRandom = fc.array(fc.array(fc.oneof(arcLoops, soundLoops), { minLength: 1, maxLength: 3 }), {
  minLength: 1,
  maxLength: 3,
});

describe('convex hull of lines and arcs', () => {
  it('carries the largest p·d of all pieces, by brute force at 1,000 leans', () => {
    fc.assert(
      fc.property(bodiesAtRandom, (bodies) => {
        const profile = profileOf(bodies);
        expectWhole(profile.elements);
        expect(worst(bodies, profile, 1000)).toBeLessThan(rounding);
      }),
      { numRuns: 200 },
    );
  });

  it('does so for sizes from a pin to a hill, far from the origin', () => {
    const far = fc.record({
      scale: between(-3, 4).map((power) => 10 ** power),
      turn: between(-4, 4),
      shift: fc.record({ x: between(-1e4, 1e4), y: between(-1e4, 1e4) }),
    });
    fc.assert(
      fc.property(fc.oneof(arcLoops, starShaped), far, (loop, move) => {
        const bodies = [[movedLoop(loop, move)]];
        expect(worst(bodies, profileOf(bodies), 200)).toBeLessThan(rounding);
      }),
    );
  });

  it('does not depend on the order of the pieces, the bodies, or the sense of the loop', () => {
    fc.assert(
      fc.property(arcLoops, arcLoops, (a, b) => {
        const there = profileOf([[a], [b]]);
        const back = profileOf([[b.toReversed()], [a.toReversed()]]);
        // Metres: flats of a nanometre and arcs that tie with a corner over 1e-7 rad may fall either way.
        expect(Math.abs(perimeter(back) - perimeter(there))).toBeLessThan(1e-6);
        expect(worst([[a], [b]], back, 20)).toBeLessThan(rounding);
      }),
    );
  });

  it('is its own hull', () => {
    fc.assert(
      fc.property(fc.oneof(arcLoops, soundLoops), (loop) => {
        const hull = profileOf([[loop]]);
        const again = profileOf([[hullOutline(hull)]]);
        // A nanometre: a flat shorter than that is none and leaves its two ends apart.
        expect(worst([[hullOutline(hull)]], hull, 100)).toBeLessThan(1e-9);
        expect(Math.abs(perimeter(again) - perimeter(hull))).toBeLessThan(1e-8);
      }),
    );
  });
});

describe('hull of polygons', () => {
  // On a grid, so that points on an edge and points met twice are common.
  const steps = fc.oneof(fc.integer({ min: -4, max: 4 }), fc.integer({ min: -1000, max: 1000 }));
  const points = fc.array(
    fc.record({ x: steps, y: steps }).map(({ x, y }) => ({ x: x / 1000, y: y / 1000 })),
    { minLength: 3, maxLength: 40 },
  );
  /** Corners as a set, clockwise as lean grows. */
  const cornersOf = (profile: Profile): Point[] =>
    profile.elements.map((element) => contactAt(profile, element.from));

  it('has the corners and the perimeter of a monotone chain', () => {
    fc.assert(
      fc.property(points, (corners) => {
        const hull = profileOf([[polygon(corners)]]);
        const chain = monotoneChain(corners);
        expect(Math.abs(perimeter(hull) - perimeterOf(chain))).toBeLessThan(1e-12);
        for (const corner of cornersOf(hull)) expect(corners).toContainEqual(corner);
        // A corner that stands out by less than rounding may be on either list, not on both.
        if (chain.every((_, i) => outBy(chain, i) > 1e-12))
          expect(new Set(cornersOf(hull))).toEqual(new Set(chain));
      }),
    );
  });

  const outBy = (chain: readonly Point[], i: number): number => {
    const [a, b, c] = [-1, 0, 1].map((k) => chain[(i + k + chain.length) % chain.length]!) as [
      Point,
      Point,
      Point,
    ];
    const [x, y] = [c.x - a.x, c.y - a.y];
    return Math.abs(x * (b.y - a.y) - y * (b.x - a.x)) / Math.hypot(x, y);
  };

  it('leaves out points on an edge, however close together and however the edge lies', () => {
    fc.assert(
      fc.property(
        between(-4, 4),
        fc.array(between(0, 1), { minLength: 1, maxLength: 20 }),
        between(1e-3, 10),
        (slope, shares, far) => {
          const at = (along: number, off: number): Point => ({
            x: far + along * Math.cos(slope) - off * Math.sin(slope),
            y: far + along * Math.sin(slope) + off * Math.cos(slope),
          });
          const edge = [...shares].sort((p, q) => p - q).map((share) => at(share, 0));
          const { elements, flatAfter } = profileOf([
            [polygon([at(0, 0), ...edge, at(1, 0), at(1, 0.5), at(0, 0.5)])],
          ]);
          expect(elements).toHaveLength(4);
          expect(Math.max(...flatAfter)).toBeCloseTo(1, 12);
        },
      ),
    );
  });
});

describe('special hulls', () => {
  const circle = (radius: number, centre: Point = { x: 0, y: 0 }, start = 0): Arc => ({
    kind: 'arc',
    centre,
    radius,
    start,
    sweep: turn,
  });

  it.each([0, 1, Math.PI / 2, Math.PI, -3])('a full circle is one arc, begun at %f', (start) => {
    const [only, ...rest] = convexHull([[[circle(2, { x: 1, y: 1 }, start)]]]);
    expect(rest).toEqual([]);
    expect(only!.to - only!.from).toBeCloseTo(turn, 14);
  });

  it.each([0.3, -2.5, Math.PI])('a circle of two halves that begin at %f is one arc', (start) => {
    const half = { ...circle(2), sweep: Math.PI };
    const elements = convexHull([
      [
        [
          { ...half, start },
          { ...half, start: start + Math.PI },
        ],
      ],
    ]);
    expect(elements).toHaveLength(1);
  });

  it('a body drawn twice belongs to the first', () => {
    fc.assert(
      fc.property(arcLoops, (loop) => {
        const [once, twice] = [convexHull([[loop]]), convexHull([[loop], [loop]])];
        expect(twice).toEqual(once);
      }),
    );
  });

  it('a corner shared by two bodies stands once', () => {
    const square = (x: number) =>
      polygon([x, x + 1].flatMap((a, i) => [0, 1].map((y) => ({ x: a, y: i ? 1 - y : y }))));
    expect(convexHull([[square(0)], [square(1)]])).toHaveLength(4);
  });

  it('one point of a body that stands out stands in the hull, one that does not does not', () => {
    const disc: Loop = [circle(1)];
    const spike = (away: number): Loop =>
      polygon([
        { x: 0, y: -away },
        { x: 0.1, y: 0 },
        { x: -0.1, y: 0 },
      ]);
    expect(convexHull([[disc], [spike(0.999)]])).toHaveLength(1);
    const [arc, point] = convexHull([[disc], [spike(1.001)]]).toSorted((a, b) => radiusOf(b) - radiusOf(a));
    // Tangents from a point at distance a to a circle of radius 1 meet it acos(1/a) off.
    expect(point!.owner).toBe(1);
    expect(point!.to - point!.from).toBeCloseTo(2 * Math.acos(1 / 1.001), 12);
    expect(arc!.to - arc!.from).toBeCloseTo(turn - 2 * Math.acos(1 / 1.001), 12);
  });

  it('tangent joints of lines and arcs leave no corner and no flat but the drawn one', () => {
    const { outline, tracks } = runner(
      [{ radius: 0.9, turn: 0.2 }, { flat: 0.1 }, { radius: 1.3, turn: 0.3 }, { radius: 0.5, turn: 0.2 }],
      -0.2,
    );
    const { elements, flatAfter } = profileOf([[outline]]);
    // The straight top lies on the far side: the runner's own tracks and the two top corners.
    expect(elements).toHaveLength(tracks.length + 2);
    for (const { from, to, radius } of tracks.slice(1, -1)) {
      const same = elements.find((element) => Math.abs(element.from - from) < 1e-7)!;
      expect(radiusOf(same)).toBe(radius);
      // An arc keeps some 1e-7 rad more than its share where its end point is as low as itself to the last digit.
      expect(Math.abs(same.to - to)).toBeLessThan(1e-7);
    }
    expect(flatAfter.filter((flat) => flat > 0 && flat < 0.2)).toHaveLength(3);
  });

  it('has exactly one arc below for a band of one arc, between its ends', () => {
    fc.assert(
      fc.property(between(0.2, 5), between(-0.6, -0.05), between(0.05, 0.6), (radius, nose, tail) => {
        const { outline } = roundRunner({ x: 0.3, y: radius }, radius, nose, tail);
        const arcs = convexHull([[outline]]).filter((element) => radiusOf(element) > 0);
        expect(arcs).toHaveLength(1);
        expect(arcs[0]!.from).toBeCloseTo(nose, 6);
        expect(arcs[0]!.to).toBeCloseTo(tail, 6);
      }),
    );
  });

  it('takes 2,000 arcs', () => {
    // An involute-like spiral of tangent arcs, radii 1 to 2, all on the hull; each its own track.
    const steps = Array.from({ length: 2000 }, (_, i) => ({ radius: 1 + i / 2000, turn: 3 / 2000 }));
    const { outline } = runner(steps, -1.5);
    const profile = profileOf([[outline]]);
    expect(profile.elements.filter((element) => radiusOf(element) > 0)).toHaveLength(2000);
    for (const lean of [-3, -1, -0.5, 0, 0.4, 1, 2])
      expect(supportAt(profile, lean)).toBeCloseTo(bruteSupport([[outline]])(lean), 13);
  });

  it('takes more points than a function takes arguments', () => {
    const triangle = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 0, y: 1 },
    ] as const;
    const corners = Array.from({ length: 150_000 }, (_, i) => triangle[i % 3]!);
    expect(convexHull([[polygon(corners)]])).toHaveLength(3);
  });

  it('refuses nothing at all, and numbers that are none', () => {
    expect(() => convexHull([])).toThrow(RangeError);
    expect(() => convexHull([[], []])).toThrow(RangeError);
    const point = { x: 0, y: 0 };
    expect(() => convexHull([[polygon([point, { x: Number.NaN, y: 0 }, { x: 0, y: 1 }])]])).toThrow(
      RangeError,
    );
    expect(() => convexHull([[[circle(Infinity)]]])).toThrow(RangeError);
  });
});
