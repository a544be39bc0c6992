import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  loopMoments,
  outlineMoments,
  signedArea,
  type AreaMoments,
} from '../../src/geometry/area-moments.js';
import { endOf, polygon, startOf, type Arc, type Loop, type Piece } from '../../src/geometry/piece.js';
import { distance, times, type Point } from '../../src/geometry/point.js';
import { rocker } from '../../src/geometry/words/rocker.js';
import { places, rockers, rockerWords, soundLoops } from '../arbitraries/outlines.js';
import { flattenPolygon } from '../oracles/flatten-shapes.js';
import { finePolygon } from '../oracles/fine-polygon.js';
import { movedLoop, movedPoint, reversedLoop, type Move } from '../oracles/moved-loop.js';
import * as handbook from '../oracles/plane-areas.js';

const { PI } = Math;
const origin: Point = { x: 0, y: 0 };
const line = (from: Point, to: Point): Piece => ({ kind: 'line', from, to });
const arc = (radius: number, start: number, sweep: number): Arc => ({
  kind: 'arc',
  centre: origin,
  radius,
  start,
  sweep,
});
const ellipse = (a: number, b: number, start: number, sweep: number): Piece => ({
  kind: 'ellipse-arc',
  centre: origin,
  axisA: { x: a, y: 0 },
  axisB: { x: 0, y: b },
  start,
  sweep,
});
const closed = (...pieces: Piece[]): Loop => [...pieces, line(endOf(pieces.at(-1)!), startOf(pieces[0]!))];
const sector = (r: number, alpha: number): Loop => {
  const rim = arc(r, -alpha, 2 * alpha);
  return [rim, line(endOf(rim), origin), line(origin, startOf(rim))];
};
const ring = (outer: number, inner: number, alpha: number): Loop => {
  const [out, back] = [arc(outer, -alpha, 2 * alpha), arc(inner, alpha, -2 * alpha)];
  return [out, line(endOf(out), startOf(back)), back, line(endOf(back), startOf(out))];
};
/** y = h (1 - x²/a²) from +a to -a as a cubic: a quadratic's control stands at (0, 2h). */
const parabola = (a: number, h: number): Piece => ({
  kind: 'cubic',
  from: { x: a, y: 0 },
  control1: { x: a / 3, y: (4 / 3) * h },
  control2: { x: -a / 3, y: (4 / 3) * h },
  to: { x: -a, y: 0 },
});

/** Relative to area, extent and polar moment of the one expected. */
function difference(found: AreaMoments, expected: AreaMoments): number {
  const extent = Math.sqrt(expected.polar / expected.area);
  return Math.max(
    Math.abs(found.area / expected.area - 1),
    distance(found.centroid, expected.centroid) / extent,
    Math.abs(found.polar / expected.polar - 1),
  );
}

