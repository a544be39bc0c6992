/** Mass, centre of gravity and moment of inertia, and combining them. SI; side view. */
import { distance, type Point } from './geometry/point.js';

export interface MassProperties {
  /** kg */
  readonly mass: number;
  /** Centre of gravity, metres. */
  readonly centre: Point;
  /** Moment of inertia about the centre of gravity, axis across the chair, kg m². */
  readonly inertia: number;
}

/**
 * m = Σ mᵢ, G = Σ mᵢ Gᵢ / m, I = Σ (Iᵢ + mᵢ |Gᵢ - G|²) (Huygens and Steiner).
 * @throws RangeError when the masses do not sum to something positive.
 */
export function combineMasses(parts: readonly MassProperties[]): MassProperties {
  const mass = parts.reduce((sum, part) => sum + part.mass, 0);
  if (!(mass > 0)) throw new RangeError(`combineMasses: the masses sum to ${mass} kg`);
  const centre = {
    x: parts.reduce((sum, part) => sum + part.mass * part.centre.x, 0) / mass,
    y: parts.reduce((sum, part) => sum + part.mass * part.centre.y, 0) / mass,
  };
  const inertia = parts.reduce(
    (sum, part) => sum + part.inertia + part.mass * distance(part.centre, centre) ** 2,
    0,
  );
  return { mass, centre, inertia };
}
