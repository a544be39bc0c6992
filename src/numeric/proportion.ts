/** A share counted in a sample, and the interval in which the share of all probably lies. */
import { normalQuantile } from './normal.js';

export interface Proportion {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** Of a hundred such intervals some ninety-five hold the truth. */
export const confidence = 0.95;
const z = normalQuantile((1 + confidence) / 2);

/**
 * p̂ = k/n; (p̂ + z²/2n ± z sqrt(p̂(1 - p̂)/n + z²/4n²)) / (1 + z²/n): Wilson 1927, J. American Statistical Association 22,
 * 209-212, for independent draws. Points that are more even than chance make it wide rather than narrow.
 */
export function proportionOf(count: number, of: number): Proportion {
  if (!(of > 0 && count >= 0 && count <= of)) throw new RangeError(`proportionOf: ${count} of ${of}`);
  const share = count / of;
  const middle = share + (z * z) / (2 * of);
  const reach = z * Math.sqrt((share * (1 - share)) / of + (z * z) / (4 * of * of));
  const all = 1 + (z * z) / of;
  // Rounding must not leave nothing with a little, nor everything short of all.
  const low = count === 0 ? 0 : (middle - reach) / all;
  return { share, low, high: count === of ? 1 : (middle + reach) / all };
}
