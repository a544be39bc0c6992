/**
 * The curves of DXF’s entities, in the drawing’s plane. Arcs, circles and polylines stand in axes of their own that its
 * extrusion tells: (0, 0, 1) are the drawing’s, (0, 0, -1) are seen from behind, x turned over; others lie aslant.
 */
import { mappedPiece, scaling, type Affine } from '../../geometry/affine.js';
import { bSplinePieces } from '../../geometry/b-spline.js';
import { bulgedPiece } from '../../geometry/bulge.js';
import { fullTurn } from '../../geometry/lean.js';
import type { Piece } from '../../geometry/piece.js';
import { distance, type Point } from '../../geometry/point.js';
import { throughPoints, throughPointsRound } from '../../geometry/through-points.js';
import { shown, type Group, type Tag } from './dxf-groups.js';
import { flagsOf, numberOf, numbersOf, placeOf, placesOf, tagOf, valueOf } from './dxf-values.js';
import { Unreadable } from './unreadable.js';

export interface Curve {
  readonly pieces: readonly Piece[];
  readonly closed: boolean;
}

/** How an entity that has axes of its own lies in the drawing. */
export const behind: Affine = scaling(-1, 1);

export type Lies = 'as drawn' | 'seen from behind' | 'aslant';

/** Of a unit arrow, and of a turn: decimals of a file. */
const level = 1e-9;

export function liesOf(group: Group): Lies {
  const [x, y, z] = [valueOf(group, 210, 0), valueOf(group, 220, 0), valueOf(group, 230, 1)];
  if (Math.abs(x) > level || Math.abs(y) > level || z === 0) return 'aslant';
  return z > 0 ? 'as drawn' : 'seen from behind';
}

const turned = (curve: Curve, group: Group): Curve =>
  liesOf(group) === 'seen from behind'
    ? { ...curve, pieces: curve.pieces.map((piece) => mappedPiece(piece, behind)) }
    : curve;

const degree = Math.PI / 180;
/** From one angle counter-clockwise to another: more than nothing, a whole turn at most. */
const sweepTo = (from: number, to: number): number => {
  const sweep = (to - from) % fullTurn;
  return sweep > 0 ? sweep : sweep + fullTurn;
};

/** By what stands after the 0. */
export const curveOf: Readonly<Record<string, (group: Group, vertices: readonly Group[]) => Curve>> = {
  LINE: (group) => {
    const [from, to] = [placeOf(group, 10), placeOf(group, 11)];
    return { pieces: distance(from, to) > 0 ? [{ kind: 'line', from, to }] : [], closed: false };
  },
  ARC: (group) => {
    const [start, end] = [valueOf(group, 50) * degree, valueOf(group, 51) * degree];
    const radius = above0(group, 40);
    const arc: Piece = { kind: 'arc', centre: placeOf(group, 10), radius, start, sweep: sweepTo(start, end) };
    return turned({ pieces: [arc], closed: false }, group);
  },
  CIRCLE: (group) => {
    const circle: Piece = {
      ...{ kind: 'arc', centre: placeOf(group, 10), radius: above0(group, 40) },
      ...{ start: 0, sweep: fullTurn },
    };
    return turned({ pieces: [circle], closed: true }, group);
  },
  ELLIPSE: (group) => {
    const [axisA, ratio] = [placeOf(group, 11), above0(group, 40)];
    if (Math.hypot(axisA.x, axisA.y) === 0) throw damaged(tagOf(group, 11)!, 'an axis longer than 0');
    const [start, end] = [valueOf(group, 41, 0), valueOf(group, 42, fullTurn)];
    const whole = Math.abs(end - start - fullTurn) < level;
    const sweep = whole ? fullTurn : sweepTo(start, end);
    // The axis and the centre are the drawing’s own; the other axis is to the left of it as seen from its front.
    const left = liesOf(group) === 'seen from behind' ? -ratio : ratio;
    const axisB = { x: -left * axisA.y, y: left * axisA.x };
    return {
      pieces: [{ kind: 'ellipse-arc', centre: placeOf(group, 10), axisA, axisB, start, sweep }],
      closed: whole,
    };
  },
  LWPOLYLINE: (group) => {
    const vertices = placesOf(group, 10).map(({ at, tags }) => ({ at, bulge: bulgeOf(tags) }));
    return turned(bulged(vertices, (flagsOf(group, 70) & 1) === 1), group);
  },
  POLYLINE: (group, groups) => {
    // A spline’s frame is not on it.
    const on = groups.filter((vertex) => (flagsOf(vertex, 70) & 16) === 0);
    const vertices = on.map((vertex) => ({ at: placeOf(vertex, 10), bulge: valueOf(vertex, 42, 0) }));
    return turned(bulged(vertices, (flagsOf(group, 70) & 1) === 1), group);
  },
  SPLINE: (group) => spline(group),
};

