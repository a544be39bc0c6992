/** Where a rolled body's points are on the floor, against explicit constructions and against small steps of rolling. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Loop } from '../../src/geometry/piece.js';
import { polygon } from '../../src/geometry/piece.js';
import { distance, type Point } from '../../src/geometry/point.js';
import { contactAt, profileOf, type Profile } from '../../src/geometry/profile.js';
import { floorPlace, rearmost } from '../../src/rolling/floor-place.js';
import { ellipseAt } from './textbook-shapes.js';

/** Tail to nose along an arc of 1 m about (0, 1) from -0.5 to 0.4 rad, and straight back. */
const runner: Loop = [
  { kind: 'arc', centre: { x: 0, y: 1 }, radius: 1, start: -Math.PI / 2 - 0.5, sweep: 0.9 },
  {
    kind: 'line',
    from: { x: Math.sin(0.4), y: 1 - Math.cos(0.4) },
    to: { x: -Math.sin(0.5), y: 1 - Math.cos(0.5) },
  },
];
const ellipse = ellipseAt({ x: 0.1, y: 0.4 });
const box = polygon([
  { x: -0.3, y: 0 },
  { x: 0.2, y: 0 },
  { x: 0.2, y: 0.9 },
  { x: -0.3, y: 0.9 },
]);

const point = fc.record({
  x: fc.double({ min: -1, max: 1, noNaN: true }),
  y: fc.double({ min: 0, max: 2, noNaN: true }),
});

/** From one lean to another: only differences of X mean something. */
function way(profile: Profile, q: Point, from: number, to: number): number {
  return floorPlace(profile, q, to).x - floorPlace(profile, q, from).x;
}

describe('on an arc', () => {
  const profile = profileOf([[runner]]);

  it('the centre goes back by R θ and keeps its height; a point at r from it makes a trochoid', () => {
    fc.assert(
      fc.property(point, fc.double({ min: -0.39, max: 0.49, noNaN: true }), (q, lean) => {
        const [r, angle] = [Math.hypot(q.x, q.y - 1), Math.atan2(q.y - 1, q.x)];
        const wanted = -lean + r * Math.cos(angle + lean) - q.x;
        expect(way(profile, q, 0, lean)).toBeCloseTo(wanted, 12);
        expect(floorPlace(profile, q, lean).y).toBeCloseTo(1 + r * Math.sin(angle + lean), 12);
      }),
    );
  });

  it('a point of the runner makes a cycloid: R (φ - sin φ) along, R (1 - cos φ) up', () => {
    const touching = { x: 0, y: 0 };
    for (const turned of [-0.3, -0.1, 0.2, 0.45]) {
      expect(way(profile, touching, 0, turned)).toBeCloseTo(-(turned - Math.sin(turned)), 12);
      expect(floorPlace(profile, touching, turned).y).toBeCloseTo(1 - Math.cos(turned), 12);
    }
  });

  it('past the tail the chair turns about its end, which stays where it is', () => {
    const tail = { x: -Math.sin(0.5), y: 1 - Math.cos(0.5) };
    for (const lean of [0.6, 0.9, 1.2]) {
      expect(way(profile, tail, 0.5, lean)).toBeCloseTo(0, 12);
      expect(floorPlace(profile, tail, lean).y).toBeCloseTo(0, 12);
    }
  });
});

describe('over a flat', () => {
  const profile = profileOf([[box]]);

  it('the box turns about one corner, then about the other: both stay where they stand', () => {
    const [rear, front] = [
      { x: -0.3, y: 0 },
      { x: 0.2, y: 0 },
    ];
    // Leant forward a little, level and leant back: rear corner and front corner half a metre apart on the floor.
    const stands = floorPlace(profile, front, -0.2).x;
    expect(floorPlace(profile, rear, 0.2).x).toBeCloseTo(stands - 0.5, 12);
    expect(floorPlace(profile, { x: 0.2, y: 0.9 }, 0.2)).toMatchObject({
      x: expect.closeTo(stands - 0.5 + 0.5 * Math.cos(0.2) - 0.9 * Math.sin(0.2), 12) as number,
      y: expect.closeTo(0.5 * Math.sin(0.2) + 0.9 * Math.cos(0.2), 12) as number,
    });
  });

  it('has one place at the flat itself, from either side', () => {
    const q = { x: 0.05, y: 0.5 };
    const least = 1e-9;
    expect(way(profile, q, -least, least)).toBeCloseTo(0, 8);
  });
});

describe('without slip', () => {
  it.each([
    ['an arc', profileOf([[runner]]), [-0.39, 0.49]],
    ['an ellipse', profileOf([[ellipse]]), [-0.8, 0.8]],
  ] as const)('on %s the point that touches does not move', (_, profile, [from, to]) => {
    const step = 1e-4;
    for (let lean = from; lean < to; lean += 0.07) {
      const touched = contactAt(profile, lean);
      // Its way over a step is of the third order along the floor (a cusp): ρ step³/6.
      expect(Math.abs(way(profile, touched, lean - step, lean + step))).toBeLessThan(1e-11);
    }
  });

  it('on an ellipse the contact has gone back by the length of the arc (summed on fine chords)', () => {
    const profile = profileOf([[ellipse]]);
    const steps = 20000;
    let length = 0;
    let last = contactAt(profile, 0);
    for (let i = 1; i <= steps; i++) {
      const next = contactAt(profile, (0.7 * i) / steps);
      length += distance(last, next);
      last = next;
    }
    const onFloor = (lean: number): number => floorPlace(profile, contactAt(profile, lean), lean).x;
    // Chords fall short of the arc by 1/24 of the step squared: 5e-11.
    expect(onFloor(0) - onFloor(0.7)).toBeCloseTo(length, 9);
  });
});

describe('the rearmost point', () => {
  it.each([
    ['a runner', profileOf([[runner]])],
    ['an ellipse', profileOf([[ellipse]])],
    ['a box', profileOf([[box]])],
    ['all three', profileOf([[runner], [ellipse], [box]])],
  ])('of %s is that of all its points, each rolled', (_, profile) => {
    for (let lean = -0.6; lean < 1.2; lean += 0.13) {
      const places = Array.from({ length: 4000 }, (_unused, i) =>
        contactAt(profile, (2 * Math.PI * i) / 4000),
      );
      const least = Math.min(...places.map((q) => floorPlace(profile, q, lean).x));
      // The points are up to 0.2 mm aside of the rearmost, which is off it by less than their square.
      expect(rearmost(profile, lean)).toBeLessThanOrEqual(least + 1e-12);
      expect(rearmost(profile, lean)).toBeGreaterThan(least - 2e-6);
    }
  });

  it('only goes back as the chair leans back: its speed is the height of that point', () => {
    const profile = profileOf([[runner], [ellipse], [box]]);
    for (let lean = -0.5; lean < 1; lean += 0.05)
      expect(rearmost(profile, lean + 0.05)).toBeLessThanOrEqual(rearmost(profile, lean));
  });
});
