/**
 * SVG's elliptical arc command as a piece (SVG 1.1, appendix F.6), y up: sweep flag 1 runs counter-clockwise.
 * Turned and scaled so that the ellipse is the unit circle, the centre lies on the bisector of the chord; radii that
 * cannot span the chord are scaled up until they just do (F.6.6).
 */
import { fullTurn } from '../lean.js';
import type { Piece } from '../piece.js';
import { dot, midpoint, minus, plus, times, unitAt, type Point } from '../point.js';

export interface SvgArc {
  readonly from: Point;
  readonly to: Point;
  readonly radiusX: number;
  readonly radiusY: number;
  /** Of the ellipse's x axis, radians. */
  readonly turn: number;
  readonly large: boolean;
  readonly counterClockwise: boolean;
}

/**
 * Below this, 1 - (half chord / radius)² comes from the decimals of the ends: a half circle. Its root would put the
 * centre a millionth of the radius off; taken as 0 it moves the ends by 5e-13 of the radius.
 */
const halfCircle = 1e-12;

/** From one place to another; a straight line when a radius is 0 (F.6.2). */
export function svgArc(arc: SvgArc): Piece {
  const { from, to, large, counterClockwise } = arc;
  if (arc.radiusX === 0 || arc.radiusY === 0) return { kind: 'line', from, to };
  const half = times(minus(to, from), 0.5);
  const { axisA, axisB } = axesSpanning(half, arc);
  const h = { x: dot(half, axisA) / dot(axisA, axisA), y: dot(half, axisB) / dot(axisB, axisB) };
  const halfChord = Math.hypot(h.x, h.y);
  const squared = (1 - halfChord) * (1 + halfChord);
  const toCentre = squared > halfCircle ? Math.sqrt(squared) : 0;
  const left = (large === counterClockwise ? -toCentre : toCentre) / halfChord;
  const c = { x: -h.y * left, y: h.x * left };
  const shortWay = 2 * Math.atan2(halfChord, toCentre);
  const angle = large ? fullTurn - shortWay : shortWay;
  const centre = plus(midpoint(from, to), plus(times(axisA, c.x), times(axisB, c.y)));
  const start = Math.atan2(-h.y - c.y, -h.x - c.x);
  const sweep = counterClockwise ? angle : -angle;
  if (Math.abs(arc.radiusX) !== Math.abs(arc.radiusY))
    return { kind: 'ellipse-arc', centre, axisA, axisB, start, sweep };
  return { kind: 'arc', centre, radius: Math.hypot(axisA.x, axisA.y), start: start + arc.turn, sweep };
}

/** The half axes, scaled up when half the chord does not fit in. */
function axesSpanning(half: Point, { radiusX, radiusY, turn }: SvgArc): { axisA: Point; axisB: Point } {
  const axisA = times(unitAt(turn), Math.abs(radiusX));
  const axisB = times(unitAt(turn + Math.PI / 2), Math.abs(radiusY));
  const reach = Math.hypot(dot(half, axisA) / dot(axisA, axisA), dot(half, axisB) / dot(axisB, axisB));
  const stretch = Math.max(1, reach);
  return { axisA: times(axisA, stretch), axisB: times(axisB, stretch) };
}