describe('a loop against the handbook', () => {
  const cases: Record<string, [Loop, AreaMoments]> = {
    rectangle: [
      polygon([origin, { x: 0.5, y: 0 }, { x: 0.5, y: 0.06 }, { x: 0, y: 0.06 }]),
      handbook.rectangleArea(0.5, 0.06),
    ],
    triangle: [polygon([origin, { x: 0.3, y: 0 }, { x: 0, y: 0.4 }]), handbook.rightTriangle(0.3, 0.4)],
    'circle of one arc': [[arc(0.3, 1, 2 * PI)], handbook.ellipseArea(0.3, 0.3)],
    'circle of three arcs': [
      [arc(0.3, 0, 1), arc(0.3, 1, 2), arc(0.3, 3, 2 * PI - 3)],
      handbook.ellipseArea(0.3, 0.3),
    ],
    'half disc': [closed(arc(0.2, 0, PI)), handbook.halfDisc(0.2)],
    sector: [sector(0.7, 0.6), handbook.sectorArea(0.7, 0.6)],
    'sector of more than half a turn': [sector(0.7, 2.4), handbook.sectorArea(0.7, 2.4)],
    segment: [closed(arc(1.1, -0.5, 1)), handbook.segmentArea(1.1, 0.5)],
    'annular sector': [ring(1, 0.94, 0.5), handbook.annularSector(1, 0.94, 0.5)],
    ellipse: [[ellipse(0.5, 0.2, 0.3, 2 * PI)], handbook.ellipseArea(0.5, 0.2)],
    'quarter ellipse': [
      [ellipse(0.5, 0.2, 0, PI / 2), line({ x: 0, y: 0.2 }, origin), line(origin, { x: 0.5, y: 0 })],
      handbook.quarterEllipse(0.5, 0.2),
    ],
    'parabolic segment': [closed(parabola(0.4, 0.1)), handbook.parabolicSegment(0.4, 0.1)],
  };

  it.each(Object.entries(cases))('%s', (_, [loop, expected]) => {
    expect(difference(loopMoments(loop), expected)).toBeLessThan(1e-12);
    expect(difference(loopMoments(reversedLoop(loop)), expected)).toBeLessThan(1e-12);
    expect(Math.sign(signedArea(loop))).toBe(1);
    expect(Math.sign(signedArea(reversedLoop(loop)))).toBe(-1);
  });

  it('a shallow segment of a large circle keeps its digits: a 0.2 m chord, radius 100 m', () => {
    const halfAngle = 1e-3;
    const loop = closed(arc(100, PI / 2 - halfAngle, 2 * halfAngle));
    // Between parabola and circle lies a share of order alpha² = 1e-6; the series of the area to alpha⁴.
    const area = 1e4 * (2 / 3) * halfAngle ** 3 * (1 - halfAngle ** 2 / 5);
    // Its ends are known to 100 m × 2e-16 of a chord of 0.2 m.
    expect(Math.abs(loopMoments(loop).area / area - 1)).toBeLessThan(1e-12);
    expect(Math.abs(loopMoments(loop).centroid.x)).toBeLessThan(1e-13);
  });

  it('far from the origin loses no digits', () => {
    // Sizes and shift are sums of powers of two, so the moved corners are exact.
    const corners = [origin, { x: 0.5, y: 0 }, { x: 0.75, y: 0.125 }, { x: 0.25, y: 0.5 }];
    const far = 2 ** 20;
    const near = loopMoments(polygon(corners));
    const moved = loopMoments(polygon(corners.map(({ x, y }) => ({ x: x + far, y: y - far }))));
    expect(moved.area).toBe(near.area);
    expect(moved.polar).toBe(near.polar);
    expect(moved.centroid.x - far).toBeCloseTo(near.centroid.x, 9);
  });

  it('refuses a loop that encloses nothing', () => {
    expect(() => loopMoments([line(origin, { x: 1, y: 0 }), line({ x: 1, y: 0 }, origin)])).toThrow(
      RangeError,
    );
    expect(() => loopMoments([])).toThrow(RangeError);
    expect(() => loopMoments([arc(NaN, 0, 1)])).toThrow(RangeError);
    expect(() => loopMoments([arc(1e200, 0, 2 * PI)])).toThrow(RangeError);
  });
});

/** Lines, arcs, an ellipse arc and a cubic in one outline. */
const motley: Loop = [
  line(origin, { x: 0.6, y: 0 }),
  { kind: 'arc', centre: { x: 0.6, y: 0.2 }, radius: 0.2, start: -PI / 2, sweep: PI / 2 },
  {
    kind: 'ellipse-arc',
    centre: { x: 0.6, y: 0.2 },
    axisA: { x: 0.2, y: 0 },
    axisB: { x: 0, y: 0.3 },
    start: 0,
    sweep: PI / 2,
  },
  {
    kind: 'cubic',
    from: { x: 0.6, y: 0.5 },
    control1: { x: 0.5, y: 0.7 },
    control2: { x: 0.3, y: 0.2 },
    to: { x: 0, y: 0.4 },
  },
  line({ x: 0, y: 0.4 }, origin),
];

