/** A piece mapped is the same places mapped: nothing else is meant by it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mappedPiece, mappedPoint, thenMapped, type Affine } from '../../src/geometry/affine.js';
import { dot } from '../../src/geometry/point.js';
import { pointOn, type Piece } from '../../src/geometry/piece.js';

const number = fc.double({ min: -3, max: 3, noNaN: true });
const point = fc.record({ x: number, y: number });
const angle = fc.double({ min: -6, max: 6, noNaN: true });
const maps: fc.Arbitrary<Affine> = fc
  .record({ a: number, b: number, c: number, d: number, e: number, f: number })
  .filter(({ a, b, c, d }) => Math.abs(a * d - b * c) > 0.05);
const similar: fc.Arbitrary<Affine> = fc
  .record({
    turn: angle,
    size: fc.double({ min: 0.1, max: 4, noNaN: true }),
    mirror: fc.boolean(),
    at: point,
  })
  .map(({ turn, size, mirror, at }) => {
    const [cos, sin, way] = [size * Math.cos(turn), size * Math.sin(turn), mirror ? -1 : 1];
    return { a: cos, b: sin, c: -way * sin, d: way * cos, e: at.x, f: at.y };
  });

const radius = fc.double({ min: 0.2, max: 3, noNaN: true });
const arc: fc.Arbitrary<Piece> = fc.record({
  kind: fc.constant('arc' as const),
  centre: point,
  radius,
  start: angle,
  sweep: angle,
});
const ellipse: fc.Arbitrary<Piece> = fc
  .record({ centre: point, long: radius, flat: radius, turn: angle, start: angle, sweep: angle })
  .map(({ centre, long, flat, turn, start, sweep }) => ({
    ...{ kind: 'ellipse-arc' as const, centre, start, sweep },
    axisA: { x: long * Math.cos(turn), y: long * Math.sin(turn) },
    axisB: { x: -flat * Math.sin(turn), y: flat * Math.cos(turn) },
  }));
const line: fc.Arbitrary<Piece> = fc.record({ kind: fc.constant('line' as const), from: point, to: point });
const cubic: fc.Arbitrary<Piece> = fc.record({
  kind: fc.constant('cubic' as const),
  from: point,
  control1: point,
  control2: point,
  to: point,
});

describe('a piece mapped', () => {
  it('lies where its places are mapped to, passed in the same order', () => {
    fc.assert(
      fc.property(fc.oneof(arc, ellipse, line, cubic), maps, (piece, map) => {
        const mapped = mappedPiece(piece, map);
        for (const u of [0, 0.13, 0.5, 0.77, 1]) {
          const [got, wanted] = [pointOn(mapped, u), mappedPoint(pointOn(piece, u), map)];
          expect(Math.hypot(got.x - wanted.x, got.y - wanted.y)).toBeLessThan(1e-12 * 100);
        }
        if (mapped.kind === 'ellipse-arc') {
          const size =
            Math.hypot(mapped.axisA.x, mapped.axisA.y) * Math.hypot(mapped.axisB.x, mapped.axisB.y);
          expect(Math.abs(dot(mapped.axisA, mapped.axisB)) / size).toBeLessThan(1e-9);
        }
      }),
    );
  });

  it('stays an arc where lengths are scaled alike, mirrored or not', () => {
    fc.assert(
      fc.property(arc, similar, (piece, map) => {
        const mapped = mappedPiece(piece, map);
        expect(mapped.kind).toBe('arc');
        for (const u of [0, 0.4, 1]) {
          const [got, wanted] = [pointOn(mapped, u), mappedPoint(pointOn(piece, u), map)];
          expect(Math.hypot(got.x - wanted.x, got.y - wanted.y)).toBeLessThan(1e-10);
        }
      }),
    );
  });

  it('twice is once by both maps', () => {
    fc.assert(
      fc.property(point, maps, maps, (p, first, second) => {
        const [twice, once] = [
          mappedPoint(mappedPoint(p, first), second),
          mappedPoint(p, thenMapped(first, second)),
        ];
        expect(Math.hypot(twice.x - once.x, twice.y - once.y)).toBeLessThan(1e-11);
      }),
    );
  });
});
