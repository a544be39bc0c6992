/** Which of the named dimensions of a design changed. */
import type { NamedValue } from '../design/dimensions.js';
import { sameDimension } from '../quantity/dimension.js';
import { pairsOf, type Pair } from './pairs.js';

export type DimensionChange = Pair<NamedValue>;

/** The same length written in another unit differs in its last digits only. */
const rounding = 1e-9;

export const compareDimensions = (
  old: readonly NamedValue[],
  now: readonly NamedValue[],
): DimensionChange[] => pairsOf(old, now, ({ name }) => name).filter(hasChanged);

const hasChanged = (pair: DimensionChange): boolean =>
  pair.old === null ||
  pair.new === null ||
  !sameDimension(pair.old.dimension, pair.new.dimension) ||
  Math.abs(pair.new.value - pair.old.value) >
    rounding * Math.max(Math.abs(pair.old.value), Math.abs(pair.new.value));
