/** Convex hull of points: A. M. Andrew, Another efficient algorithm for convex hulls in two dimensions, IPL 9 (1979). */
import { cross, distance, minus, type Point } from '../../src/geometry/point.js';

/** Corners counter-clockwise from the leftmost; points on an edge are left out. */
export function monotoneChain(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const lower = chain(sorted);
  const upper = chain(sorted.toReversed());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chain(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    while (kept.length >= 2 && !turnsLeft(kept.at(-2)!, kept.at(-1)!, point)) kept.pop();
    kept.push(point);
  }
  return kept;
}

const turnsLeft = (a: Point, b: Point, c: Point): boolean => cross(minus(b, a), minus(c, b)) > 0;

export const perimeterOf = (corners: readonly Point[]): number =>
  corners.reduce((sum, corner, i) => sum + distance(corner, corners[(i + 1) % corners.length]!), 0);

/** Shoelace: centroid and polar second moment about it over the area. */
export function uniformPolygon(corners: readonly Point[]): { centre: Point; gyration2: number } {
  let [area, x, y, polar] = [0, 0, 0, 0];
  const origin = corners[0]!;
  corners.forEach((corner, i) => {
    const [a, b] = [minus(corner, origin), minus(corners[(i + 1) % corners.length]!, origin)];
    const twice = cross(a, b);
    area += twice / 2;
    x += ((a.x + b.x) * twice) / 6;
    y += ((a.y + b.y) * twice) / 6;
    polar += (twice * (a.x ** 2 + a.x * b.x + b.x ** 2 + a.y ** 2 + a.y * b.y + b.y ** 2)) / 12;
  });
  const [cx, cy] = [x / area, y / area];
  return { centre: { x: origin.x + cx, y: origin.y + cy }, gyration2: polar / area - cx * cx - cy * cy };
}
