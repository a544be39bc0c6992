/** Sums written without a plus sign: 5' 6-1/2", 12 ft 3 in, 7 lb 4 oz. */
import { sameDimension } from './dimension.js';
import { endOf, hasUnit, readMeasure, valueOf, type Measure, type MeasureWithUnit } from './measure.js';
import { refuse } from './reading.js';
import { dash, matchAt, shown, skipSpaces, vulgarFraction } from './source-text.js';
import { units, type Unit } from './units.js';
import { refuseUnclearDash } from './written-number.js';

export interface Compound {
  readonly end: number;
  /** SI. */
  readonly value: number;
}

/** The sum that begins with `first`, which may be all of it. */
export function readCompound(source: string, first: MeasureWithUnit): Compound {
  let value = valueOf(first);
  let last = first;
  for (let next = readNext(source, first); next; next = readNext(source, last)) {
    refuseUnfit(source, last, next);
    value += valueOf(next);
    last = next;
  }
  return { end: endOf(last), value };
}

const dashHere = new RegExp(`^\\s*${dash}\\s*(?=[\\d.]|${vulgarFraction})`, 'u');

/** A dash with no space around it joins feet and inches, 5'-2"; any other is left to whoever reads on. */
function readNext(source: string, last: MeasureWithUnit): MeasureWithUnit | null {
  const dashed = matchAt(source, endOf(last), dashHere);
  const at = dashed ? endOf(last) + dashed[0].length : skipSpaces(source, endOf(last));
  const next = readMeasure(source, at, true);
  if (!next) return null;
  const tight = dashed?.[0].length === 1;
  if (last.unit.mark === 'foot' && (!dashed || tight) && isInches(next)) return inInches(source, last, next);
  if (dashed) {
    if (hasUnit(next) && (tight || next.unit.mark === 'inch')) refuseUnclearSum(source, last, next);
    return null;
  }
  return hasUnit(next) ? next : refuseBareNumber(source, last, next);
}

const inch = units.get('in')!;
const isInches = ({ unit }: Measure): boolean => unit === null || sameUnit(unit, inch);

/** Behind a foot mark a number without a unit is inches: 5' 2. */
function inInches(source: string, feet: MeasureWithUnit, { number, unit }: Measure): MeasureWithUnit {
  if (unit) return { number, unit };
  refuseUnclearDash(source, number);
  const follows = matchAt(source, number.end, /^\s*[*·⋅×/÷^²³]/u);
  if (follows || (number.form === 'fraction' && number.value >= 1)) {
    const text = source.slice(feet.number.at, number.end) + (follows?.[0] ?? '');
    refuse(feet.number.at, 'feet and inches', shown(text), 'write the inch mark: `5\' 2"`');
  }
  return { number, unit: { ...inch, end: number.end, mark: null } };
}

/** Two factors that differ by less are one unit: products of factors come out within rounding. */
const factorTolerance = 1e-9;
const sameUnit = (a: Unit, b: Unit): boolean =>
  sameDimension(a.dimension, b.dimension) && Math.abs(a.factor / b.factor - 1) < factorTolerance;

function isFit(large: MeasureWithUnit, small: MeasureWithUnit): boolean {
  return (
    sameDimension(large.unit.dimension, small.unit.dimension) &&
    small.unit.factor < large.unit.factor * (1 - factorTolerance) &&
    // A whole foot in inches is no longer a part of a foot; 12 × 0.0254 falls short of 0.3048 by rounding.
    valueOf(small) < large.unit.factor * (1 - factorTolerance) &&
    large.number.form === 'whole'
  );
}

const textOf = (source: string, from: Measure, to: Measure) => source.slice(from.number.at, endOf(to));

function refuseUnfit(source: string, large: MeasureWithUnit, small: MeasureWithUnit): void {
  if (isFit(large, small)) return;
  const alike = sameDimension(large.unit.dimension, small.unit.dimension);
  const hint = alike
    ? 'a whole number of the larger unit, then less than one of it in the smaller, as in `5 ft 2 in`; else write `+` between'
    : 'write `*` between for a product';
  refuse(large.number.at, 'one quantity', `two side by side, ${shown(textOf(source, large, small))}`, hint);
}

/** `5 ft-6 in`, `5' - 6"`: five and a half feet or four and a half? */
function refuseUnclearSum(source: string, large: MeasureWithUnit, small: MeasureWithUnit): void {
  if (!isFit(large, small)) return;
  const [first, second] = [textOf(source, large, large), textOf(source, small, small)];
  const hint = `write \`${first} ${second}\` for the sum, \`(${first}) - (${second})\` for the difference`;
  refuse(large.number.at, 'a clear sum or difference', shown(textOf(source, large, small)), hint);
}

/** 5 ft 2, 1 in 3/4, 1 in 12, 42 kg 3. */
function refuseBareNumber(source: string, large: MeasureWithUnit, small: Measure): never {
  const number = source.slice(small.number.at, small.number.end);
  const found = `${shown(textOf(source, large, small))}: ${shown(number)} has no unit`;
  refuse(small.number.at, 'one quantity', found, bareNumberHint(source, large, small));
}

function bareNumberHint(source: string, large: MeasureWithUnit, small: Measure): string {
  const [first, second] = [textOf(source, large, large), textOf(source, small, small)];
  if (small.number.form === 'fraction') {
    const unit = source.slice(large.number.end, endOf(large));
    return `a fraction stands before the unit: \`${source.slice(large.number.at, large.number.end)} ${second}${unit}\``;
  }
  if (sameUnit(large.unit, units.get('ft')!)) return `write \`${first} ${second} in\``;
  if (sameUnit(large.unit, units.get('lb')!)) return `write \`${first} ${second} oz\``;
  if (sameUnit(large.unit, inch) && large.unit.mark === null) {
    return 'a slope such as `1 in 12` stands alone, and only where an angle is wanted';
  }
  return `give \`${second}\` its unit, or write \`+\` or \`*\` between`;
}
