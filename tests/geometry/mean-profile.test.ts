import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanProfile } from '../../src/geometry/mean-profile.js';
import { meanSurface } from '../../src/geometry/mean-surface.js';
import { polygon, type EllipseArc, type Loop } from '../../src/geometry/piece.js';
import { distance, dot, midpoint, plus, type Point } from '../../src/geometry/point.js';
import {
  contactAt,
  elementAt,
  lengthAt,
  perimeter,
  profileOf,
  radiusAt,
  supportAt,
  type Profile,
} from '../../src/geometry/profile.js';
import { runningSurface, surfaceLength } from '../../src/geometry/running-surface.js';
import { surfaceShape } from '../../src/geometry/surface-shape.js';
import { isMissing } from '../../src/numeric/missing.js';
import { decay } from '../../src/rolling/decay.js';
import { landscapeOf } from '../../src/rolling/landscape.js';
import { rollAtRest } from '../../src/rolling/roll-at-rest.js';
import type { MassProperties } from '../../src/mass.js';
import { curvedLoops } from '../arbitraries/curved-loops.js';
import { arcLoops, between, convexCorners } from '../arbitraries/rolling.js';
import { bruteSupport, downAt, sizeOf } from '../oracles/brute-support.js';
import { monotoneChain } from '../oracles/monotone-chain.js';
import { heightAtRest, restOf, smallPeriodOf, standardGravity } from '../oracles/round-runner.js';
import { roundRunner, runner } from '../rolling/runners.js';

const degree = Math.PI / 180;
const turn = 2 * Math.PI;
const loops = fc.oneof(arcLoops, curvedLoops, convexCorners.map(polygon));
const hull = (loop: Loop): Profile => profileOf([[loop]]);
const surfaceOf = (profile: Profile) => ({ profile, surface: runningSurface(profile) });

const ellipse = (a: number, b: number, centre: Point): EllipseArc => ({
  kind: 'ellipse-arc',
  centre,
  axisA: { x: a, y: 0 },
  axisB: { x: 0, y: b },
  start: 0,
  sweep: turn,
});

describe('mean of equal sides', () => {
  it('is the side itself', () => {
    fc.assert(
      fc.property(loops, (loop) => {
        const side = hull(loop);
        expect(meanProfile(side, hull(loop))).toEqual(side);
      }),
    );
  });

  it('runs on the same surface', () => {
    const { outline } = runner([{ radius: 0.9, turn: 0.3 }, { flat: 0.1 }, { radius: 2, turn: 0.2 }], -0.3);
    const side = surfaceOf(hull(outline));
    const { owner, nose, tail } = meanSurface(side.profile, side, side);
    expect(owner).toBe(side.surface.owner);
    expect(nose.lean).toBe(side.surface.nose.lean);
    expect(tail.lean).toBe(side.surface.tail.lean);
    expect(nose.length).toBeCloseTo(side.surface.nose.length, 14);
    expect(tail.length).toBeCloseTo(side.surface.tail.length, 14);
  });
});

