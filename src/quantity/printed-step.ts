/** The steps in which numbers are printed for a maker (print.ts). */
import type { Kind } from '../names.js';
import { metresPer, type LengthUnit } from './units.js';

const lengthStep: Readonly<Record<LengthUnit, number>> = {
  in: metresPer.in / 16,
  mm: metresPer.mm,
  cm: metresPer.mm,
  m: metresPer.mm,
  ft: metresPer.ft / 100,
};

/** SI; null: a kind that is not printed. */
const stepOf: Readonly<Record<Exclude<Kind, 'length'>, number | null>> = {
  angle: Math.PI / 360,
  time: 0.01,
  mass: 0.1,
  force: 1,
  energy: 0.1,
  number: 0.01,
  density: null,
  inertia: null,
};

export function printedStep(kind: Kind, units: LengthUnit): number {
  const step = kind === 'length' ? lengthStep[units] : stepOf[kind];
  if (step === null) throw new RangeError(`printedStep: ${kind} is not printed`);
  return step;
}
