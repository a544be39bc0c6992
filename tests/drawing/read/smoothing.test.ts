/** Curves that were written as lines: found again, to the accuracy they say, against circles and ellipses in closed form. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smoothed } from '../../../src/drawing/read/smoothing/smoothed.js';
import { convexCurves, curvatureRadius, placeAt } from '../../../src/geometry/convex-curve.js';
import { loopFlaws } from '../../../src/geometry/loop-flaws.js';
import { loopMoments } from '../../../src/geometry/area-moments.js';
import { endOf, pointOn, polygon, startOf, type Arc, type Loop } from '../../../src/geometry/piece.js';
import { distance, type Point } from '../../../src/geometry/point.js';

const degree = Math.PI / 180;
/** A tenth of a millimetre. */
const within = 1e-4;

/** Places on a curve of one angle, at even steps of it. */
const along = (curve: (angle: number) => Point, from: number, to: number, step: number): Point[] => {
  const steps = Math.round(Math.abs(to - from) / step);
  return Array.from({ length: steps + 1 }, (_, i) => curve(from + ((to - from) * i) / steps));
};
const circle =
  (radius: number, { x, y }: Point = { x: 0, y: radius }) =>
  (angle: number): Point => ({ x: x + radius * Math.sin(angle), y: y - radius * Math.cos(angle) });

/** A runner’s bottom from tail to nose, and straight back over it. */
const runner = (bottom: readonly Point[]): Loop =>
  polygon([...bottom, { x: bottom.at(-1)!.x, y: 0.4 }, { x: bottom[0]!.x, y: 0.4 }]);

const arcsOf = (loop: Loop): Arc[] => loop.filter((piece) => piece.kind === 'arc');
const rounded = (places: readonly Point[], digit: number): Point[] =>
  places.map(({ x, y }) => ({ x: Math.round(x / digit) * digit, y: Math.round(y / digit) * digit }));

/** Each piece starts where the one before ends. */
function expectWhole(loop: Loop): void {
  loop.forEach((piece, i) => {
    expect(distance(endOf(piece), startOf(loop[(i + 1) % loop.length]!))).toBeLessThan(1e-12);
  });
  expect(loopFlaws(loop)).toEqual([]);
}

describe('lines on circles', () => {
  it('of one radius are one arc, whatever the lines are long', () => {
    const bottom = [
      ...along(circle(1.0668), -28 * degree, 3 * degree, degree),
      ...along(circle(1.0668), 3.2 * degree, 28 * degree, 0.6 * degree),
    ];
    const { boundary, smoothing } = smoothed(runner(bottom), within);
    expect(boundary.map(({ kind }) => kind)).toEqual(['arc', 'line', 'line', 'line']);
    expect(arcsOf(boundary)[0]!.radius).toBeCloseTo(1.0668, 12);
    expect(smoothing).toMatchObject({ lines: bottom.length - 1, arcs: 1, curves: 0, left: 0 });
    // A chord of 1° of 1.0668 m lies R (1 - cos 0.5°) = 0.0406 mm inside.
    expect(smoothing.off).toBeCloseTo(1.0668 * (1 - Math.cos(0.5 * degree)), 8);
    expectWhole(boundary);
  });

  it.each([
    ['a tangent joint at an end of lines', 5],
    ['a tangent joint between two ends', 5.37],
  ])('of two radii are two arcs: %s', (_, joint) => {
    const [front, rear] = [0.95, 1.4];
    const at = joint * degree;
    const centre = { x: (front - rear) * Math.sin(at), y: front + (rear - front) * Math.cos(at) };
    const curve = (angle: number): Point => (angle < at ? circle(front)(angle) : circle(rear, centre)(angle));
    const { boundary } = smoothed(runner(along(curve, -25 * degree, 30 * degree, 0.5 * degree)), within);
    const arcs = arcsOf(boundary);
    expect(arcs.map(({ radius }) => radius)).toEqual([expect.closeTo(front, 9), expect.closeTo(rear, 9)]);
    const place = endOf(arcs[0]!);
    expect(distance(place, circle(front)(at))).toBeLessThan(1e-7);
    expectWhole(boundary);
  });

  it('keep a corner, and a flat, that is drawn between them', () => {
    const left = along(circle(1), -25 * degree, -2 * degree, degree);
    const right = along(circle(1, { x: 0.03, y: 1 }), 2 * degree, 25 * degree, degree);
    const { boundary } = smoothed(runner([...left, ...right]), within);
    expect(boundary.map(({ kind }) => kind)).toEqual(['arc', 'line', 'arc', 'line', 'line', 'line']);
    const flat = boundary[1]!;
    expect(distance(startOf(flat), endOf(flat))).toBeCloseTo(0.03 + 2 * Math.sin(2 * degree), 12);
  });

  it('too few to tell a radius between others are left, and counted', () => {
    // A bump of radius 0.7 over 30 mm, drawn as three lines.
    const [at, bump] = [0.02, 0.03 / 0.7];
    const lower = { x: 0.3 * Math.sin(at), y: 1 - 0.3 * Math.cos(at) };
    const ends = at + bump;
    const centre = { x: lower.x - 0.3 * Math.sin(ends), y: lower.y + 0.3 * Math.cos(ends) };
    const bottom = [
      ...along(circle(1), -0.45, at, 0.01),
      ...along(circle(0.7, lower), at, ends, bump / 3).slice(1),
      ...along(circle(1, centre), ends, 0.45, 0.01).slice(1),
    ];
    const { boundary, smoothing } = smoothed(runner(bottom), within);
    expect(boundary.map(({ kind }) => kind)).toEqual([
      'arc',
      'line',
      'line',
      'line',
      'arc',
      'line',
      'line',
      'line',
    ]);
    expect(smoothing).toMatchObject({ arcs: 2, left: 3 });
  });

  it('that come round are one circle', () => {
    const { boundary } = smoothed(polygon(along(circle(0.011), 0, 359 * degree, degree)), within);
    expect(boundary).toHaveLength(1);
    expect(loopMoments(boundary).area).toBeCloseTo(Math.PI * 0.011 ** 2, 12);
  });

  it('round all their corners are arcs and lines with no corner between them', () => {
    const ends = [circle(0.02, { x: 0.3, y: 0 }), circle(0.02, { x: -0.3, y: 0 })] as const;
    const stadium = polygon([
      ...along(ends[0], 0, 180 * degree, 3 * degree),
      ...along(ends[1], 180 * degree, 360 * degree, 3 * degree),
    ]);
    const { boundary } = smoothed(stadium, within);
    expect(boundary.map(({ kind }) => kind).sort()).toEqual(['arc', 'arc', 'line', 'line']);
    expect(loopMoments(boundary).area).toBeCloseTo(Math.PI * 0.02 ** 2 + 0.6 * 0.04, 12);
    expectWhole(boundary);
  });
});

