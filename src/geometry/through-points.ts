/**
 * A smooth curve through points: cubics with steady curvature where they meet, the parameter going with the straight way
 * between points. With h_i that way and m_i the velocity at a point
 *
 *     m_(i-1)/h_i + 2 m_i (1/h_i + 1/h_(i+1)) + m_(i+1)/h_(i+1) = 3 ((p_i - p_(i-1))/h_i² + (p_(i+1) - p_i)/h_(i+1)²)
 *
 * and at an end without a direction 2 m_0 + m_1 = 3 (p_1 - p_0)/h_1: it is straight there (C. de Boor, A Practical Guide to
 * Splines, 1978, chapter IV; cited from memory).
 */
import { solveTridiagonal } from '../numeric/linear.js';
import type { Cubic } from './piece.js';
import { distance, minus, plus, times, type Point } from './point.js';

/**
 * @param points two at least, no two in a row the same
 * @param ends directions at the ends, of any length; null: none is asked for
 */
export function throughPoints(
  points: readonly Point[],
  ends: { readonly start: Point | null; readonly end: Point | null },
): Cubic[] {
  const last = points.length - 1;
  const ways = points.slice(1).map((point, i) => distance(points[i]!, point));
  const steps = points.slice(1).map((point, i) => times(minus(point, points[i]!), 1 / ways[i]!));
  const rows = points.map((_, i) => {
    if (i === 0 || i === last) {
      const given = (i === 0 ? ends.start : ends.end) !== null;
      const beside = given ? 0 : 1;
      return { before: i === 0 ? 0 : beside, on: given ? 1 : 2, after: i === 0 ? beside : 0 };
    }
    const [before, after] = [1 / ways[i - 1]!, 1 / ways[i]!];
    return { before, on: 2 * (before + after), after };
  });
  const wanted = points.map((_, i): Point => {
    if (i === 0) return ends.start === null ? times(steps[0]!, 3) : unit(ends.start);
    if (i === last) return ends.end === null ? times(steps[last - 1]!, 3) : unit(ends.end);
    return plus(times(steps[i - 1]!, 3 / ways[i - 1]!), times(steps[i]!, 3 / ways[i]!));
  });
  const [x, y] = [
    solveTridiagonal(
      rows,
      wanted.map((to) => to.x),
    ),
    solveTridiagonal(
      rows,
      wanted.map((to) => to.y),
    ),
  ];
  const velocity = (i: number): Point => ({ x: x[i]!, y: y[i]! });
  return ways.map((way, i) => ({
    kind: 'cubic',
    from: points[i]!,
    control1: plus(points[i]!, times(velocity(i), way / 3)),
    control2: minus(points[i + 1]!, times(velocity(i + 1), way / 3)),
    to: points[i + 1]!,
  }));
}

const unit = (way: Point): Point => times(way, 1 / Math.hypot(way.x, way.y));

/** Away from an end its say falls by 2 - √3 a point (of even steps): so many points on it is below rounding. */
const farFromEnds = 32;

/** The same through points that come back to the first, as smooth there as elsewhere: run round often enough before and after. */
export function throughPointsRound(points: readonly Point[]): Cubic[] {
  const before = Math.ceil(farFromEnds / points.length) * points.length;
  const run = Array.from(
    { length: before + points.length + farFromEnds + 1 },
    (_, i) => points[i % points.length]!,
  );
  return throughPoints(run, { start: null, end: null }).slice(before, before + points.length);
}