const bulgeOf = (tags: readonly Tag[]): number => {
  const tag = tags.find(({ code }) => code === 42);
  return tag === undefined ? 0 : numberOf(tag);
};

function above0(group: Group, code: number): number {
  const value = valueOf(group, code);
  if (value > 0) return value;
  throw damaged(tagOf(group, code)!, `${group.type}: group ${code} above 0`);
}

const damaged = ({ line, value }: Tag, expected: string): Unreadable =>
  new Unreadable({ line, expected, found: shown(value) });

interface Vertex {
  readonly at: Point;
  /** Of what leads to the next. */
  readonly bulge: number;
}

function bulged(vertices: readonly Vertex[], closed: boolean): Curve {
  const nexts = closed ? [...vertices.slice(1), ...vertices.slice(0, 1)] : vertices.slice(1);
  const pieces = nexts.flatMap(({ at }, i) => {
    const from = vertices[i]!;
    return distance(from.at, at) > 0 ? [bulgedPiece(from.at, at, from.bulge)] : [];
  });
  return { pieces, closed: closed && pieces.length > 0 };
}

function spline(group: Group): Curve {
  const closed = (flagsOf(group, 70) & 1) === 1;
  const points = placesOf(group, 10).map(({ at }) => at);
  if (points.length === 0) return fitted(group, closed);
  const [knots, weights] = [numbersOf(group, 40), numbersOf(group, 41)];
  const degreeOf = valueOf(group, 71, knots.length - points.length - 1);
  const { line } = group;
  const wanted = points.length + degreeOf + 1;
  if (!Number.isInteger(degreeOf) || degreeOf < 1 || degreeOf > 25 || points.length <= degreeOf)
    throw new Unreadable({
      line,
      expected: 'SPLINE of degree 1 to 25 with more points than that',
      found: `degree ${degreeOf}, ${points.length} points`,
    });
  if (knots.length !== wanted)
    throw new Unreadable({
      line,
      expected: `SPLINE of degree ${degreeOf} with ${points.length} points: ${wanted} knots`,
      found: `${knots.length} knots`,
      hint: 'the file is damaged: draw the curve anew, or write it as arcs',
    });
  if (weights.length > 0 && (weights.length !== points.length || !weights.every((weight) => weight > 0)))
    throw new Unreadable({
      line,
      expected: `SPLINE with a weight above 0 for each of its ${points.length} points`,
      found: `${weights.length} weights`,
    });
  if (knots.some((knot, i) => knot < (knots[i - 1] ?? -Infinity)))
    throw new Unreadable({
      line,
      expected: 'SPLINE with knots that do not fall',
      found: 'a knot that falls',
    });
  const pieces = bSplinePieces({
    ...{ degree: degreeOf, knots, points },
    weights: weights.length > 0 ? weights : null,
  });
  return { pieces, closed };
}

/** Told by points that it goes through, and perhaps by its directions at the ends. */
function fitted(group: Group, closed: boolean): Curve {
  const through = placesOf(group, 11).map(({ at }) => at);
  const points = through.filter((point, i) => i === 0 || distance(point, through[i - 1]!) > 0);
  if (points.length < 2)
    throw new Unreadable({
      ...{ line: group.line, expected: 'SPLINE with control points, or with two points it goes through' },
      found: `${points.length}`,
    });
  if (closed && points.length > 2) {
    const again = distance(points[0]!, points.at(-1)!) === 0;
    return { pieces: throughPointsRound(again ? points.slice(0, -1) : points), closed };
  }
  const direction = (code: number): Point | null => {
    if (tagOf(group, code) === undefined) return null;
    const way = placeOf(group, code);
    return Math.hypot(way.x, way.y) > 0 ? way : null;
  };
  return { pieces: throughPoints(points, { start: direction(12), end: direction(13) }), closed };
}