describe('mean of two sides', () => {
  it('stands at the mean of both heights', () => {
    fc.assert(
      fc.property(loops, loops, (one, two) => {
        const [left, right] = [hull(one), hull(two)];
        const mean = meanProfile(left, right);
        const size = Math.max(1, sizeOf([[one, two]]));
        for (let i = 0; i < 1000; i++) {
          const lean = (turn * (i + 0.123)) / 1000 - 2;
          const half = (supportAt(left, lean) + supportAt(right, lean)) / 2;
          expect(Math.abs(supportAt(mean, lean) - half)).toBeLessThan(1e-12 * size);
        }
      }),
    );
  });

  it('the same against brute force, where pieces are lines and arcs', () => {
    fc.assert(
      fc.property(arcLoops, arcLoops, between(-10, 10), (one, two, lean) => {
        const half = (bruteSupport([[one]])(lean) + bruteSupport([[two]])(lean)) / 2;
        const size = sizeOf([[one, two]]);
        expect(Math.abs(supportAt(meanProfile(hull(one), hull(two)), lean) - half)).toBeLessThan(
          1e-13 * size,
        );
      }),
    );
  });

  // Minkowski, Cauchy: the perimeter is the integral of S over a turn, so that of a mean is the mean.
  it('has the mean perimeter', () => {
    fc.assert(
      fc.property(loops, loops, (one, two) => {
        const [left, right] = [hull(one), hull(two)];
        const half = (perimeter(left) + perimeter(right)) / 2;
        // Integrals over curves are good to 1e-13 each.
        expect(Math.abs(perimeter(meanProfile(left, right)) / half - 1)).toBeLessThan(1e-11);
      }),
    );
  });

  // Two convex polygons: the hull of all mid-points of corners.
  it('of two polygons is the polygon of the mid-points of their corners', () => {
    fc.assert(
      fc.property(convexCorners, convexCorners, between(-10, 10), (one, two, lean) => {
        const mean = meanProfile(hull(polygon(one)), hull(polygon(two)));
        const corners = monotoneChain(one.flatMap((p) => two.map((q) => midpoint(p, q))));
        const lowest = Math.max(...corners.map((corner) => dot(corner, downAt(lean))));
        expect(supportAt(mean, lean)).toBeCloseTo(lowest, 14);
        const sides = corners.map((corner, i) => distance(corner, corners[(i + 1) % corners.length]!));
        expect(perimeter(mean)).toBeCloseTo(
          sides.reduce((sum, side) => sum + side, 0),
          12,
        );
      }),
    );
  });

  it('touches at the mean of both contacts with the mean of both radii', () => {
    fc.assert(
      fc.property(loops, loops, between(-10, 10), (one, two, lean) => {
        const [left, right] = [hull(one), hull(two)];
        const mean = meanProfile(left, right);
        // Within 1e-9 of a joint a rounding decides on which side of it the contact is.
        const off = (start: number): number =>
          Math.abs((lean - start) / turn - Math.round((lean - start) / turn));
        fc.pre(mean.starts.every((start) => off(start) > 1e-9));
        const size = Math.max(1, sizeOf([[one, two]]));
        const contact = midpoint(contactAt(left, lean), contactAt(right, lean));
        expect(distance(contactAt(mean, lean), contact)).toBeLessThan(1e-12 * size);
        const radius = (radiusAt(left, lean) + radiusAt(right, lean)) / 2;
        expect(Math.abs(radiusAt(mean, lean) - radius)).toBeLessThan(1e-12 * Math.max(size, radius));
        const run = (profile: Profile): number => lengthAt(profile, lean) - lengthAt(profile, lean - 1);
        fc.pre(mean.starts.every((start) => off(start + 1) > 1e-9));
        expect(Math.abs(run(mean) - (run(left) + run(right)) / 2)).toBeLessThan(1e-10 * size);
      }),
    );
  });

  it('does not mind which side is which', () => {
    fc.assert(
      fc.property(loops, loops, between(-10, 10), (one, two, lean) => {
        const [left, right] = [hull(one), hull(two)];
        const size = Math.max(1, sizeOf([[one, two]]));
        const [a, b] = [meanProfile(left, right), meanProfile(right, left)];
        expect(Math.abs(supportAt(a, lean) - supportAt(b, lean))).toBeLessThan(1e-12 * size);
      }),
    );
  });
});

describe('flats', () => {
  const [deep, noFlat] = [0.4, [{ radius: 1, turn: 0.6 }]] as const;
  const flatAt = (length: number, nose = -0.3, radius = 1) =>
    hull(
      runner([{ radius, turn: 0.3 }, { flat: length }, { radius, turn: 0.3 }], nose, { x: 0, y: 0 }, deep)
        .outline,
    );
  const longest = (profile: Profile): number =>
    surfaceShape(profile, {
      owner: 0,
      nose: { lean: -0.2, length: lengthAt(profile, -0.2) },
      tail: { lean: 0.2, length: lengthAt(profile, 0.2) },
    }).flatLongest;

  it('of one side are half as long in the mean', () => {
    const smooth = hull(runner(noFlat, -0.3, { x: 0.1, y: 0.02 }, deep).outline);
    expect(longest(meanProfile(flatAt(0.08), smooth))).toBeCloseTo(0.04, 13);
    expect(longest(meanProfile(smooth, flatAt(0.08)))).toBeCloseTo(0.04, 13);
  });

  it('of both sides in one direction are one flat of the mean length, two directions are two', () => {
    const both = meanProfile(flatAt(0.08), flatAt(0.02, -0.3, 1.3));
    expect(longest(both)).toBeCloseTo(0.05, 13);
    expect([...both.flatAfter].filter((flat) => flat > 0 && flat < 0.06)).toHaveLength(1);
    // Turned by a thousandth of a degree.
    const apart = meanProfile(flatAt(0.08), flatAt(0.02, -0.3 + 1e-3 * degree));
    const flats = [...apart.flatAfter].filter((flat) => flat > 0 && flat < 0.06).sort();
    expect(flats).toHaveLength(2);
    expect(flats[0]).toBeCloseTo(0.01, 13);
    expect(flats[1]).toBeCloseTo(0.04, 13);
  });
});

