/** What a tolerance report rests on, and its shares in words. */
import { correlation, type Whom } from '../explore/anybody.js';
import { tradeErrorBasis, type ShopError } from '../explore/shop-errors.js';
import type { Tolerance } from '../explore/tolerance.js';
import { confidence, type Proportion } from '../numeric/proportion.js';
import { kindOfDimension } from '../quantity/dimension.js';
import { formatNumber } from '../quantity/print.js';
import { percentileSource } from '../sitter/percentiles.js';
import { saySize } from './fine-words.js';
import type { Assumption } from './schema.js';
import type { TextSettings } from './text-settings.js';

/** A tolerance report of one file. */
export interface ReportedTolerance {
  readonly file: string;
  readonly sha256: string | null;
  readonly tolerance: Tolerance;
}

export interface ToleranceTextSettings extends Pick<TextSettings, 'columns' | 'paint'> {
  /** Limits too that nothing moves. */
  readonly all: boolean;
}

/** Tenths of a hundredth up to ten in a hundred, whole ones above. */
const inHundred = (share: number): string => formatNumber(100 * share, share < 0.1 ? 1 : 0);

/** '0 (to 1.5)', '18 (13 to 23)'. */
export const sayShare = ({ share, low, high }: Proportion): string =>
  low === 0
    ? `${inHundred(share)} (to ${inHundred(high)})`
    : `${inHundred(share)} (${inHundred(low)} to ${inHundred(high)})`;

export const whomWords: Readonly<Record<Whom, string>> = {
  women: 'women',
  men: 'men',
  both: 'women and men, as many of each',
};

const sayError = ({ spread, size, variable }: ShopError, tolerance: Tolerance): string => {
  const said = saySize(kindOfDimension(variable.dimension), size, tolerance.design.units);
  return spread === 'even' ? `±${said}, evenly` : `normal, standard deviation ${said}`;
};

/** Errors that are alike together, in the order of the file. */
export function errorsInWords(tolerance: Tolerance): Assumption[] {
  const groups = new Map<string, Assumption & { readonly names: string[] }>();
  for (const error of tolerance.errors) {
    const value = sayError(error, tolerance);
    const basis = error.assumed ? tradeErrorBasis : 'the design’s own';
    const group = groups.get(`${value} ${basis}`) ?? { what: '', value, basis, names: [] };
    group.names.push(error.variable.name);
    groups.set(`${value} ${basis}`, group);
  }
  return [...groups.values()].map(({ names, value, basis }) => ({ what: names.join(', '), value, basis }));
}

export function toleranceAssumptions(tolerance: Tolerance): Assumption[] {
  const { settings, exact, errors } = tolerance;
  const sure = `${formatNumber(100 * confidence, 0)} in a hundred such intervals hold the truth (Wilson 1927)`;
  return [
    ...errorsInWords(tolerance).map((one) => ({ ...one, what: `error of ${one.what}` })),
    ...(exact.length === 0
      ? []
      : [
          {
            what: exact.map(({ name }) => name).join(', '),
            value: 'taken as exact',
            basis: 'no length, and `errors` does not name it',
          },
        ]),
    ...(errors.length > 1
      ? [{ what: 'errors', value: 'independent of each other', basis: 'assumption of this project' }]
      : []),
    {
      what: 'chairs',
      value: `${settings.samples} drawn, seed ${settings.seed}`,
      basis: `Sobol points (Joe and Kuo 2008), scrambled (Owen 1995); ${sure}`,
    },
    ...(settings.people === null ? [] : peopleAssumptions(settings.people)),
  ];
}

const peopleAssumptions = (whom: Whom): Assumption[] => [
  {
    what: 'people',
    value: `${whomWords[whom]}: stature and mass by percentile, those outside 1 to 99 taken to the end`,
    basis: `${percentileSource.publication} (${percentileSource.mark}); soldiers, barefoot, fitter than the public`,
  },
  {
    what: 'correlation of stature and mass',
    value: `${correlation.female} women, ${correlation.male} men`,
    basis: `ANSUR II 2012 (worked out here), by a normal copula`,
  },
];
