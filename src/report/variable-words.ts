/** What is varied, in the units of the design: numbers for files, words for people. */
import type { Kind } from '../names.js';
import { kindOfDimension, type Dimension } from '../quantity/dimension.js';
import { formatLengthFinely, formatNumber } from '../quantity/print.js';
import {
  isImperial,
  lengthUnits,
  metresPer,
  units as unitTable,
  type LengthUnit,
} from '../quantity/units.js';

/** Those that a varied size is told in. */
export const toldUnits = ['', ...lengthUnits, 'lb', 'kg', 's', 'deg', 'N', 'J'] as const;
type ToldUnit = (typeof toldUnits)[number];

export interface UnitOf {
  /** '' of a pure number, and of what has no unit of its own here: that stays in SI. */
  readonly unit: ToldUnit;
  /** How many SI units it is. */
  readonly factor: number;
}

const usual: Readonly<Partial<Record<Kind, ToldUnit>>> = {
  mass: 'kg',
  time: 's',
  angle: 'deg',
  force: 'N',
  energy: 'J',
};

/** The unit in which a dimension is told; masses in pounds where lengths are in inches or feet. */
export function unitOf({ dimension }: { readonly dimension: Dimension }, units: LengthUnit): UnitOf {
  const kind = kindOfDimension(dimension);
  if (kind === 'length') return { unit: units, factor: metresPer[units] };
  const unit = kind === 'mass' && isImperial(units) ? 'lb' : kind === null ? undefined : usual[kind];
  return unit === undefined ? { unit: '', factor: 1 } : { unit, factor: unitTable.get(unit)!.factor };
}

/** '36-1/2 in', '12.5 deg', '42'. @param value in that unit */
export function sayInUnit(value: number, unit: string): string {
  if (Object.hasOwn(metresPer, unit)) {
    const length = unit as LengthUnit;
    return formatLengthFinely(value * metresPer[length], length);
  }
  return `${formatNumber(value, decimals)} ${unit}`.trimEnd();
}

/** Of anything but lengths. */
const decimals = 3;
