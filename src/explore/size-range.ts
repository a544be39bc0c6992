/** A size that is changed, within a range, in whole maker's steps. */
import { rounding, wholeSteps } from './makers-step.js';
import type { Variable } from './variables.js';

/** SI. */
export interface SizeRange {
  readonly variable: Variable;
  readonly least: number;
  readonly greatest: number;
  /** In which a maker sets it; at least one whole one lies in the range. */
  readonly step: number;
}

export const stepsIn = ({ least, greatest, step }: SizeRange): readonly [least: number, greatest: number] =>
  wholeSteps(least, greatest, step);

/** Whether the design as it stands lies in the range: a search begins there. */
export const isStatedWithin = ({ variable: { stated }, least, greatest, step }: SizeRange): boolean =>
  stated >= least - rounding * step && stated <= greatest + rounding * step;

export const within = (value: number, [least, greatest]: readonly [number, number]): number =>
  Math.min(Math.max(value, least), greatest);

/** The nearest whole step within the range. */
export const roundedIn = (value: number, range: SizeRange): number =>
  within(Math.round(value / range.step), stepsIn(range)) * range.step;