describe('two rockers of one arc each', () => {
  const at = -0.1;
  const sideOf = (radius: number, tail = 24) =>
    surfaceOf(hull(roundRunner({ x: at, y: radius }, radius, -30 * degree, tail * degree).outline));
  const radii = between(0.8, 1.6);

  it('are one of the mean radius', () => {
    fc.assert(
      fc.property(radii, radii, (R1, R2) => {
        const [left, right] = [sideOf(R1), sideOf(R2)];
        const element = elementAt(meanProfile(left.profile, right.profile), 0);
        if (element.kind !== 'round') throw new RangeError(element.kind);
        const mean = (R1 + R2) / 2;
        expect(element.radius).toBeCloseTo(mean, 14);
        expect(distance(element.centre, { x: at, y: mean })).toBeLessThan(1e-14);
        expect(element.from).toBeCloseTo(-30 * degree, 12);
        expect(element.to).toBeCloseTo(24 * degree, 12);
      }),
    );
  });

  it('end where the first of both ends', () => {
    const [left, right] = [sideOf(1, 24), sideOf(1.2, 20)];
    const mean = meanProfile(left.profile, right.profile);
    for (const surface of [meanSurface(mean, left, right), meanSurface(mean, right, left)]) {
      expect(surface.nose.lean).toBeCloseTo(-30 * degree, 12);
      expect(surface.tail.lean).toBeCloseTo(20 * degree, 12);
      expect(surfaceLength(surface)).toBeCloseTo(1.1 * 50 * degree, 12);
      expect(surface.tail.length).toBeCloseTo(lengthAt(mean, 20 * degree), 12);
    }
  });

  it('count a flat before an end, not one beyond it', () => {
    const flat = surfaceOf(
      hull(runner([{ radius: 1, turn: 0.4 }, { flat: 0.06 }, { radius: 1, turn: 0.2 }], -0.2).outline),
    );
    const ending = (tail: number) => surfaceOf(hull(roundRunner({ x: 0, y: 1 }, 1, -0.2, tail).outline));
    const reach = (tail: number): number => {
      const other = ending(tail);
      const { tail: end } = meanSurface(meanProfile(flat.profile, other.profile), flat, other);
      return end.length - lengthAt(meanProfile(flat.profile, other.profile), 0);
    };
    expect(reach(0.3)).toBeCloseTo(0.3 + 0.03, 12);
    // At the flat's own lean but for a rounding either way.
    expect(reach(0.2 - 1e-9)).toBeCloseTo(0.2, 8);
  });

  it('rest and rock as one of the mean radius', () => {
    fc.assert(
      fc.property(radii, radii, between(-0.03, 0.03), between(0.3, 0.65), (R1, R2, ahead, height) => {
        const body: MassProperties = { mass: 90, inertia: 12, centre: { x: at + ahead * height, y: height } };
        const [left, right] = [sideOf(R1), sideOf(R2)];
        const mean = meanProfile(left.profile, right.profile);
        const surface = meanSurface(mean, left, right);
        const { atRest } = rollAtRest(mean, surface, body, { swing: 3 * degree, pushedAt: null });
        const R = (R1 + R2) / 2;
        const closed = { centre: { x: at, y: R }, radius: R, body };
        expect(atRest!.rest.lean).toBeCloseTo(restOf(closed), 12);
        expect(atRest!.rest.height).toBeCloseTo(heightAtRest(closed), 12);
        if (isMissing(atRest!.smallPeriod)) throw new RangeError(atRest!.smallPeriod.missing);
        expect(Math.abs(atRest!.smallPeriod / smallPeriodOf(closed) - 1)).toBeLessThan(1e-11);
        expect(atRest!.back.rockerEnd).toBeCloseTo(24 * degree - restOf(closed), 12);
      }),
    );
  });
});