describe('lines along an ellipse', () => {
  const [a, b] = [1.2, 0.9];
  const ellipse = (t: number): Point => ({ x: a * Math.sin(t), y: b * (1 - Math.cos(t)) });

  it.each([
    ['sixteen digits', 0],
    ['thousandths of a millimetre', 1e-6],
  ])('written to %s are a curve of its radius', (_, digit) => {
    const places = along(ellipse, -30 * degree, 28 * degree, degree);
    const { boundary, smoothing } = smoothed(runner(digit === 0 ? places : rounded(places, digit)), within);
    expect(smoothing).toMatchObject({ curves: 1, left: 0 });
    expect(smoothing.radius).toBeLessThanOrEqual(1e-3);
    expect(smoothing.off).toBeLessThanOrEqual(within);
    let most = 0;
    for (const piece of boundary) {
      if (piece.kind !== 'cubic') continue;
      for (const { form, start, end } of convexCurves(piece).curves)
        for (const u of [0.1, 0.5, 0.9]) {
          const t = start + u * (end - start);
          const angle = Math.asin(placeAt(form, t).x / a);
          // ρ = (a² cos² t + b² sin² t)^(3/2) / ab, t the ellipse’s own angle.
          const rho = ((a * Math.cos(angle)) ** 2 + (b * Math.sin(angle)) ** 2) ** 1.5 / (a * b);
          most = Math.max(most, Math.abs(curvatureRadius(form, t) / rho - 1));
        }
    }
    expect(most).toBeGreaterThan(0);
    expect(most).toBeLessThan(1e-3);
    expectWhole(boundary);
  });

  it('too roughly written to tell its radius are left as lines, and counted', () => {
    const drawn = runner(rounded(along(ellipse, -30 * degree, 28 * degree, degree), 1e-5));
    const { boundary, smoothing } = smoothed(drawn, within);
    expect(boundary).toEqual(drawn);
    expect(smoothing).toMatchObject({ lines: 0, left: 58 });
  });
});

describe('lines that are no curve', () => {
  it.each([
    ['a hexagon', polygon(along(circle(0.1), 0, 300 * degree, 60 * degree))],
    [
      'four dull corners',
      runner([
        { x: -0.4, y: 0.02 },
        { x: -0.15, y: 0.001 },
        { x: 0, y: 0 },
        { x: 0.15, y: 0.002 },
        { x: 0.4, y: 0.03 },
      ]),
    ],
    [
      'lines that bulge more than they may',
      runner(along(circle(1.0668), -28 * degree, 28 * degree, 2 * degree)),
    ],
  ])('%s', (_, drawn) => {
    const { boundary, smoothing } = smoothed(drawn, within);
    expect(boundary).toEqual(drawn);
    expect(smoothing.lines).toBe(0);
  });
});

