/**
 * B-splines as cubics. Where the curve is a polynomial of degree three or less each of its spans is a cubic and stays
 * exactly what it is; rational ones and higher degrees are followed by cubics so closely that nobody can tell.
 *
 * The control points of a span [a, b] are values of its polar form, f(a, …, a, b, …, b) (L. Ramshaw 1989, Blossoms are
 * polar forms, Computer Aided Geometric Design 6, 323-358; cited from memory); weights ride along as a third coordinate.
 */
import type { Cubic, Piece } from './piece.js';
import { distance, minus, plus, times, type Point } from './point.js';

export interface BSpline {
  readonly degree: number;
  /** As many as points + degree + 1, never falling. */
  readonly knots: readonly number[];
  readonly points: readonly Point[];
  /** As many as points, above 0; null: it is not rational. */
  readonly weights: readonly number[] | null;
}

/** w x, w y, w */
type Weighted = readonly [number, number, number];

/**
 * The curve between its `degree`-th knots from either end.
 * @param closeness what cubics may be off it where it is none itself, as a share of its size
 */
export function bSplinePieces(spline: BSpline, closeness = asGoodAsExact): Piece[] {
  const { degree, knots, points, weights } = spline;
  const weighted = points.map(({ x, y }, i): Weighted => {
    const w = weights?.[i] ?? 1;
    return [w * x, w * y, w];
  });
  const size = points.reduce((most, point) => Math.max(most, distance(point, points[0]!)), 0);
  const polynomial = weights === null || weights.every((w) => w === weights[0]);
  const pieces: Piece[] = [];
  for (let span = degree; span < points.length; span++) {
    const [a, b] = [knots[span]!, knots[span + 1]!];
    if (!(b > a)) continue;
    const controls = Array.from({ length: degree + 1 }, (_, k) =>
      polar(spline.knots, weighted, span, [
        ...Array<number>(degree - k).fill(a),
        ...Array<number>(k).fill(b),
      ]),
    );
    pieces.push(...(polynomial && degree <= 3 ? [exactly(controls)] : followed(controls, closeness * size)));
  }
  return pieces;
}

const asGoodAsExact = 1e-10;

/** Where it is at a parameter. */
export function bSplineAt({ degree, knots, points, weights }: BSpline, at: number): Point {
  let span = degree;
  while (span + 1 < points.length && at >= knots[span + 1]!) span++;
  const weighted = points.map(({ x, y }, i): Weighted => {
    const w = weights?.[i] ?? 1;
    return [w * x, w * y, w];
  });
  return placeAt(polar(knots, weighted, span, Array<number>(degree).fill(at)));
}

/** How fast it goes there, as a B-spline of one degree less: k (p_(i+1) - p_i)/(t_(i+k+1) - t_(i+1)). */
export function rateOf({ degree, knots, points, weights }: BSpline): BSpline {
  if (weights !== null) throw new RangeError('rateOf: a rational B-spline');
  return {
    degree: degree - 1,
    knots: knots.slice(1, -1),
    points: points
      .slice(1)
      .map((point, i) => times(minus(point, points[i]!), degree / (knots[i + degree + 1]! - knots[i + 1]!))),
    weights: null,
  };
}

/** The polar form of a span at as many arguments as the degree, by de Boor’s triangle. */
function polar(
  knots: readonly number[],
  points: readonly Weighted[],
  span: number,
  args: readonly number[],
): Weighted {
  const degree = args.length;
  let row = points.slice(span - degree, span + 1);
  args.forEach((at, r) => {
    row = row.slice(1).map((right, j) => {
      const [low, high] = [knots[span - degree + r + 1 + j]!, knots[span + 1 + j]!];
      return between(row[j]!, right, (at - low) / (high - low));
    });
  });
  return row[0]!;
}

const between = (from: Weighted, to: Weighted, share: number): Weighted => [
  from[0] + share * (to[0] - from[0]),
  from[1] + share * (to[1] - from[1]),
  from[2] + share * (to[2] - from[2]),
];

const placeAt = ([x, y, w]: Weighted): Point => ({ x: x / w, y: y / w });

function exactly(controls: readonly Weighted[]): Piece {
  const [a, b, c, d] = controls.map(placeAt) as [Point, Point, Point?, Point?];
  if (c === undefined) return { kind: 'line', from: a, to: b };
  if (d !== undefined) return { kind: 'cubic', from: a, control1: b, control2: c, to: d };
  const towards = (end: Point): Point => plus(times(end, 1 / 3), times(b, 2 / 3));
  return { kind: 'cubic', from: a, control1: towards(a), control2: towards(c), to: c };
}

/** Where a span is at a share of it, and how fast it goes there. */
function movingAt(controls: readonly Weighted[], share: number): { readonly at: Point; readonly way: Point } {
  let row = controls;
  while (row.length > 2) row = row.slice(1).map((right, j) => between(row[j]!, right, share));
  const [from, to] = row as [Weighted, Weighted];
  const [x, y, w] = between(from, to, share);
  const degree = controls.length - 1;
  const rate = (i: 0 | 1 | 2): number => degree * (to[i] - from[i]);
  return {
    at: { x: x / w, y: y / w },
    way: { x: (rate(0) - (x / w) * rate(2)) / w, y: (rate(1) - (y / w) * rate(2)) / w },
  };
}

/** Cubics with its places and directions at their ends, halved until they follow it within a distance. */
function followed(controls: readonly Weighted[], within: number, from = 0, to = 1, depth = 0): Cubic[] {
  const [start, end] = [movingAt(controls, from), movingAt(controls, to)];
  const third = (to - from) / 3;
  const control1 = plus(start.at, times(start.way, third));
  const control2 = plus(end.at, times(end.way, -third));
  const cubic: Cubic = { kind: 'cubic', from: start.at, control1, control2, to: end.at };
  const off = [0.25, 0.5, 0.75].map((share) => {
    const [v, u] = [1 - share, share];
    const on = plus(
      plus(times(start.at, v ** 3), times(control1, 3 * v * v * u)),
      plus(times(control2, 3 * v * u * u), times(end.at, u ** 3)),
    );
    return distance(on, movingAt(controls, from + share * (to - from)).at);
  });
  if (Math.max(...off) <= within || depth === deepest) return [cubic];
  const middle = (from + to) / 2;
  return [
    ...followed(controls, within, from, middle, depth + 1),
    ...followed(controls, within, middle, to, depth + 1),
  ];
}

/** Halvings: a million cubics a span are enough for anything. */
const deepest = 20;
