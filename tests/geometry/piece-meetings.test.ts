import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Simple } from '../../src/geometry/chords.js';
import { distanceTo, meetings, nearestOn } from '../../src/geometry/piece-meetings.js';
import type { Arc, Line } from '../../src/geometry/piece.js';
import { pointOn } from '../../src/geometry/piece.js';
import { distance } from '../../src/geometry/point.js';
import { places } from '../arbitraries/outlines.js';
import { flattenShape } from '../oracles/flatten-shapes.js';

const reach = 1e-9;
const angles = fc.double({ min: -6, max: 6, noNaN: true });
const lines: fc.Arbitrary<Line> = fc
  .record({ kind: fc.constant('line' as const), from: places, to: places })
  .filter(({ from, to }) => distance(from, to) > 0.01);
const arcs: fc.Arbitrary<Arc> = fc.record({
  kind: fc.constant('arc' as const),
  centre: places,
  radius: fc.double({ min: 0.05, max: 1, noNaN: true }),
  start: angles,
  sweep: angles.filter((sweep) => Math.abs(sweep) > 0.1),
});
const pieces: fc.Arbitrary<Simple> = fc.oneof(lines, arcs);

describe('where two pieces meet', () => {
  it('both are there, and @flatten-js/core finds no other place', () => {
    fc.assert(
      fc.property(pieces, pieces, (a, b) => {
        const found = meetings(a, b, reach);
        for (const place of found) {
          expect(distanceTo(a, place)).toBeLessThanOrEqual(reach);
          expect(distanceTo(b, place)).toBeLessThanOrEqual(reach);
        }
        const theirs = flattenShape(a).intersect(flattenShape(b));
        for (const { x, y } of theirs) {
          // Its tolerance is 1e-6, which near a grazing contact is a stretch of its square root along the pieces.
          const nearest = Math.min(...found.map((place) => distance(place, { x, y })), 1);
          const grazing = meetings(a, b, 2e-6).some((place) => distance(place, { x, y }) < 4e-3);
          expect(nearest < 1e-6 || grazing).toBe(true);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('of pieces along each other are the ends of what they share', () => {
    const a: Line = { kind: 'line', from: { x: 0, y: 0 }, to: { x: 2, y: 0 } };
    const b: Line = { kind: 'line', from: { x: 3, y: 0 }, to: { x: 1, y: 0 } };
    expect(meetings(a, b, reach)).toEqual([
      { x: 2, y: 0 },
      { x: 1, y: 0 },
    ]);
    const whole: Arc = { kind: 'arc', centre: { x: 0, y: 0 }, radius: 1, start: 0, sweep: 2 * Math.PI };
    const part: Arc = { ...whole, start: 1, sweep: 1 };
    expect(meetings(whole, part, reach)).toHaveLength(2);
  });

  it('of a line that touches an arc is the place where it touches', () => {
    const floor: Line = { kind: 'line', from: { x: -1, y: 0 }, to: { x: 1, y: 0 } };
    const runner: Arc = { kind: 'arc', centre: { x: 0.1, y: 0.7 }, radius: 0.7, start: -2, sweep: 1 };
    const [place] = meetings(floor, runner, reach);
    expect(distance(place!, { x: 0.1, y: 0 })).toBeLessThan(1e-7);
  });
});

describe('the nearest place on a piece', () => {
  it('is nearer than any other', () => {
    fc.assert(
      fc.property(pieces, places, fc.double({ min: 0, max: 1, noNaN: true }), (piece, point, u) => {
        expect(nearestOn(piece, point)).toBeGreaterThanOrEqual(0);
        expect(nearestOn(piece, point)).toBeLessThanOrEqual(1);
        expect(distanceTo(piece, point)).toBeLessThan(distance(point, pointOn(piece, u)) + 1e-12);
      }),
      { numRuns: 1000 },
    );
  });
});
