import fc from 'fast-check';
import svgpath from 'svgpath';
import { describe, expect, it } from 'vitest';
import { endOf, pointOn, startOf } from '../../../src/geometry/piece.js';
import { distance } from '../../../src/geometry/point.js';
import { svgArc, type SvgArc } from '../../../src/geometry/words/svg-arc.js';
import { places } from '../../arbitraries/outlines.js';

const radii = fc.double({ min: 0.05, max: 3, noNaN: true });
const arcs: fc.Arbitrary<SvgArc> = fc
  .record({
    from: places,
    to: places,
    radiusX: radii,
    radiusY: radii,
    turn: fc.double({ min: -4, max: 4, noNaN: true }),
    large: fc.boolean(),
    counterClockwise: fc.boolean(),
  })
  .filter(({ from, to }) => distance(from, to) > 0.01);

describe("SVG's arc", () => {
  it('runs from one end to the other, the way and as far as its flags say', () => {
    fc.assert(
      fc.property(arcs, (arc) => {
        const piece = svgArc(arc);
        if (piece.kind !== 'arc' && piece.kind !== 'ellipse-arc') throw new Error(piece.kind);
        // A half circle by decimals moves its ends by 5e-13 of a radius up to 3 m.
        expect(distance(startOf(piece), arc.from)).toBeLessThan(5e-12);
        expect(distance(endOf(piece), arc.to)).toBeLessThan(5e-12);
        expect(Math.sign(piece.sweep)).toBe(arc.counterClockwise ? 1 : -1);
        const overHalf = Math.abs(piece.sweep) - Math.PI;
        expect(overHalf * (arc.large ? 1 : -1)).toBeGreaterThan(-1e-12);
      }),
      { numRuns: 500 },
    );
  });

  it("goes where svgpath's own cubics for it go, an independent conversion", () => {
    fc.assert(
      fc.property(arcs, ({ from, to, radiusX, radiusY, turn, large, counterClockwise }) => {
        const flags = `${large ? 1 : 0} ${counterClockwise ? 1 : 0}`;
        const degrees = (turn * 180) / Math.PI;
        const data = `M ${from.x} ${from.y} A ${radiusX} ${radiusY} ${degrees} ${flags} ${to.x} ${to.y}`;
        const piece = svgArc({ from, to, radiusX, radiusY, turn, large, counterClockwise });
        const joints: { x: number; y: number }[] = [];
        const cubics = svgpath(data).unarc();
        cubics.iterate((segment) => {
          if (segment[0] === 'C') joints.push({ x: segment[5], y: segment[6] });
        });
        // It cuts the sweep into equal parts of at most a quarter; their ends lie on the curve.
        joints.forEach((joint, i) => {
          expect(distance(joint, pointOn(piece, (i + 1) / joints.length))).toBeLessThan(1e-6);
        });
        expect(joints.length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });

  const half = { from: { x: 0, y: 0 }, to: { x: 0.2, y: 0 }, turn: 0, large: false, counterClockwise: true };

  it('with radii that cannot span the chord is the half ellipse that just does (F.6.6)', () => {
    const piece = svgArc({ ...half, radiusX: 0.05, radiusY: 0.1 });
    expect(piece).toMatchObject({ kind: 'ellipse-arc', centre: { x: 0.1, y: 0 } });
    expect(pointOn(piece, 0.5).y).toBeCloseTo(-0.2, 14);
  });

  it('of a half circle has its centre on the chord though decimals are rounded', () => {
    for (const offset of [0.1, 0.7, 12.3, 100.1]) {
      const [from, to] = [
        { x: offset, y: 0 },
        { x: offset + 0.2, y: 0 },
      ];
      const piece = svgArc({ ...half, from, to, radiusX: 0.1, radiusY: 0.1 });
      expect(piece.kind === 'arc' && Math.abs(piece.sweep - Math.PI)).toBeLessThan(1e-12);
    }
  });

  it('with a radius of 0 is a line (F.6.2), with a negative one its size counts', () => {
    expect(svgArc({ ...half, radiusX: 0, radiusY: 0.1 })).toEqual({
      kind: 'line',
      from: half.from,
      to: half.to,
    });
    expect(svgArc({ ...half, radiusX: -0.3, radiusY: 0.3 })).toEqual(
      svgArc({ ...half, radiusX: 0.3, radiusY: 0.3 }),
    );
  });

  it('of a shallow sweep keeps its digits', () => {
    const piece = svgArc({ ...half, to: { x: 2e-5, y: 0 }, radiusX: 1, radiusY: 1 });
    expect(piece.kind === 'arc' && piece.sweep / (2 * Math.asin(1e-5))).toBeCloseTo(1, 14);
  });
});
