/**
 * The bottom edge of a rocker: arcs from nose to tail, tangent where they join, one of them touching y = 0 at x = at.
 * By slope φ (of the edge over the level, 0 where it touches) a place on an arc is
 *
 *     p(φ) = c + R d(φ),   d(φ) = (sin φ, -cos φ)
 *
 * so a level place x lies at sin φ = (x - c_x) / R, and a tangent joint at φ puts the next centre at
 * c' = c + (R - R') d(φ). Validity: |φ| ≤ 90° where places are measured level; any φ along the curve.
 */
import { plus, times, type Point } from '../point.js';

export interface RockerArc {
  readonly radius: number;
  /** Level distance behind `at` where this arc ends and the next begins (negative: ahead); null: to the tail. */
  readonly until: number | null;
}

export interface BottomEdge {
  readonly arcs: readonly RockerArc[];
  readonly at: number;
  /** From x = at ahead and behind to the ends. */
  readonly nose: number;
  readonly tail: number;
  readonly along: 'level' | 'curve';
}

export interface TangentArc {
  readonly centre: Point;
  readonly radius: number;
  readonly noseSlope: number;
  readonly tailSlope: number;
}

/** From nose to tail. A slope is NaN where an arc does not reach its end. */
export function tangentArcs(edge: BottomEdge): readonly TangentArc[] {
  const { arcs, nose, tail } = edge;
  const touching = arcs.findIndex(({ until }) => until === null || until > 0);
  const forward = arcs.slice(0, touching + 1).reverse();
  const backward = arcs.slice(touching);
  const ahead = forward.map(({ radius }, i) => ({ radius, reach: -(forward[i + 1]?.until ?? -nose) }));
  const behind = backward.map(({ radius, until }) => ({ radius, reach: until ?? tail }));
  const toNose = walkOut(ahead, 1, edge).reverse();
  const toTail = walkOut(behind, -1, edge);
  const slopes = [...toNose, ...toTail].map(({ slope }) => slope);
  return [...toNose.slice(0, -1), ...toTail].map(({ centre, radius }, i) => ({
    centre,
    radius,
    noseSlope: slopes[i]!,
    tailSlope: slopes[i + 1]!,
  }));
}

/** d(φ) */
const facingDown = (slope: number): Point => ({ x: Math.sin(slope), y: -Math.cos(slope) });

interface ArcOut {
  readonly radius: number;
  /** From x = at out to this arc's far end. */
  readonly reach: number;
}

/** From the touching arc out to one end: forward (sense 1) or backward (-1). The last reach may be along the curve. */
function walkOut(
  arcs: readonly ArcOut[],
  sense: 1 | -1,
  { at, along }: BottomEdge,
): { centre: Point; radius: number; slope: number }[] {
  let centre: Point = { x: at, y: arcs[0]!.radius };
  let [slope, gone] = [0, 0];
  return arcs.map(({ radius, reach }, i) => {
    const onCurve = along === 'curve' && i === arcs.length - 1;
    const before = slope;
    slope = onCurve
      ? before + (sense * (reach - gone)) / radius
      : Math.asin((sense * reach + (at - centre.x)) / radius);
    gone += sense * radius * (slope - before);
    const own = { centre, radius, slope };
    const next = arcs[i + 1];
    if (next !== undefined) centre = plus(centre, times(facingDown(slope), radius - next.radius));
    return own;
  });
}
