import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { distance, dot, minus } from '../../src/geometry/point.js';
import {
  contactAt,
  indexAt,
  elementOf,
  lengthAt,
  perimeter,
  profileOf,
  radiusAt,
  supportAt,
  supportSlopeAt,
} from '../../src/geometry/profile.js';
import { arcLoops, between, convexCorners } from '../arbitraries/rolling.js';
import { bruteSupport, downAt, sizeOf } from '../oracles/brute-support.js';
import { runner } from '../rolling/runners.js';

const turn = 2 * Math.PI;
const leans = between(-20, 20);

/** No joint within `room` of this lean. */
function clear(loop: Loop, lean: number, room: number): boolean {
  const { starts } = profileOf([[loop]]);
  return starts.every((start) => {
    const off = Math.abs(lean - start) % turn;
    return Math.min(off, turn - off) > room;
  });
}

describe('profile', () => {
  it('touches with a point of the outline that is as low as any', () => {
    fc.assert(
      fc.property(arcLoops, leans, (loop, lean) => {
        const contact = contactAt(profileOf([[loop]]), lean);
        const size = sizeOf([[loop]]);
        // Rounding of lean times size, and of sums of coordinates.
        expect(Math.abs(dot(contact, downAt(lean)) - bruteSupport([[loop]])(lean))).toBeLessThan(
          1e-13 * size,
        );
        expect(Math.min(...loop.map((piece) => awayFrom(piece, contact)))).toBeLessThan(1e-12 * size);
      }),
    );
  });

  it("S + S'' = ρ and S' is how far the origin is behind the contact", () => {
    fc.assert(
      fc.property(arcLoops, leans, (loop, lean) => {
        // Central differences over 2h = 4e-4: their error is h² / 12 |S''''| + 4 ε S / h² ≈ 1e-8 + 2e-8 of the size.
        const h = 2e-4;
        fc.pre(clear(loop, lean, 2 * h));
        const profile = profileOf([[loop]]);
        const [before, here, after] = [-h, 0, h].map((step) => supportAt(profile, lean + step)) as [
          number,
          number,
          number,
        ];
        const size = sizeOf([[loop]]);
        const bend = (before - 2 * here + after) / h ** 2;
        expect(Math.abs(here + bend - radiusAt(profile, lean))).toBeLessThan(1e-6 * size);
        expect(Math.abs((after - before) / (2 * h) - supportSlopeAt(profile, lean))).toBeLessThan(
          1e-7 * size,
        );
      }),
    );
  });

  it('S(θ) + S(θ + π) is the width across', () => {
    fc.assert(
      fc.property(arcLoops, leans, (loop, lean) => {
        const profile = profileOf([[loop]]);
        const width = bruteSupport([[loop]])(lean) + bruteSupport([[loop]])(lean + Math.PI);
        const across = supportAt(profile, lean) + supportAt(profile, lean + Math.PI);
        expect(Math.abs(across - width)).toBeLessThan(1e-13 * sizeOf([[loop]]));
      }),
    );
  });

  // Cauchy: the perimeter of a convex curve is the integral of its support over one turn.
  it('∫ S dθ over a turn is the perimeter', () => {
    fc.assert(
      fc.property(convexCorners, (corners) => {
        const profile = profileOf([[polygon(corners)]]);
        const side = corners.reduce(
          (sum, corner, i) => sum + distance(corner, corners[(i + 1) % corners.length]!),
          0,
        );
        expect(perimeter(profile)).toBeCloseTo(side, 12);
      }),
    );
    const { outline } = runner([{ radius: 0.9, turn: 0.3 }, { flat: 0.1 }, { radius: 2, turn: 0.2 }], -0.3);
    const profile = profileOf([[outline]]);
    // Trapezia over a periodic function with corners in S': error step² / 12 times the jumps of S'.
    const steps = 20_000;
    let sum = 0;
    for (let i = 0; i < steps; i++) sum += supportAt(profile, (turn * i) / steps);
    expect(Math.abs((sum * turn) / steps / perimeter(profile) - 1)).toBeLessThan(1e-7);
  });
});

/** Distance of a place from a line or an arc. */
function awayFrom(piece: Loop[number], place: { x: number; y: number }): number {
  if (piece.kind === 'line') {
    const along = minus(piece.to, piece.from);
    const share = dot(minus(place, piece.from), along) / dot(along, along);
    const near = Math.min(Math.max(share, 0), 1);
    return distance(place, { x: piece.from.x + near * along.x, y: piece.from.y + near * along.y });
  }
  if (piece.kind !== 'arc') return Infinity;
  return Math.abs(distance(place, piece.centre) - piece.radius);
}

describe('length along the hull', () => {
  const { outline, tracks } = runner(
    [{ radius: 0.9, turn: 0.3 }, { flat: 0.1 }, { radius: 2, turn: 0.2 }],
    -0.3,
  );
  const profile = profileOf([[outline]]);

  it('grows by R dθ along an arc, by its length at a flat, by nothing at a corner', () => {
    const at = (lean: number) => lengthAt(profile, lean);
    expect(at(-0.1) - at(-0.2)).toBeCloseTo(0.09, 13);
    expect(at(0.1) - at(-0.1)).toBeCloseTo(0.09 + 0.1 + 0.2, 13);
    expect(at(0.21) - at(0.2)).toBe(0);
    expect(tracks[2]!.radius).toBe(2);
  });

  it('goes on past whole turns', () => {
    fc.assert(
      fc.property(leans, fc.integer({ min: -3, max: 3 }), (lean, turns) => {
        const on = lengthAt(profile, lean + turns * turn) - lengthAt(profile, lean);
        // On a flat's own lean a rounding decides which end.
        fc.pre(clear(outline, lean, 1e-9));
        expect(on).toBeCloseTo(turns * perimeter(profile), 11);
      }),
    );
  });

  it('never falls', () => {
    fc.assert(
      fc.property(arcLoops, leans, between(0, 1), (loop, lean, more) => {
        const hull = profileOf([[loop]]);
        expect(lengthAt(hull, lean + more)).toBeGreaterThanOrEqual(lengthAt(hull, lean) - 1e-12);
      }),
    );
  });
});

describe('looking up', () => {
  it('finds the element that has the lean, at a joint the one after it', () => {
    fc.assert(
      fc.property(arcLoops, leans, (loop, lean) => {
        const profile = profileOf([[loop]]);
        const { element, turns } = elementOf(profile, indexAt(profile, lean));
        // 1e-14: a rounding of lean less whole turns.
        expect(element.from + turns * turn).toBeLessThanOrEqual(lean + 1e-14);
        expect(element.to + turns * turn).toBeGreaterThanOrEqual(lean - 1e-14);
      }),
    );
    const square = profileOf([
      [
        polygon([
          { x: 0, y: 0 },
          { x: 1, y: 0 },
          { x: 1, y: 1 },
          { x: 0, y: 1 },
        ]),
      ],
    ]);
    expect(contactAt(square, 0)).toEqual({ x: 0, y: 0 });
  });
});
