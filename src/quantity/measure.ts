/** One number with its unit: 1 3/4 in, ⅝", 42. */
import { matchAt } from './source-text.js';
import { readFraction, readMixedNumber, readPlainNumber, type WrittenNumber } from './written-number.js';
import { readUnit, type WrittenUnit } from './written-unit.js';

export interface Measure {
  readonly number: WrittenNumber;
  readonly unit: WrittenUnit | null;
}
export type MeasureWithUnit = Measure & { readonly unit: WrittenUnit };

export const hasUnit = (measure: Measure): measure is MeasureWithUnit => measure.unit !== null;
export const endOf = ({ number, unit }: Measure): number => (unit ?? number).end;
/** SI. */
export const valueOf = ({ number, unit }: MeasureWithUnit): number => number.value * unit.factor;

/**
 * The measure at the offset; null when no number starts there.
 * 3/4 is one number before a unit, or alone when `fractionAlone`; else it is a division, and the 3 stands for itself.
 */
export function readMeasure(source: string, at: number, fractionAlone = false): Measure | null {
  const mixed = readMixedNumber(source, at);
  if (mixed) return { number: mixed, unit: readUnit(source, mixed.end) };
  const fraction = readFraction(source, at);
  const fractionUnit = fraction && readUnit(source, fraction.end);
  const oneCharacter = matchAt(source, at, /^\D/) !== null;
  if (fraction && (fractionUnit || fractionAlone || oneCharacter)) {
    return { number: fraction, unit: fractionUnit };
  }
  const plain = readPlainNumber(source, at);
  return plain && { number: plain, unit: readUnit(source, plain.end) };
}
