/** A number by what it counts, in the units of the workshop. */
import type { Kind } from '../names.js';
import {
  formatDegrees,
  formatJoules,
  formatKilograms,
  formatLength,
  formatNewtons,
  formatNumber,
  formatSeconds,
} from '../quantity/print.js';
import type { LengthUnit } from '../quantity/units.js';

type Say = (value: number, units: LengthUnit) => string;

const words: Readonly<Partial<Record<Kind, Say>>> = {
  length: formatLength,
  angle: (value) => formatDegrees(value),
  time: (value) => formatSeconds(value),
  force: (value) => formatNewtons(value),
  energy: (value) => formatJoules(value),
  mass: (value) => formatKilograms(value),
  number: (value) => formatNumber(value),
};

/** @param value SI. @returns null: makers have no usual unit for it (a density, an inertia) */
export const sayOfKind = (kind: Kind, value: number, units: LengthUnit): string | null =>
  words[kind]?.(value, units) ?? null;
