/**
 * The gap between two outlines, to a twentieth of a millimetre: between their boundaries on chords that leave curves by
 * no more than half of that. 0 where they touch, cross, or one lies inside the other.
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

/** How far chords may leave their curve: two outlines then come within `touching` of the gap between them. */
const chordTolerance = touching / 2;

/**
 * The places where the chords of a piece begin. An arc's chord of half angle a leaves it by R (1 - cos a), an ellipse's,
 * a circle drawn out, by no more than that of its longer axis; n chords of a cubic by max|p''|/(8 n²).
 */
function stepsOn(piece: Piece): Point[] {
  const count = chordsOn(piece);
  return Array.from({ length: count }, (_, i) => pointOn(piece, i / count));
}

function chordsOn(piece: Piece): number {
  switch (piece.kind) {
    case 'line':
      return 1;
    case 'arc':
      return chordsRound(piece.radius, piece.sweep);
    case 'ellipse-arc':
      return chordsRound(Math.max(size(piece.axisA), size(piece.axisB)), piece.sweep);
    case 'cubic': {
      const { from, control1, control2, to } = piece;
      const bend = Math.max(turned(from, control1, control2), turned(control1, control2, to));
      return Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * chordTolerance))));
    }
  }
}

function chordsRound(radius: number, sweep: number): number {
  // 1 - cos a = 2 sin²(a/2); no fewer than four a turn.
  const halfAngle = 2 * Math.asin(Math.min(Math.sqrt(chordTolerance / (2 * radius)), Math.SQRT1_2 / 2));
  return Math.max(1, Math.ceil(Math.abs(sweep) / (2 * halfAngle)));
}

const size = (a: Point): number => Math.hypot(a.x, a.y);
const turned = (a: Point, b: Point, c: Point): number => size(minus(plus(a, c), times(b, 2)));

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
