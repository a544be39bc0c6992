/** What small errors do, finer than a maker reads a chair: tenths of a degree, 32nds of an inch, thousandths of a second. */
import { measures, type Kind, type MeasureKey } from '../names.js';
import {
  formatDegreesFine,
  formatInches,
  formatKilograms,
  formatLengthFinely,
  formatMillimetres,
  formatNewtons,
  formatNumber,
  formatSeconds,
} from '../quantity/print.js';
import { isImperial, type LengthUnit } from '../quantity/units.js';
import { sayValue } from './measure-words.js';

/** '7.4°', '4-5/32 in', '2.08 s'. */
export function sayFinely(key: MeasureKey, value: number, units: LengthUnit): string {
  switch (measures[key].kind) {
    case 'length':
      return isImperial(units) ? formatInches(value, 32) : formatMillimetres(value, 1);
    case 'angle':
      return formatDegreesFine(value, 1);
    case 'time':
      return formatSeconds(value, 3);
    case 'number':
      return formatNumber(value, 3);
    default:
      return sayValue(key, value, units);
  }
}

/** '+0.14°', '-1/64 in', '+0.002 s'; '0' when it is less than half of the last digit. */
export function sayEffect(key: MeasureKey, change: number, units: LengthUnit): string {
  const said = magnitudeOf(measures[key].kind, Math.abs(change), units);
  return /[1-9]/.test(said) ? `${change < 0 ? '-' : '+'}${said}` : '0';
}

function magnitudeOf(kind: Kind, size: number, units: LengthUnit): string {
  switch (kind) {
    case 'length':
      return isImperial(units) ? formatInches(size, 64) : formatMillimetres(size, 1);
    case 'angle':
      return formatDegreesFine(size, 2);
    case 'time':
      return formatSeconds(size, 3);
    case 'force':
      return formatNewtons(size);
    case 'mass':
      return formatKilograms(size);
    default:
      return formatNumber(size, 3);
  }
}

/** Under half a millimetre, hundredths are told. */
const finer = 0.0005;

/** How far off a named dimension may be: '1/32 in', '0.8 mm', '0.5°'. */
export function saySize(kind: Kind | null, size: number, units: LengthUnit): string {
  const written = (factor: number, unit: string): string =>
    `${Number((size / factor).toPrecision(3))}${unit}`;
  switch (kind) {
    case 'length':
      if (isImperial(units)) return formatLengthFinely(size, 'in');
      return formatMillimetres(size, size < finer ? 2 : 1);
    case 'angle':
      return written(Math.PI / 180, '°');
    case 'mass':
      return written(1, ' kg');
    case 'time':
      return written(1, ' s');
    case 'number':
    case null:
      return written(1, '');
    case 'force':
      return written(1, ' N');
    case 'energy':
      return written(1, ' J');
    case 'density':
      return written(1, ' kg/m³');
    case 'inertia':
      return written(1, ' kg m²');
  }
}
