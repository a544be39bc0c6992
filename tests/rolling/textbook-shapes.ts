/** Outlines of textbook bodies. */
import { loopMoments } from '../../src/geometry/area-moments.js';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import type { MassProperties } from '../../src/mass.js';
import type { Point } from '../../src/geometry/point.js';

/** The lower half of a disc standing on (0, 0). */
export const bowl = (r: number): Loop => [
  { kind: 'arc', centre: { x: 0, y: r }, radius: r, start: Math.PI, sweep: Math.PI },
  { kind: 'line', from: { x: r, y: r }, to: { x: -r, y: r } },
];

/** Half axes 0.5 m level and 0.4 m plumb, standing 0.4 m below its centre. */
export const ellipseAt = (centre: Point): Loop => [
  {
    kind: 'ellipse-arc',
    centre,
    axisA: { x: 0.5, y: 0 },
    axisB: { x: 0, y: 0.4 },
    start: 0,
    sweep: 2 * Math.PI,
  },
];

/** Of a uniform outline, 1 kg/m². */
export function uniform(outline: Loop): MassProperties {
  const { area, centroid, polar } = loopMoments(outline);
  return { mass: area, centre: centroid, inertia: polar };
}

/** A rectangular block, uniform: half width sin α, half height cos α, standing on y = 0. */
export function block(alpha: number) {
  const [half, high] = [Math.sin(alpha), Math.cos(alpha)];
  const outline = polygon([
    { x: -half, y: 0 },
    { x: half, y: 0 },
    { x: half, y: 2 * high },
    { x: -half, y: 2 * high },
  ]);
  return { half, high, outline, body: uniform(outline) };
}