describe('an ellipse beside an ellipse or an arc', () => {
  // On its flat side an ellipse of half axes a, b has S = b, ρ = a²/b; H and ρ - H of the mean follow by hand.
  const periodOf = ({ mass, inertia }: MassProperties, height: number, radius: number): number =>
    2 * Math.PI * Math.sqrt((inertia + mass * height ** 2) / (mass * standardGravity * (radius - height)));
  const body: MassProperties = { mass: 20, inertia: 1.5, centre: { x: 0, y: 0 } };
  const roll = (one: Loop, two: Loop) => {
    const mean = meanProfile(hull(one), hull(two));
    const surface = runningSurface(mean);
    const { atRest } = rollAtRest(mean, surface, body, { swing: 3 * degree, pushedAt: null });
    return { mean, atRest: atRest! };
  };

  it.each([
    ['two ellipses', [ellipse(0.6, 0.4, { x: 0, y: 0 })], 0.6 ** 2 / 0.4, 0.4],
    ['an ellipse and a circle', [ellipse(0.45, 0.45, { x: 0, y: 0 })], 0.45, 0.45],
    [
      'an ellipse and an arc',
      [{ kind: 'arc', centre: { x: 0, y: 0 }, radius: 0.5, start: 0, sweep: turn }],
      0.5,
      0.5,
    ],
  ] as [string, Loop, number, number][])('%s: rest and small swing', (_, other, radius, support) => {
    const { mean, atRest } = roll([ellipse(0.5, 0.4, { x: 0, y: 0 })], other);
    const [height, rho] = [(0.4 + support) / 2, (0.5 ** 2 / 0.4 + radius) / 2];
    expect(Math.abs(atRest.rest.lean)).toBeLessThan(1e-9);
    expect(atRest.rest.height).toBeCloseTo(height, 13);
    expect(radiusAt(mean, 0)).toBeCloseTo(rho, 12);
    expect(atRest.smallPeriod).toBeCloseTo(periodOf(body, height, rho), 9);
    // Let go 0.1° from rest, step by step: longer by some squares of 0.0017 rad.
    const landscape = landscapeOf(mean, body.centre);
    const twice = { resistance: 0, mostHalfSwings: 2 };
    const little = decay(landscape, runningSurface(mean), body, 0, 0.1 * degree, twice);
    if (isMissing(little)) throw new RangeError(little.missing);
    expect(Math.abs(little.turns[2]!.time / periodOf(body, height, rho) - 1)).toBeLessThan(2e-5);
  });

  it('the mean of an ellipse and its quarter turn grows and falls in radius: it is cut where it does', () => {
    // Half axes 0.5, 0.4 one way and the other: at 45° both radii are equal, an extreme of their mean.
    const { elements } = meanProfile(
      hull([ellipse(0.5, 0.4, { x: 0, y: 0 })]),
      hull([ellipse(0.4, 0.5, { x: 0, y: 0 })]),
    );
    expect(elements).toHaveLength(8);
    for (const { from, to } of elements) expect(to - from).toBeLessThan(Math.PI / 4 + Math.PI / 30);
  });
});

it('elements keep the owner of the left', () => {
  const square = polygon([
    { x: -1, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
    { x: -1, y: 1 },
  ]);
  const above = square.map((line) =>
    line.kind === 'line'
      ? { ...line, from: plus(line.from, { x: 0, y: 1.5 }), to: plus(line.to, { x: 0, y: 1.5 }) }
      : line,
  );
  const [low, high] = [profileOf([[square], [above]]), profileOf([[above], [square]])];
  expect(elementAt(meanProfile(low, high), 0.1).owner).toBe(0);
  expect(elementAt(meanProfile(high, low), 0.1).owner).toBe(1);
});
