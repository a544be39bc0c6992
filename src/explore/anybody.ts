/** People drawn from the published tables. */
import type { SitterInSI } from '../design/design.js';
import { isMissing } from '../numeric/missing.js';
import { normalBelow, normalQuantile } from '../numeric/normal.js';
import { massAtPercentile, statureAtPercentile } from '../sitter/percentiles.js';

export type Whom = 'women' | 'men' | 'both';

/** Correlation of stature and mass: ANSUR II 2012, worked out here from the public data. */
export const correlation = { female: 0.53, male: 0.47 } as const;

/** Where the tables end: who lies outside is taken to the end. */
const printed = { least: 1, most: 99 } as const;
const percentile = (z: number): number =>
  Math.min(Math.max(100 * normalBelow(z), printed.least), printed.most);

/** Coordinates of a point that a body takes. */
export const bodyCoordinates = 3;

const notMeasured = { kneeHollow: null, buttockToKneeHollow: null, elbowAboveSeat: null };

/**
 * Percentiles of two normal numbers, z₁ and ρ z₁ + sqrt(1 - ρ²) z₂ (a normal copula): the tables give what stands there.
 * @param point three numbers between 0 and 1, evenly distributed
 */
export function drawnSitter(whom: Whom, [sex, tall, heavy]: readonly number[]): SitterInSI {
  const body = whom === 'both' ? (sex! < 0.5 ? 'female' : 'male') : whom === 'women' ? 'female' : 'male';
  const rho = correlation[body];
  const [z1, z2] = [normalQuantile(tall!), normalQuantile(heavy!)];
  const stature = statureAtPercentile(body, percentile(z1));
  const mass = massAtPercentile(body, percentile(rho * z1 + Math.sqrt(1 - rho * rho) * z2));
  if (isMissing(stature) || isMissing(mass)) throw new RangeError('drawnSitter: outside the tables');
  return { name: 'anybody', body, stature, mass, percentile: null, measured: notMeasured };
}
