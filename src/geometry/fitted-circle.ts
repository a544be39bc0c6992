/** The circle nearest to places, by least squares of their distances from it: Gauss and Newton’s steps on centre and radius. */
import { leastSquares } from '../numeric/linear.js';
import { circleThrough } from './circle-through.js';
import { distance, dot, minus, plus, times, type Point } from './point.js';
import { waysAlong } from './way-along.js';

export interface FittedCircle {
  readonly centre: Point;
  readonly radius: number;
  /** The farthest place from it, metres. */
  readonly off: number;
  /** By what share of itself the radius changes from the middle of the places to their ends, as far as they show it. */
  readonly change: number;
}

/** From a circle through three of the places it takes four or five. */
const mostSteps = 20;
/** A step that changes distances by this share of the radius is rounding. */
const standsStill = 1e-14;

/** @param places in order along it, six at least; null where they decide none, as on a line */
export function fittedCircle(places: readonly Point[]): FittedCircle | null {
  const middle = times(places.reduce(plus), 1 / places.length);
  const size = Math.max(...places.map((place) => distance(place, middle)));
  const near = places.map((place) => times(minus(place, middle), 1 / size));
  const third = Math.floor(near.length / 3);
  const start = circleThrough(near[0]!, near[third]!, near[2 * third]!);
  if (start === null) return null;
  let { centre, radius } = start;
  for (let step = 0; step < mostSteps; step++) {
    const by = nextStep(near, centre, radius);
    if (by === null) return null;
    centre = plus(centre, by.moved);
    radius += by.grown;
    if (by.felt <= standsStill * radius) break;
  }
  const offs = near.map((place) => distance(place, centre) - radius);
  const off = offs.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  if (!(radius > 0 && Number.isFinite(off))) return null;
  return {
    centre: plus(middle, times(centre, size)),
    radius: radius * size,
    off: off * size,
    change: changeAlong(near, offs, radius),
  };
}

interface Step {
  readonly moved: Point;
  readonly grown: number;
  /** By what it changes the distances of places at most. */
  readonly felt: number;
}

/**
 * Centre and radius are changed by what would take the distances away if they went with them: the circle is moved along
 * itself and out, and grows about its place in the middle. On a short arc these differ by the rise of it, 1 - cos, alone.
 * @param places about [0, 0]
 */
function nextStep(places: readonly Point[], centre: Point, radius: number): Step | null {
  const far = Math.hypot(centre.x, centre.y);
  const out = far > 0 ? times(centre, -1 / far) : { x: 1, y: 0 };
  const along = { x: -out.y, y: out.x };
  const rows = places.map((place) => {
    const way = minus(place, centre);
    const from = Math.hypot(way.x, way.y);
    const unit = times(way, 1 / from);
    const rise = minus(unit, out);
    return { slopes: [dot(unit, along), dot(unit, out), dot(rise, rise) / 2], off: from - radius };
  });
  const sizes = [0, 1, 2].map((k) => Math.max(...rows.map(({ slopes }) => Math.abs(slopes[k]!))));
  const found = leastSquares(
    rows.map(({ slopes }) => slopes.map((slope, k) => slope / sizes[k]!)),
    rows.map(({ off }) => off),
  );
  if (found === null) return null;
  const [aside, outward, grown] = found.map((by, k) => by / sizes[k]!);
  return {
    moved: plus(times(along, aside!), times(out, outward! - grown!)),
    grown: grown!,
    felt: Math.max(...found.map(Math.abs)),
  };
}

/**
 * A radius that changes along the places leaves distances that a circle cannot take away. Of a curvature κ (1 + a u + b u²),
 * u from -1 to 1 along a length c, they are (a c² κ/120) P₃(u) + (b c² κ/210) P₄(u) with Legendre’s polynomials, from y″ = κ.
 * What this finds of places that are only rounded is the change that they cannot rule out.
 */
function changeAlong(places: readonly Point[], offs: readonly number[], radius: number): number {
  const along = waysAlong(places);
  const length = Math.min(along.at(-1)!, mostRadii * radius);
  const rows = along.map((place) => legendre((2 * place) / along.at(-1)! - 1));
  const found = leastSquares(rows, offs);
  if (found === null) return Infinity;
  const [third, fourth] = [found[3]!, found[4]!];
  return ((120 * Math.abs(third) + 210 * Math.abs(fourth)) * radius) / length ** 2;
}

/** Round a circle the distances do not grow with the length any more as they do on what is nearly straight. */
const mostRadii = 2;

const legendre = (u: number): number[] => [
  1,
  u,
  (3 * u * u - 1) / 2,
  (5 * u ** 3 - 3 * u) / 2,
  (35 * u ** 4 - 30 * u * u + 3) / 8,
];
