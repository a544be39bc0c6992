/** What to change so that a limit is met, in words. */
import type { LimitObject } from './schema.js';

export type Remedy = LimitObject['remedies'][number];

/** By id of the limit. */
export type RemediesOf = ReadonlyMap<string, readonly Remedy[]>;

/** Digits that a maker could set: a tenth of a millimetre in a length of some metres. */
const digits = 5;

/** 'radius 39 in → 41 in and tail 20 in → 22 in'. */
export const sayRemedy = ({ changes }: Remedy): string =>
  changes
    .map(({ dimension, from, to, unit }) => {
      const say = (value: number): string => `${Number(value.toPrecision(digits))} ${unit}`.trim();
      return `${dimension} ${say(from)} → ${say(to)}`;
    })
    .join(' and ');