it('radii of arcs that are rounded to any digit are as near as it says, or left', () => {
  const anyRunner = fc.record({
    front: fc.double({ min: 0.6, max: 1.6, noNaN: true }),
    share: fc.double({ min: 0.7, max: 1.5, noNaN: true }),
    joint: fc.double({ min: -12, max: 12, noNaN: true }),
    step: fc.double({ min: 0.2, max: 1, noNaN: true }),
    digit: fc.constantFrom(1e-9, 1e-7, 1e-6, 1.27e-6, 2.54e-6),
  });
  fc.assert(
    fc.property(anyRunner, ({ front, share, joint, step, digit }) => {
      const [rear, at] = [front * share, joint * degree];
      const centre = { x: (front - rear) * Math.sin(at), y: front + (rear - front) * Math.cos(at) };
      const curve = (angle: number): Point =>
        angle < at ? circle(front)(angle) : circle(rear, centre)(angle);
      const { boundary, smoothing } = smoothed(
        runner(rounded(along(curve, -25 * degree, 26 * degree, step * degree), digit)),
        within,
      );
      expectWhole(boundary);
      for (const { radius } of arcsOf(boundary)) {
        const off = Math.min(Math.abs(radius / front - 1), Math.abs(radius / rear - 1));
        // The radius itself is a mean over the arc: nearer than what its ends may be off by.
        expect(off).toBeLessThanOrEqual(Math.max(smoothing.radius, 1e-9));
      }
      expect(smoothing.radius).toBeLessThanOrEqual(1e-3);
    }),
    { numRuns: 150 },
  );
});

describe('places rounded roughly', () => {
  const [a, b] = [1.2, 0.9];
  const ellipse = (t: number): Point => ({ x: a * Math.sin(t), y: b * (1 - Math.cos(t)) });
  const digits = [1e-6, 1e-5, 2.54e-5, 1e-4];
  const steps = [0.12, 0.19, 0.31];
  const drawings = digits.flatMap((digit) =>
    steps.map((step) => rounded(along(ellipse, -30 * degree, 28 * degree, step * degree), digit)),
  );

  it('make no short arc of five that lie on one by chance', () => {
    // y = x² (1 + x) / 2, whose radius is (1 + y′²)^(3/2) / (1 + 3x).
    const places = Array.from({ length: 116 }, (_, i) => -0.2 + (0.65 * i) / 115).map((x) => ({
      x,
      y: (x * x * (1 + x)) / 2,
    }));
    for (const arc of arcsOf(smoothed(runner(rounded(places, 2.54e-6)), within).boundary)) {
      const { x } = pointOn(arc, 0.5);
      const rho = (1 + (x + 1.5 * x * x) ** 2) ** 1.5 / (1 + 3 * x);
      expect(Math.abs(arc.radius / rho - 1)).toBeLessThan(1e-3);
    }
  });

  it('make no flats of what is curved', () => {
    const longest = (loop: Loop): number =>
      Math.max(
        ...loop
          .map((piece) => (piece.kind === 'line' ? distance(startOf(piece), endOf(piece)) : 0))
          .filter((l) => l < 0.2),
      );
    for (const places of drawings)
      expect(longest(smoothed(runner(places), within).boundary)).toBeLessThan(longest(runner(places)) + 1e-9);
  });
});

it('lines of uneven lengths are no farther from their curve than it says', () => {
  const clothoidal = (t: number): Point => ({ x: 1.1 * Math.sin(t), y: 0.8 * (1 - Math.cos(t)) });
  // A long line between two short ones: what turns at its ends is half of what it turns itself.
  for (const long of [0.015, 0.0165, 0.018]) {
    const angles = [-0.5];
    for (let i = 0; angles.at(-1)! < 0.5; i++) angles.push(angles.at(-1)! + (i % 4 === 0 ? long : 0.004));
    const bottom = angles.map(clothoidal);
    const { smoothing } = smoothed(runner(bottom), within);
    let most = 0;
    for (let i = 1; i < angles.length; i++) {
      const middle = clothoidal((angles[i]! + angles[i - 1]!) / 2);
      const [p, q] = [bottom[i - 1]!, bottom[i]!];
      most = Math.max(
        most,
        Math.abs((q.x - p.x) * (middle.y - p.y) - (q.y - p.y) * (middle.x - p.x)) / distance(p, q),
      );
    }
    expect(smoothing.curves).toBe(1);
    expect(smoothing.off).toBeGreaterThan(0.99 * most);
  }
});

it('lines a quarter of a millimetre long are the arcs they were', () => {
  const bottom = along(circle(1.2), -24 * degree, 24 * degree, 0.012 * degree);
  for (const digit of [0, 1e-9]) {
    const places = digit === 0 ? bottom : rounded(bottom, digit);
    const { boundary } = smoothed(runner(places), within);
    expect(boundary.map(({ kind }) => kind)).toEqual(['arc', 'line', 'line', 'line']);
    expect(arcsOf(boundary)[0]!.radius).toBeCloseTo(1.2, 6);
  }
});
