/**
 * The B-spline of degree five nearest to places, by least squares, through the first and the last of them: its parameter goes
 * with the lines from place to place. What places are off by is spread out between so many that its curvature is theirs.
 */
import { leastSquares } from '../numeric/linear.js';
import type { BSpline } from './b-spline.js';
import { minus, plus, times, type Point } from './point.js';
import { waysAlong } from './way-along.js';

const degree = 5;

/** So many places at least decide one of so many spans, and leave some to be spread. */
export const fewestFor = (spans: number): number => Math.ceil(1.5 * (spans + degree));

/**
 * @param spans of equal length
 * @returns null where the places do not decide it
 */
export function fittedSpline(places: readonly Point[], spans: number): BSpline | null {
  const at = sharesAlong(places);
  const [first, last] = [places[0]!, places.at(-1)!];
  const knots = [
    ...Array<number>(degree).fill(0),
    ...Array.from({ length: spans + 1 }, (_, i) => i / spans),
    ...Array<number>(degree).fill(1),
  ];
  const says = at.slice(1, -1).map((t) => saysOf(knots, spans, t));
  const rows = says.map((row) => row.slice(1, -1));
  const wanted = says.map((row, i) =>
    minus(places[i + 1]!, plus(times(first, row[0]!), times(last, row.at(-1)!))),
  );
  const [x, y] = [
    leastSquares(
      rows,
      wanted.map((to) => to.x),
    ),
    leastSquares(
      rows,
      wanted.map((to) => to.y),
    ),
  ];
  if (x === null || y === null) return null;
  const points = [first, ...x.map((left, i) => ({ x: left, y: y[i]! })), last];
  return { degree, knots, points, weights: null };
}

/** From 0 to 1, with the way along the lines. */
function sharesAlong(places: readonly Point[]): number[] {
  const ways = waysAlong(places);
  return ways.map((way) => way / ways.at(-1)!);
}

/** What each control point has to say at a parameter (M. G. Cox, C. de Boor 1972; from memory). */
function saysOf(knots: readonly number[], spans: number, t: number): number[] {
  const span = degree + Math.min(spans - 1, Math.floor(t * spans));
  let says: number[] = knots.slice(1).map((_, i) => (i === span ? 1 : 0));
  for (let k = 1; k <= degree; k++)
    says = says.slice(1).map((right, i) => {
      const [up, down] = [knots[i + k]! - knots[i]!, knots[i + k + 1]! - knots[i + 1]!];
      return (
        (up > 0 ? ((t - knots[i]!) / up) * says[i]! : 0) +
        (down > 0 ? ((knots[i + k + 1]! - t) / down) * right : 0)
      );
    });
  return says;
}
