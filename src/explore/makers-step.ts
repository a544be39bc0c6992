/** The step in which a maker sets a size: whole sixteenths of an inch or whole millimetres, tenths of a pound, half degrees. */
import { kindOfDimension } from '../quantity/dimension.js';
import { isImperial, metresPer, units as unitTable, type LengthUnit } from '../quantity/units.js';
import { formatNumber } from '../quantity/print.js';
import type { Variable } from './variables.js';

const sixteenth = metresPer.in / 16;
const degree = Math.PI / 180;

/** SI. A pure number is taken for a length in the units of the design, which is what makers write without a unit. */
export function makersStep(
  { dimension, stated }: Pick<Variable, 'dimension' | 'stated'>,
  units: LengthUnit,
): number {
  const length = isImperial(units) ? sixteenth : metresPer.mm;
  switch (kindOfDimension(dimension)) {
    case 'length':
      return length;
    case 'number':
      return length / metresPer[units];
    case 'mass':
      return isImperial(units) ? unitTable.get('lb')!.factor / 10 : 0.05;
    case 'angle':
      return degree / 2;
    case 'time':
      return 0.05;
    default:
      return stated === 0 ? 1 : Math.abs(stated) / 100;
  }
}

/** A size this near to a whole step, in steps, is on it: sixteenths come back from metres rounded. */
export const rounding = 1e-9;

/** The whole steps from one size to another, both counted in. */
export const wholeSteps = (
  least: number,
  greatest: number,
  step: number,
): readonly [least: number, greatest: number] => [
  Math.ceil(least / step - rounding),
  Math.floor(greatest / step + rounding),
];

/** Of a step that makers set a size in: '1/16 in', '0.05 kg'. */
export function sayMakersStep(variable: Pick<Variable, 'dimension' | 'stated'>, units: LengthUnit): string {
  const imperial = isImperial(units);
  switch (kindOfDimension(variable.dimension)) {
    case 'length':
      return imperial ? '1/16 in' : '1 mm';
    case 'mass':
      return imperial ? '0.1 lb' : '0.05 kg';
    case 'angle':
      return '0.5 deg';
    case 'time':
      return '0.05 s';
    default:
      return formatNumber(makersStep(variable, units), stepDecimals);
  }
}

const stepDecimals = 4;
