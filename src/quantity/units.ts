/**
 * The units a design may be written in.
 * Inch, foot, yard and pound: exact by the international yard and pound agreement of 1959 (1 yd = 0.9144 m,
 * 1 lb = 0.45359237 kg; 16 oz = 1 lb, 14 lb = 1 stone). Newton, joule: SI. Pound force: 1 lb under standard
 * gravity, 9.80665 m/s² (3rd CGPM, 1901). Year: the Julian year of 365.25 days of 86 400 s; month: a twelfth of it.
 */
import { dimensionOf, type Dimension } from './dimension.js';
import { functions } from './functions.js';

export type LengthUnit = 'in' | 'mm' | 'cm' | 'm' | 'ft';
export const metresPer: Readonly<Record<LengthUnit, number>> = {
  in: 0.0254,
  mm: 0.001,
  cm: 0.01,
  m: 1,
  ft: 0.3048,
};
export const lengthUnits = Object.keys(metresPer) as readonly LengthUnit[];

/** Makers who work in these read inches and pounds. */
export const isImperial = (unit: LengthUnit): boolean => unit === 'in' || unit === 'ft';

export interface Unit {
  /** How many SI units it is. */
  readonly factor: number;
  readonly dimension: Dimension;
}

const kilogramsPerPound = 0.45359237;
const secondsPerDay = 86_400;
const daysPerYear = 365.25;

const table: readonly (readonly [words: string, factor: number, dimension: Dimension])[] = [
  ['in inch inches', metresPer.in, dimensionOf.length],
  ['ft foot feet', metresPer.ft, dimensionOf.length],
  ['yd yard yards', 0.9144, dimensionOf.length],
  ['mm millimetre millimetres millimeter millimeters', metresPer.mm, dimensionOf.length],
  ['cm centimetre centimetres centimeter centimeters', metresPer.cm, dimensionOf.length],
  ['m metre metres meter meters', metresPer.m, dimensionOf.length],
  ['lb lbs pound pounds', kilogramsPerPound, dimensionOf.mass],
  ['oz ounce ounces', kilogramsPerPound / 16, dimensionOf.mass],
  ['stone', 14 * kilogramsPerPound, dimensionOf.mass],
  ['kg kilogram kilograms', 1, dimensionOf.mass],
  ['g gram grams', 0.001, dimensionOf.mass],
  ['s sec second seconds', 1, dimensionOf.time],
  ['ms millisecond milliseconds', 0.001, dimensionOf.time],
  ['min minute minutes', 60, dimensionOf.time],
  ['hour hours', 3600, dimensionOf.time],
  ['day days', secondsPerDay, dimensionOf.time],
  ['week weeks', 7 * secondsPerDay, dimensionOf.time],
  ['month months', (daysPerYear / 12) * secondsPerDay, dimensionOf.time],
  ['year years', daysPerYear * secondsPerDay, dimensionOf.time],
  ['deg degree degrees', Math.PI / 180, dimensionOf.angle],
  ['rad radian radians', 1, dimensionOf.angle],
  ['N newton newtons', 1, dimensionOf.force],
  ['kN', 1000, dimensionOf.force],
  ['lbf', kilogramsPerPound * 9.80665, dimensionOf.force],
  ['J joule joules', 1, dimensionOf.energy],
];

export const units: ReadonlyMap<string, Unit> = new Map(
  table.flatMap(([words, factor, dimension]) =>
    words.split(' ').map((word) => [word, { factor, dimension }]),
  ),
);
export const unitWords: readonly string[] = [...units.keys()];

/** The circle constant, under both its names. */
export const constants: ReadonlyMap<string, number> = new Map([
  ['pi', Math.PI],
  ['π', Math.PI],
]);

const lengthToAPower = new RegExp(`^(${lengthUnits.join('|')})([23])$`);

/** Areas and volumes as typed where there is no raised digit: m2, in3. */
export function unitOfWord(word: string): Unit | undefined {
  const power = lengthToAPower.exec(word);
  if (!power) return units.get(word);
  const exponent = Number(power[2]);
  return { factor: metresPer[power[1] as LengthUnit] ** exponent, dimension: [exponent, 0, 0, 0] };
}

/** Words that mean something of their own and so cannot name a dimension of a design. */
export function isReservedName(name: string): boolean {
  return unitOfWord(name) !== undefined || functions.has(name) || constants.has(name);
}
