/** All designs of a sweep, numbered: the first that is varied changes slowest. */
import type { Varied } from './varied.js';

export interface Grid {
  readonly varied: readonly Varied[];
  readonly count: number;
  /** SI, one a varied dimension. @param index from 0 */
  readonly valuesAt: (index: number) => number[];
}

/** Half a day of a machine of two cores: a range mistyped is no sweep. */
export const mostDesigns = 1e9;

export function gridOf(varied: readonly Varied[]): Grid {
  const count = varied.reduce((product, one) => product * one.count, 1);
  return {
    varied,
    count,
    valuesAt: (index) => {
      const values: number[] = [];
      let left = index;
      for (let i = varied.length - 1; i >= 0; i--) {
        const { count: own, valueAt } = varied[i]!;
        values[i] = valueAt(left % own);
        left = Math.floor(left / own);
      }
      return values;
    },
  };
}

/** A part of a sweep: designs `from` to `to`, the latter left out. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Share `share` (from 1) of `of`, as even as whole designs allow. */
export const stretchOfShare = (count: number, share: number, of: number): Stretch => ({
  from: Math.floor((count * (share - 1)) / of),
  to: Math.floor((count * share) / of),
});

/** Which chunk of a stretch. */
export const chunkOf = ({ from, to }: Stretch, size: number, chunk: number): Stretch => ({
  from: from + chunk * size,
  to: Math.min(from + (chunk + 1) * size, to),
});

export const chunksIn = ({ from, to }: Stretch, size: number): number => Math.ceil((to - from) / size);
