/** People drawn from the published tables, and how the chair is judged for them. */
import { groupedByLoad, judgeRolled } from '../checks/judge-loads.js';
import { limitsOf } from '../checks/limit.js';
import { seatedFigures } from '../checks/seated-figures.js';
import type { SitterInSI } from '../design/design.js';
import { loadsOf } from '../loads/loads-of.js';
import type { People } from '../loads/people.js';
import { rollLoads } from '../measures/record.js';
import { loadIds, loads as standardLoads } from '../names.js';
import { isMissing } from '../numeric/missing.js';
import { normalBelow, normalQuantile } from '../numeric/normal.js';
import { massAtPercentile, statureAtPercentile } from '../sitter/percentiles.js';
import type { BuiltDesign } from './design-function.js';
import { askedOf } from './judge.js';
import { trialOf, type Trial } from './trial.js';

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

const sitting = loadIds.filter((id) => standardLoads[id].sitter);

/**
 * The chair is made for somebody else: as with the second sitter of a design, limits hold only where missing them hurts.
 * @param child in the arms; null: none
 */
export function judgedForAnybody({ chair, design, people }: BuiltDesign, child: People['child']): Trial {
  const [person] = people.persons;
  if (!person) throw new RangeError('judgedForAnybody: nobody sits');
  const rolled = loadsOf(design, chair, { persons: [person], child }, sitting);
  const loads = rollLoads(chair, rolled, design.floor.rolling).map((record) => ({
    record,
    measured: askedOf(record),
  }));
  const two = { persons: [{ ...person, name: 'who it is made for' }, person], child };
  return trialOf(judgeRolled(groupedByLoad(limitsOf(design, two, seatedFigures(loads))), loads));
}
