/**
 * What the floor gives a rolling body, over its weight:
 *
 *     θ̈ = -H' (g + ρ θ̇²) / (k² + H² + H'²)
 *     N/(m g) = 1 + (H' θ̈ + (ρ - H) θ̇²) / g
 *     F/(m g) = -(H θ̈ + H' θ̇²) / g
 */
import { g } from './gravity.js';
import { motionAt, type Pass } from './rolling-time.js';

export interface FloorForce {
  /** N over weight. */
  readonly normal: number;
  /** F over weight, positive forward. */
  readonly along: number;
}

export function floorForceAt(pass: Pass, lean: number): FloorForce {
  const { height, slope, radius, armSquared, rateSquared } = motionAt(pass, lean);
  const acceleration = (-slope * (g + radius * rateSquared)) / armSquared;
  return {
    normal: 1 + (slope * acceleration + (radius - height) * rateSquared) / g,
    along: -(height * acceleration + slope * rateSquared) / g,
  };
}
