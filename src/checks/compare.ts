/** What moved between two versions of a design: numbers in, differences out. */
import type { Chair } from '../chair/chair.js';
import type { NamedValue } from '../design/dimensions.js';
import type { LengthUnit } from '../quantity/units.js';
import { compareDimensions, type DimensionChange } from './compare-dimensions.js';
import { compareLimits, type LimitChange } from './compare-limits.js';
import { compareLoads, type LoadChange } from './compare-loads.js';
import { compareMasses, type MassChange } from './compare-masses.js';
import type { MeasuredLoad } from './judge-loads.js';
import type { JudgedLimit } from './verdict.js';

/** A checked design, with its named dimensions. */
export interface Comparable {
  readonly chair: Chair;
  readonly loads: readonly MeasuredLoad[];
  readonly limits: readonly JudgedLimit[];
  readonly dimensions: readonly NamedValue[];
}

export interface Comparison {
  readonly limits: readonly LimitChange[];
  readonly loads: readonly LoadChange[];
  readonly masses: MassChange;
  readonly dimensions: readonly DimensionChange[];
}

/** @param units in which differences will be read */
export const compareDesigns = (old: Comparable, now: Comparable, units: LengthUnit): Comparison => ({
  limits: compareLimits(old.limits, now.limits),
  loads: compareLoads(old.loads, now.loads, units),
  masses: compareMasses(old.chair, now.chair),
  dimensions: compareDimensions(old.dimensions, now.dimensions),
});
