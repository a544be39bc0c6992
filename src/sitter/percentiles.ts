/**
 * Stature and mass by percentile. Of soldiers, barefoot, fitter than the public. Stature and mass go together only
 * loosely (correlation about 0.5): one percentile for both is a person who is seldom met.
 */
import { missing, type OrMissing } from '../numeric/missing.js';
import { betweenPrinted } from './between-printed.js';
import type { Body } from './segment-table.js';
import type { Source } from './source.js';

export const percentileSource: Source = {
  publication: 'ANSUR II 2012, public data of 1986 women and 4082 men',
  mark: 'worked out here',
};

const printedPercentiles = [1, 5, 25, 50, 75, 95, 99] as const;

/** Metres and kilograms. */
const table = {
  female: {
    stature: [1.4825, 1.525, 1.5862, 1.626, 1.672, 1.74, 1.7776],
    mass: [46.7, 51.3, 60.1, 66.8, 74.6, 87.1, 97.5],
  },
  male: {
    stature: [1.6016, 1.648, 1.71, 1.755, 1.802, 1.87, 1.927],
    mass: [57.8, 64.4, 75.6, 84.6, 94.4, 110.7, 124.2],
  },
} as const;

export const statureAtPercentile = (body: Body, percentile: number): OrMissing<number> =>
  atPercentile(table[body].stature, percentile);

export const massAtPercentile = (body: Body, percentile: number): OrMissing<number> =>
  atPercentile(table[body].mass, percentile);

function atPercentile(values: readonly number[], percentile: number): OrMissing<number> {
  const printed = printedPercentiles.map((at, i) => [at, values[i]!] as const);
  return (
    betweenPrinted(printed, percentile) ??
    missing(`percentile ${percentile} is outside the table, which goes from 1 to 99`)
  );
}

/** The statures between which the table speaks. */
export function printedStatures(body: Body): { readonly least: number; readonly greatest: number } {
  const { stature } = table[body];
  return { least: stature[0], greatest: stature[6] };
}
