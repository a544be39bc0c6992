import { missing, type OrMissing } from '../numeric/missing.js';
import type { MassProperties } from '../mass.js';
import { g } from './gravity.js';
import type { Rest } from './rest.js';

/**
 * Period of a small swing about a rest, seconds:
 *
 *     T₀ = 2π sqrt((I + m H²) / (m g (ρ - H)))
 *
 * at a joint of two radii half a period of each side: T₀ = π Σ sqrt((I + m H²) / (m g (ρᵢ - H))).
 * There is none on a flat: the body stands still until it is pushed past the flat's end.
 */
export function smallPeriod({ mass, inertia }: MassProperties, rest: Rest): OrMissing<number> {
  if (rest.flat > 0)
    return missing(`rests on a flat ${(rest.flat * 1000).toFixed(0)} mm long: no small swing`);
  const aboutContact = inertia + mass * rest.height ** 2;
  const half = (hang: number): number => Math.PI * Math.sqrt(aboutContact / (mass * g * hang));
  return half(rest.hang[0]) + half(rest.hang[1]);
}