const loops = fc.oneof(fc.constant(motley), soundLoops);
const moves: fc.Arbitrary<Required<Move>> = fc.record({
  scale: fc.double({ min: 0.1, max: 10, noNaN: true }),
  mirror: fc.boolean(),
  turn: fc.double({ min: -7, max: 7, noNaN: true }),
  shift: places,
});

describe('laws of area moments', () => {
  it('moved, turned, mirrored and scaled by k: area k², centroid along, polar moment k⁴', () => {
    fc.assert(
      fc.property(loops, moves, (loop, move) => {
        const { area, centroid, polar } = loopMoments(loop);
        const k = move.scale;
        const expected = { area: area * k ** 2, centroid: movedPoint(centroid, move), polar: polar * k ** 4 };
        // A band of 1/50 of its radius loses two digits of four in its difference of segments.
        expect(difference(loopMoments(movedLoop(loop, move)), expected)).toBeLessThan(1e-11);
      }),
    );
  });

  it('splitting a piece in two changes nothing', () => {
    fc.assert(
      fc.property(loops, fc.nat(), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (loop, which, u) => {
        const index = which % loop.length;
        const split = loop.flatMap((piece, i) => (i === index ? splitAt(piece, u) : [piece]));
        expect(split).toHaveLength(loop.length + 1);
        expect(difference(loopMoments(split), loopMoments(loop))).toBeLessThan(1e-12);
      }),
    );
  });

  it('starting at another piece changes nothing', () => {
    fc.assert(
      fc.property(loops, fc.nat(), (loop, which) => {
        const first = which % loop.length;
        const turned = [...loop.slice(first), ...loop.slice(0, first)];
        expect(difference(loopMoments(turned), loopMoments(loop))).toBeLessThan(1e-12);
      }),
    );
  });

  it('a fine inscribed polygon agrees within its own bound', () => {
    fc.assert(
      fc.property(loops, (loop) => {
        const exact = loopMoments(loop);
        const rough = finePolygon(loop, 2000);
        const { areaError, extent } = rough;
        const rounding = 1e-12 * exact.area;
        expect(Math.abs(exact.area - rough.area)).toBeLessThan(areaError + rounding);
        // Two areas that differ by e within reach L: centroids by 2 e L / A, polar moments about them by 4 e L².
        expect(distance(exact.centroid, rough.centroid) * exact.area).toBeLessThan(
          2 * (areaError + rounding) * 2 * extent,
        );
        expect(Math.abs(exact.polar - rough.polar)).toBeLessThan(
          4 * (areaError + rounding) * (2 * extent) ** 2,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('the bound of the fine polygon is no loose one for a cubic and an ellipse arc', () => {
    const { areaError } = finePolygon(motley, 2000);
    expect(areaError / loopMoments(motley).area).toBeLessThan(1e-6);
  });
});

describe('a rocker', () => {
  it('is an annular sector', () => {
    fc.assert(
      fc.property(rockerWords, (word) => {
        const made = rocker(word);
        if (!made.ok) throw new Error('a sound rocker');
        const { radius } = word.arcs[0]!;
        const [ahead, behind] = [Math.asin(word.nose / radius), Math.asin(word.tail / radius)];
        const { area, centroid, polar } = handbook.annularSector(
          radius,
          radius - word.depth,
          (ahead + behind) / 2,
        );
        const middle = -PI / 2 + (ahead - behind) / 2;
        const away = centroid.x;
        const place = { x: word.at + away * Math.cos(middle), y: radius + away * Math.sin(middle) };
        expect(difference(loopMoments(made.boundary), { area, centroid: place, polar })).toBeLessThan(1e-11);
      }),
    );
  });
});

describe('an outline', () => {
  const circle = (centre: Point, radius: number): Loop => [{ ...arc(radius, 0, 2 * PI), centre }];

  it('with a hole in its middle is an annulus', () => {
    const outline = [{ boundary: circle(origin, 0.5), holes: [circle(origin, 0.2)] }];
    expect(difference(outlineMoments(outline), handbook.annulusArea(0.5, 0.2))).toBeLessThan(1e-13);
  });

  it('of two solids is the whole they were cut from', () => {
    const half = polygon([origin, { x: 0.5, y: 0 }, { x: 0.5, y: 0.1 }, { x: 0, y: 0.1 }]);
    const halves = [half, movedLoop(half, { shift: { x: 0.5, y: 0 } })];
    const outline = halves.map((boundary) => ({ boundary, holes: [] }));
    expect(difference(outlineMoments(outline), handbook.rectangleArea(1, 0.1))).toBeLessThan(1e-13);
  });

  it('with a hole off its middle shifts its centroid away from it', () => {
    // A disc of radius 2 with a hole of radius 1 at x = 1 (moments by hand): (4·0 - 1·1) / 3; polar about the origin
    // π (8 - 1/2 - 1), about the centroid less 3π / 9.
    const outline = [{ boundary: circle(origin, 2), holes: [circle({ x: 1, y: 0 }, 1)] }];
    const expected = { area: 3 * PI, centroid: { x: -1 / 3, y: 0 }, polar: PI * (6.5 - 1 / 3) };
    expect(difference(outlineMoments(outline), expected)).toBeLessThan(1e-13);
  });

  it('of nothing is refused', () => {
    expect(() => outlineMoments([])).toThrow(RangeError);
    expect(() => outlineMoments([{ boundary: circle(origin, 1), holes: [circle(origin, 1)] }])).toThrow(
      RangeError,
    );
  });
});

describe('@flatten-js/core, an independent library, finds the same area', () => {
  it('of outlines of lines and arcs', () => {
    fc.assert(
      fc.property(soundLoops, (loop) => {
        // It works with areas under each piece down to the lowest point: some hundred roundings.
        const area = flattenPolygon(loop).area();
        expect(Math.abs(loopMoments(loop).area / area - 1)).toBeLessThan(1e-10);
      }),
    );
  });

  it('of rockers with a hole', () => {
    fc.assert(
      fc.property(rockers, ({ boundary }) => {
        const { centroid } = loopMoments(boundary);
        const hole = movedLoop([arc(0.01, 0, PI), arc(0.01, PI, PI)], { shift: centroid });
        const { area } = outlineMoments([{ boundary, holes: [hole] }]);
        const theirs = flattenPolygon(boundary, reversedLoop(hole)).area();
        expect(Math.abs(area / theirs - 1)).toBeLessThan(1e-10);
      }),
    );
  });
});

/** Two pieces for one, cut at u. */
function splitAt(piece: Piece, u: number): Piece[] {
  if (piece.kind === 'line') {
    const cut = between(piece.from, piece.to, u);
    return [line(piece.from, cut), line(cut, piece.to)];
  }
  if (piece.kind === 'cubic') {
    const [a, b, c] = [
      between(piece.from, piece.control1, u),
      between(piece.control1, piece.control2, u),
      between(piece.control2, piece.to, u),
    ];
    const [d, e] = [between(a, b, u), between(b, c, u)];
    const cut = between(d, e, u);
    return [
      { ...piece, control1: a, control2: d, to: cut },
      { ...piece, from: cut, control1: e, control2: c },
    ];
  }
  const sweep = u * piece.sweep;
  return [
    { ...piece, sweep },
    { ...piece, start: piece.start + sweep, sweep: piece.sweep - sweep },
  ];
}

const between = (a: Point, b: Point, u: number): Point => ({
  x: times(a, 1 - u).x + times(b, u).x,
  y: times(a, 1 - u).y + times(b, u).y,
});
