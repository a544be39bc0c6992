/** What a child in arms weighs. */
import { missing, type OrMissing } from '../numeric/missing.js';
import { betweenPrinted, type PrintedTable } from './between-printed.js';
import { stated, type Basis, type Source } from './source.js';

/** A child as a design states it; null: not stated. */
export interface Child {
  readonly body: 'girl' | 'boy' | null;
  /** Seconds. */
  readonly age: number | null;
  readonly mass: number | null;
}

export interface ChildMass {
  readonly mass: number;
  readonly basis: Basis;
}

export const childSource: Source = {
  publication: 'WHO child growth standards, weight for age, median',
  mark: 'worked out here',
};

/** Months and kilograms, as printed. */
const median = {
  // prettier-ignore
  girl: [
    [0, 3.23], [1, 4.17], [2, 5.13], [3, 5.84], [4, 6.43], [5, 6.9], [6, 7.3], [7, 7.64], [8, 7.95],
    [9, 8.23], [10, 8.48], [11, 8.72], [12, 8.95], [15, 9.6], [18, 10.23], [21, 10.85], [24, 11.47],
  ],
  // prettier-ignore
  boy: [
    [0, 3.35], [1, 4.45], [2, 5.57], [3, 6.37], [4, 7.01], [5, 7.51], [6, 7.94], [7, 8.3], [8, 8.62],
    [9, 8.9], [10, 9.16], [11, 9.41], [12, 9.65], [15, 10.31], [18, 10.94], [21, 11.55], [24, 12.15],
  ],
} as const satisfies Record<string, PrintedTable>;

/** The month of the table is 30.4375 days, a twelfth of 365.25; seconds. */
export const month = 30.4375 * 86400;

/**
 * As stated, or the median of its age, linear between printed months; of an unknown body the mean of girl and boy.
 * @throws RangeError when the stated mass is not a positive number
 */
export function childMass({ body, age, mass }: Child): OrMissing<ChildMass> {
  if (mass !== null) {
    if (mass > 0 && mass < Infinity) return { mass, basis: stated };
    throw new RangeError(`childMass: mass ${mass} kg`);
  }
  if (age === null) return missing('neither the child’s mass nor its age is stated');
  const months = age / month;
  const girl = betweenPrinted(median.girl, months);
  const boy = betweenPrinted(median.boy, months);
  if (girl === null || boy === null)
    return missing(`an age of ${round(months)} months is outside the table, which goes from 0 to 24 months`);
  const of = { girl, boy, either: (girl + boy) / 2 }[body ?? 'either'];
  return { mass: of, basis: { from: 'age', says: saysOf(body, months) } };
}

const saysOf = (body: Child['body'], months: number): string =>
  `${body ?? 'mean of girl and boy'}, ${round(months)} months: ${childSource.publication}`;

const round = (months: number): number => Number(months.toPrecision(4));
