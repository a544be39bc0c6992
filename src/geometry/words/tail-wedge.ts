/**
 * A wedge glued under the tail of a rocker to flatten the curve there: from half-way (level) between where it touches and
 * its tail end, the bottom edge goes over tangentially to an arc through a place so far below the tail end as drawn. The
 * circle tangent at p, with n square to the edge and up, through q has
 *
 *     R = |q - p|² / (2 n·(q - p)),     centre p + R n
 */
import { dot, minus, plus, times, type Point } from '../point.js';
import type { BottomEdge, TangentArc } from './tangent-arcs.js';

/** d(φ), down out of the rocker. */
const facingDown = (slope: number): Point => ({ x: Math.sin(slope), y: -Math.cos(slope) });

const placeOn = ({ centre, radius }: TangentArc, slope: number): Point =>
  plus(centre, times(facingDown(slope), radius));

/**
 * The bottom edge with the wedge, from nose to tail; null where the wedge is so thick that the edge would not curve up.
 * @param arcs as drawn
 * @param thick how far it lowers the tail end, more than 0
 */
export function withTailWedge(
  arcs: readonly TangentArc[],
  { at }: Pick<BottomEdge, 'at'>,
  thick: number,
): readonly TangentArc[] | null {
  const last = arcs.at(-1)!;
  const end = placeOn(last, last.tailSlope);
  const begin = (at + end.x) / 2;
  const index = arcs.findIndex((arc) => placeOn(arc, arc.tailSlope).x <= begin);
  const under = arcs[index]!;
  const slope = Math.asin((begin - under.centre.x) / under.radius);
  const from = placeOn(under, slope);
  const to = { x: end.x, y: end.y - thick };
  const up = times(facingDown(slope), -1);
  const way = minus(to, from);
  const rise = dot(up, way);
  if (!(rise > 0)) return null;
  const radius = dot(way, way) / (2 * rise);
  const centre = plus(from, times(up, radius));
  const wedge = { centre, radius, noseSlope: slope, tailSlope: Math.asin((to.x - centre.x) / radius) };
  return [...arcs.slice(0, index), { ...under, tailSlope: slope }, wedge];
}
