/**
 * The gap between two outlines, to a twentieth of a millimetre: between their boundaries on chords that leave arcs by
 * no more than that. 0 where they touch, cross, or one lies inside the other.
 */
import { boxAround, type Box } from './box.js';
import { pointOn, type Loop, type Outline, type Piece } from './piece.js';
import { cross, distance, dot, minus, plus, times, touching, type Point } from './point.js';
import { loopContains } from './winding.js';

/** An outline as the gap sees it: made once, asked often. */
export interface Silhouette {
  readonly loops: readonly Loop[];
  readonly rings: readonly (readonly Point[])[];
  readonly box: Box;
}

export function silhouetteOf(outline: Outline): Silhouette {
  const loops = outline.map(({ boundary }) => boundary);
  const rings = loops.map((loop) => loop.flatMap(stepsOn));
  return { loops, rings, box: boxAround(rings.flat()) };
}

/** A curve of a chair on this many chords leaves them by less than `touching`. */
const curveChords = 32;

/** The places where the chords of a piece begin; an arc's chord of half angle a leaves it by R (1 - cos a). */
function stepsOn(piece: Piece): Point[] {
  const count =
    piece.kind === 'line'
      ? 1
      : piece.kind === 'arc'
        ? Math.ceil(Math.abs(piece.sweep) / (2 * Math.acos(Math.max(1 - touching / piece.radius, 0))))
        : curveChords;
  return Array.from({ length: count }, (_, i) => pointOn(piece, i / count));
}

/** Metres; `farther` when it is not less than that: then it is not worked out. */
export function gapBetween(a: Silhouette, b: Silhouette, farther: number): number {
  if (apart(a.box, b.box) >= farther) return farther;
  if (inside(a, b) || inside(b, a)) return 0;
  const [ones, others] = [edgesNear(a, b.box, farther), edgesNear(b, a.box, farther)];
  let least = farther;
  for (const one of ones)
    for (const other of others)
      if (apart(one.box, other.box) < least) least = Math.min(least, between(one.ends, other.ends));
  return least <= touching ? 0 : least;
}

interface BoxedEdge {
  readonly ends: Edge;
  readonly box: Box;
}

function edgesNear({ rings }: Silhouette, box: Box, within: number): BoxedEdge[] {
  return rings.flatMap((ring) =>
    ring.flatMap((from, i): BoxedEdge[] => {
      const ends: Edge = [from, ring[(i + 1) % ring.length]!];
      const own = boxAround(ends);
      return apart(own, box) < within ? [{ ends, box: own }] : [];
    }),
  );
}

/** No less than this; the boxes themselves may be nearer by the corner than level and plumb. */
function apart(a: Box, b: Box): number {
  const level = Math.max(a.left - b.right, b.left - a.right, 0);
  const plumb = Math.max(a.foot - b.top, b.foot - a.top, 0);
  return Math.max(level, plumb);
}

/** Whether some solid of the first begins inside the second. */
const inside = (a: Silhouette, b: Silhouette): boolean =>
  a.rings.some((ring) => b.loops.some((loop) => loopContains(loop, ring[0]!)));

type Edge = readonly [Point, Point];

/** Two edges are nearest at an end of one of them, unless they cross. */
function between([a, b]: Edge, [c, d]: Edge): number {
  if (crosses([a, b], [c, d])) return 0;
  return Math.min(toEdge(a, [c, d]), toEdge(b, [c, d]), toEdge(c, [a, b]), toEdge(d, [a, b]));
}

const crosses = ([a, b]: Edge, [c, d]: Edge): boolean =>
  cross(minus(b, a), minus(c, a)) * cross(minus(b, a), minus(d, a)) < 0 &&
  cross(minus(d, c), minus(a, c)) * cross(minus(d, c), minus(b, c)) < 0;

function toEdge(point: Point, [from, to]: Edge): number {
  const along = minus(to, from);
  const share = dot(minus(point, from), along) / dot(along, along);
  return distance(point, plus(from, times(along, Math.min(Math.max(share || 0, 0), 1))));
}
