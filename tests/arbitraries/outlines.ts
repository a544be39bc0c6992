/** Outlines at random that are sound by construction. Metres; every draw is of the size of a chair's part. */
import fc from 'fast-check';
import { polygon, type Arc, type Loop, type Piece } from '../../src/geometry/piece.js';
import { cross, distance, dot, minus, plus, times, unitAt, type Point } from '../../src/geometry/point.js';
import { rocker, type Rocker, type RockerWord } from '../../src/geometry/words/rocker.js';

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

export const places: fc.Arbitrary<Point> = fc.record({ x: between(-1, 1), y: between(-1, 1) });

/** Directions of four or more corners around a centre, none more than 144° from the next. */
const directions: fc.Arbitrary<number[]> = fc
  .array(between(0.5, 1), { minLength: 4, maxLength: 12 })
  .map((steps) => {
    const whole = steps.reduce((sum, step) => sum + step, 0);
    let turned = 0;
    return steps.map((step) => (turned += (2 * Math.PI * step) / whole));
  });

/** Corners on an ellipse, counter-clockwise: convex. */
export const convexPolygons: fc.Arbitrary<Loop> = fc
  .record({ centre: places, directions, wide: between(0.05, 0.5), high: between(0.05, 0.5) })
  .map(({ centre, directions, wide, high }) =>
    polygon(directions.map((t) => plus(centre, { x: wide * Math.cos(t), y: high * Math.sin(t) }))),
  );

/**
 * Lines and arcs from corner to corner around a centre. Each piece stays within the wedge between the directions of
 * its corners, since an arc lies between its chord and the tangents at its ends: so no two pieces meet but at corners.
 */
export const stars: fc.Arbitrary<{ centre: Point; boundary: Loop }> = fc
  .record({
    centre: places,
    corners: directions.chain((list) =>
      fc.tuple(
        ...list.map((direction) =>
          fc.record({
            direction: fc.constant(direction),
            away: between(0.1, 0.5),
            bulge: between(-0.9, 0.9),
          }),
        ),
      ),
    ),
  })
  .map(({ centre, corners }) => {
    const at = corners.map(({ direction, away }) => plus(centre, times(unitAt(direction), away)));
    const boundary = corners.map(({ bulge }, i) => bulged(centre, at[i]!, at[(i + 1) % at.length]!, bulge));
    return { centre, boundary };
  });

export const starShaped: fc.Arbitrary<Loop> = stars.map(({ boundary }) => boundary);

/** An arc outward (bulge > 0) or inward by a share of the angle that would leave the wedge; a line for little bulge. */
function bulged(centre: Point, from: Point, to: Point, bulge: number): Piece {
  if (Math.abs(bulge) < 0.1) return { kind: 'line', from, to };
  const chord = minus(to, from);
  const inward = Math.min(
    angleBetween(chord, minus(centre, from)),
    angleBetween(minus(from, to), minus(centre, to)),
  );
  const outward = Math.min(
    angleBetween(chord, minus(from, centre)),
    angleBetween(minus(from, to), minus(to, centre)),
  );
  return arcOnChord(from, to, 2 * bulge * (bulge > 0 ? outward : inward));
}

const angleBetween = (a: Point, b: Point): number => Math.abs(Math.atan2(cross(a, b), dot(a, b)));

/** The arc of a given sweep (positive: counter-clockwise) from one place to another. */
export function arcOnChord(from: Point, to: Point, sweep: number): Arc {
  const chord = minus(to, from);
  const radius = distance(from, to) / (2 * Math.sin(Math.abs(sweep) / 2));
  const left = { x: -chord.y, y: chord.x };
  const centre = plus(times(plus(from, to), 0.5), times(left, 1 / (2 * Math.tan(sweep / 2))));
  const out = minus(from, centre);
  return { kind: 'arc', centre, radius, start: Math.atan2(out.y, out.x), sweep };
}

/** Rockers of one arc. */
export const rockerWords: fc.Arbitrary<RockerWord> = fc
  .record({
    radius: between(0.4, 2),
    depthShare: between(0.02, 0.2),
    noseShare: between(0.1, 0.95),
    tailShare: between(0.1, 0.95),
    at: between(-0.3, 0.3),
  })
  .map(({ radius, depthShare, noseShare, tailShare, at }) => ({
    arcs: [{ radius, until: null }],
    depth: depthShare * radius,
    nose: noseShare * radius,
    tail: tailShare * radius,
    at,
    along: 'level',
  }));

/** Rockers of up to three tangent arcs; reach and depth stay well within the smallest radius. */
export const listedRockerWords: fc.Arbitrary<RockerWord> = fc
  .record({
    radii: fc.array(between(0.6, 2), { minLength: 1, maxLength: 3 }),
    depth: between(0.02, 0.1),
    nose: between(0.2, 0.5),
    tail: between(0.2, 0.5),
    at: between(-0.3, 0.3),
    along: fc.constantFrom('level', 'curve'),
  })
  .map(({ radii, tail, nose, ...rest }) => {
    const step = (nose + tail) / radii.length;
    const arcs = radii.map((radius, i) => ({
      radius,
      until: i + 1 < radii.length ? (i + 1) * step - nose : null,
    }));
    // Along the curve an end comes nearer than level: joints stay within 0.9 of it.
    const shrunk = arcs.map(({ radius, until }) => ({ radius, until: until === null ? null : 0.9 * until }));
    return { ...rest, arcs: shrunk, nose, tail };
  });

export const rockers: fc.Arbitrary<Rocker> = fc.oneof(rockerWords, listedRockerWords).map((word) => {
  const made = rocker(word);
  if (!made.ok) throw new RangeError(`rockers: ${JSON.stringify(made.flaws)}`);
  return made;
});

export const soundLoops: fc.Arbitrary<Loop> = fc.oneof(
  convexPolygons,
  starShaped,
  rockers.map(({ boundary }) => boundary),
);
