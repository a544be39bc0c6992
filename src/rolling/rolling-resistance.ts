/**
 * Rolling resistance: the floor's force acts a length c ahead of the contact, in the sense it moves, so that a moment
 * c N is against the motion. With σ = sgn θ̇ and N = m (g + H'θ̈ + (ρ - H) θ̇²), for one rigid body exactly
 *
 *     θ̈ = -m [H'(g + ρ θ̇²) + σ c (g + (ρ - H) θ̇²)] / (A + σ c m H')
 *     A = I + m (H² + H'²)
 *
 * At a standstill it holds while |H'| ≤ c: rest is a band, ±c/(ρ - H) wide.
 */
import type { OdePoint, Rate } from '../numeric/ode.js';
import { g } from './gravity.js';
import { shapeOn, slopeOn, type Stretch } from './landscape.js';

export interface Rolling {
  readonly stretch: Stretch;
  /** k² = I/m, m² */
  readonly gyration2: number;
  /** c, metres */
  readonly resistance: number;
  /** σ: 1 when it rolls to larger leans. */
  readonly sense: 1 | -1;
}

/** The state is (θ, θ̇). */
export function rollingRate({ stretch, gyration2, resistance, sense }: Rolling): Rate {
  const drag = sense * resistance;
  return (_, [lean, rate]) => {
    const { height, slope, radius } = shapeOn(stretch, lean!);
    const squared = rate! * rate!;
    const fall = slope * (g + radius * squared) + drag * (g + (radius - height) * squared);
    return [rate!, -fall / (gyration2 + height * height + slope * slope + drag * slope)];
  };
}

/** N over weight, 1 + (H'θ̈ + (ρ - H) θ̇²)/g. */
export function rollingLoad(rolling: Rolling, { time, state }: OdePoint): number {
  const [lean, rate] = [state[0]!, state[1]!];
  const { height, slope, radius } = shapeOn(rolling.stretch, lean);
  const acceleration = rollingRate(rolling)(time, state)[1]!;
  return 1 + (slope * acceleration + (radius - height) * rate * rate) / g;
}

/** Whether a body at a standstill stays. */
export const holdsStill = (stretch: Stretch, lean: number, resistance: number): boolean =>
  Math.abs(slopeOn(stretch, lean)) <= resistance;
