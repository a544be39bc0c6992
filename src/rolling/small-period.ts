import { missing, type OrMissing } from '../numeric/missing.js';
import type { MassProperties } from '../mass.js';
import { flatLength } from './flat-length.js';
import { g } from './gravity.js';
import { unfelt, type Rest } from './rest.js';

/**
 * Period of a small swing about a rest, seconds:
 *
 *     T₀ = 2π sqrt((I + m H²) / (m g (ρ - H)))
 *
 * at a joint of two radii half a period of each side: T₀ = π Σ sqrt((I + m H²) / (m g (ρᵢ - H))).
 * There is none on a flat: the body stands still until it is pushed past the flat's end. A flat too short to be felt
 * is a joint whose arcs meet but for the rounding of their coordinates.
 */
export function smallPeriod({ mass, inertia }: MassProperties, rest: Rest): OrMissing<number> {
  if (rest.flat > unfelt) return missing(`rests on a flat ${flatLength(rest.flat)} long: no small swing`);
  if (!(rest.hang[0] > 0 && rest.hang[1] > 0))
    return missing('rests where two curves meet that are too tight to swing on: no small swing');
  const aboutContact = inertia + mass * rest.height ** 2;
  const half = (hang: number): number => Math.PI * Math.sqrt(aboutContact / (mass * g * hang));
  return half(rest.hang[0]) + half(rest.hang[1]);
}
