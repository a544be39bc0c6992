/** The arc of a fitted circle from one place to another: both lie on it but for what drawings are rough by. */
import { circleThrough } from '../../../geometry/circle-through.js';
import { fullTurn } from '../../../geometry/lean.js';
import type { FittedCircle } from '../../../geometry/fitted-circle.js';
import type { Arc } from '../../../geometry/piece.js';
import { distance, midpoint, minus, plus, times, unitAt, type Point } from '../../../geometry/point.js';

/** Of less a turn an arc through two places is told best by its radius, of more by a third place: radians. */
const radiusTells = 2;

/** It begins and ends in these very places; @param left whether it turns left */
export function arcBetween(from: Point, to: Point, circle: FittedCircle, left: boolean): Arc {
  const angleOf = (place: Point): number => Math.atan2(place.y - circle.centre.y, place.x - circle.centre.x);
  const turned = (angleOf(to) - angleOf(from)) * (left ? 1 : -1);
  const sweep = turned > 0 ? turned : turned + fullTurn;
  const top = plus(
    circle.centre,
    times(unitAt(angleOf(from) + ((left ? 1 : -1) * sweep) / 2), circle.radius),
  );
  const { centre, radius } =
    sweep < radiusTells ? beside(from, to, circle.radius, left) : (circleThrough(from, top, to) ?? circle);
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const end = Math.atan2(to.y - centre.y, to.x - centre.x);
  const own = (end - start) * (left ? 1 : -1);
  const round = own - fullTurn * Math.round((own - sweep) / fullTurn);
  return { kind: 'arc', centre, radius, start, sweep: left ? round : -round };
}

/** The circle of a radius through two places, its centre to the left or to the right of the way between them. */
function beside(from: Point, to: Point, radius: number, left: boolean): { centre: Point; radius: number } {
  const half = distance(from, to) / 2;
  const way = times(minus(to, from), 1 / (2 * half));
  const out = (left ? 1 : -1) * Math.sqrt(radius * radius - half * half);
  return { centre: plus(midpoint(from, to), { x: -way.y * out, y: way.x * out }), radius };
}
