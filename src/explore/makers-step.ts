/** The step in which a maker sets a size: whole sixteenths of an inch or whole millimetres, tenths of a pound, half degrees. */
import { dimensionOf, sameDimension } from '../quantity/dimension.js';
import { metresPer, units as unitTable, type LengthUnit } from '../quantity/units.js';
import type { Variable } from './variables.js';

const sixteenth = metresPer.in / 16;
const degree = Math.PI / 180;

/** SI. A pure number is taken for a length in the units of the design, which is what makers write without a unit. */
export function makersStep(
  { dimension, stated }: Pick<Variable, 'dimension' | 'stated'>,
  units: LengthUnit,
): number {
  const inches = units === 'in' || units === 'ft';
  const length = inches ? sixteenth : metresPer.mm;
  const is = (kind: keyof typeof dimensionOf): boolean => sameDimension(dimension, dimensionOf[kind]);
  if (is('length')) return length;
  if (is('number')) return length / metresPer[units];
  if (is('mass')) return inches ? unitTable.get('lb')!.factor / 10 : 0.05;
  if (is('angle')) return degree / 2;
  if (is('time')) return 0.05;
  return Math.abs(stated) > 0 ? Math.abs(stated) / 100 : 1;
}

/** The nearest whole step to a value, as a number of steps. */
export const stepsTo = (value: number, step: number): number => Math.round(value / step);
