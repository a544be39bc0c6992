/** Bodies on runners at random. Metres, kilograms, radians; of the size of anything from a toy to a swing boat. */
import fc from 'fast-check';
import type { MassProperties } from '../../src/mass.js';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { plus, type Point } from '../../src/geometry/point.js';
import { bruteSupport } from '../oracles/brute-support.js';
import { monotoneChain } from '../oracles/monotone-chain.js';
import { soundLoops } from './outlines.js';
import { roundRunner, type Runner } from '../rolling/runners.js';

export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

export interface RoundRocker {
  readonly runner: Runner;
  readonly centre: Point;
  readonly radius: number;
  readonly body: MassProperties;
  /** Leans of the ends and of rest; θ = 0 and rest lie between the ends. */
  readonly nose: number;
  readonly tail: number;
  readonly rest: number;
}

const degree = Math.PI / 180;

/** One arc, G below its centre: rest within 12°, ends 14-40° from the pose as drawn. */
export const roundRockers: fc.Arbitrary<RoundRocker> = fc
  .record({
    radius: between(-3, 3).map((power) => 2 ** power),
    hang: between(0.05, 0.8),
    gyration: between(0.05, 1),
    mass: between(1, 300),
    rest: between(-12 * degree, 12 * degree),
    nose: between(-40 * degree, -14 * degree),
    tail: between(14 * degree, 40 * degree),
    centre: fc.record({ x: between(-2, 2), y: between(-2, 2) }),
  })
  .map(({ radius, hang, gyration, mass, rest, nose, tail, centre }) => {
    const below = { x: -hang * radius * Math.sin(rest), y: -hang * radius * Math.cos(rest) };
    const body = { mass, centre: plus(centre, below), inertia: mass * (gyration * radius) ** 2 };
    return { runner: roundRunner(centre, radius, nose, tail), centre, radius, body, nose, tail, rest };
  });

/** On a grid of micrometres: places are one or are apart. */
const steps = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((step) => step / 1e6);
const places: fc.Arbitrary<Point> = fc.record({ x: steps, y: steps });

/** Corners of a convex polygon, counter-clockwise, none of them flat within rounding. */
export const convexCorners: fc.Arbitrary<Point[]> = fc
  .array(places, { minLength: 3, maxLength: 12 })
  .map(monotoneChain)
  .filter((corners) => corners.length >= 3 && thick(corners));

/** Every three corners enclose more than rounding leaves of a sliver. */
const thick = (corners: readonly Point[]): boolean =>
  corners.every((a, i) => {
    const [b, c] = [corners[(i + 1) % corners.length]!, corners[(i + 2) % corners.length]!];
    return Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) > 1e-6;
  });

/**
 * Lines and arcs from corner to corner, bulging either way: a loop that may cross itself, for whose hull that is no
 * matter.
 */
export const arcLoops: fc.Arbitrary<Loop> = fc
  .array(fc.record({ corner: places, sweep: between(-6, 6), straight: fc.boolean() }), {
    minLength: 2,
    maxLength: 9,
  })
  // Of some size: a loop shrunk to a point has no shape to test.
  .filter((steps) => steps.every(({ corner }, i) => apart(corner, steps[(i + 1) % steps.length]!.corner)))
  .map((steps) =>
    steps.flatMap(({ corner: from, sweep, straight }, i) => {
      const to = steps[(i + 1) % steps.length]!.corner;
      if (straight || Math.abs(sweep) < 0.01) return polygon([from, to]).slice(0, 1);
      return arcBetween(from, to, sweep);
    }),
  );

const apart = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) > 0.02;

function arcBetween(from: Point, to: Point, sweep: number): Loop {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const chord = Math.hypot(x, y);
  const radius = chord / (2 * Math.abs(Math.sin(sweep / 2)));
  const ahead = 1 / (2 * Math.tan(sweep / 2));
  const centre = { x: from.x + x / 2 - y * ahead, y: from.y + y / 2 + x * ahead };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return [{ kind: 'arc', centre, radius, start, sweep }];
}

/** Outlines that enclose something: at least 50 mm wide whichever way they are turned. */
export const thickLoops: fc.Arbitrary<Loop> = fc.oneof(arcLoops, soundLoops).filter((loop) => {
  const support = bruteSupport([[loop]]);
  return Array.from({ length: 360 }, (_, i) => (i * Math.PI) / 360).every(
    (lean) => support(lean) + support(lean + Math.PI) > 0.05,
  );
});
