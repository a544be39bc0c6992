/** SI numbers as a maker reads them. Every one rounds half away from zero, the same on both sides. */
import type { LengthUnit } from './units.js';
import { metresPer, units } from './units.js';

/**
 * A step count this near below a half is a half: 1/32 in comes back from metres as 0.49999999999999994 sixteenths.
 * In steps; far below what any printed step can show.
 */
const roundingNoise = 1e-9;

/** How many whole steps, half away from zero; never -0. */
function stepsIn(name: string, value: number, step: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`${name}: ${value}`);
  const steps = Math.floor(Math.abs(value) / step + 0.5 + roundingNoise);
  return steps === 0 ? 0 : Math.sign(value) * steps;
}

/** With at most `digits` decimals, zeros at the end left away. */
function decimal(name: string, value: number, digits: number): string {
  return String(stepsIn(name, value, 10 ** -digits) / 10 ** digits);
}

/** '39-1/2', '3/8', '-1/16', '0': whole steps of 1/denominator, reduced. */
function mixed(steps: number, denominator: number): string {
  const sign = steps < 0 ? '-' : '';
  const whole = Math.floor(Math.abs(steps) / denominator);
  let [over, under] = [Math.abs(steps) % denominator, denominator];
  for (; over > 0 && over % 2 === 0; over /= 2) under /= 2;
  if (over === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${over}/${under}` : `${sign}${whole}-${over}/${under}`;
}

/** '39-1/2 in', '3/8 in', '-1/16 in', '0 in'. */
export function formatInches(metres: number, denominator: 16 | 32 | 64 = 16): string {
  return `${mixed(stepsIn('formatInches', metres, metresPer.in / denominator), denominator)} in`;
}

/** A stature: `5' 6-1/2"`, to the half inch. */
export function formatFeetAndInches(metres: number): string {
  const halves = stepsIn('formatFeetAndInches', metres, metresPer.in / 2);
  const sign = halves < 0 ? '-' : '';
  const feet = Math.floor(Math.abs(halves) / 24);
  return `${sign}${feet}' ${mixed(Math.abs(halves) % 24, 2)}"`;
}

/** '905 mm'. */
export function formatMillimetres(metres: number, digits = 0): string {
  return `${decimal('formatMillimetres', metres / metresPer.mm, digits)} mm`;
}

/** A length in the unit a design is written in; metric ones to the millimetre, feet to the hundredth. */
export function formatLength(metres: number, unit: LengthUnit): string {
  if (unit === 'in') return formatInches(metres);
  const digits = { mm: 0, cm: 1, m: 3, ft: 2 }[unit];
  return `${decimal('formatLength', metres / metresPer[unit], digits)} ${unit}`;
}

/** As finely as it was chosen: '36-3/64 in' where it is whole 64ths, else with decimals, '36.02 in'. */
export function formatLengthFinely(metres: number, unit: LengthUnit): string {
  const steps = (metres / metresPer.in) * 64;
  if (unit === 'in' && Math.abs(steps - Math.round(steps)) < fine)
    return `${mixed(Math.round(steps), 64)} in`;
  return `${decimal('formatLengthFinely', metres / metresPer[unit], { in: 4, mm: 2, cm: 3, m: 5, ft: 4 }[unit])} ${unit}`;
}

/** Of a 64th: far above rounding, far below what the decimals show. */
const fine = 1e-6;

/** The same rounded up: a length that must be exceeded is still exceeded as printed. */
export function formatLengthUp(metres: number, unit: LengthUnit): string {
  const step = {
    in: metresPer.in / 16,
    mm: metresPer.mm,
    cm: metresPer.mm,
    m: metresPer.mm,
    ft: metresPer.ft / 100,
  }[unit];
  return formatLength(Math.ceil(metres / step) * step, unit);
}

/** To the half degree, of radians: '6.5°', '6°'. */
export function formatDegrees(radians: number): string {
  return `${stepsIn('formatDegrees', radians * (180 / Math.PI), 0.5) / 2}°`;
}

/** '0.14°': how much a small change turns. */
export function formatDegreesFine(radians: number, digits: 1 | 2): string {
  return `${decimal('formatDegreesFine', radians * (180 / Math.PI), digits)}°`;
}

/** '2.08 s'. */
export function formatSeconds(seconds: number, digits = 2): string {
  return `${decimal('formatSeconds', seconds, digits)} s`;
}

/** '42.5 kg'. */
export function formatKilograms(kilograms: number): string {
  return `${decimal('formatKilograms', kilograms, 1)} kg`;
}

/** '93.5 lb'. */
export function formatPounds(kilograms: number): string {
  return `${decimal('formatPounds', kilograms / units.get('lb')!.factor, 1)} lb`;
}

/** '90 N'. */
export function formatNewtons(newtons: number): string {
  return `${decimal('formatNewtons', newtons, 0)} N`;
}

/** The pull of a spring balance marked in pounds: '20 lbf'. */
export function formatPoundsForce(newtons: number): string {
  return `${decimal('formatPoundsForce', newtons / units.get('lbf')!.factor, 0)} lbf`;
}

/** '12.5 J'. */
export function formatJoules(joules: number): string {
  return `${decimal('formatJoules', joules, 1)} J`;
}

/** A pure number: '0.25'. */
export function formatNumber(value: number, digits = 2): string {
  return decimal('formatNumber', value, digits);
}
