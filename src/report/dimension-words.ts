/** A named dimension of a design in words, as the maker wrote it. */
import type { NamedValue } from '../design/dimensions.js';
import type { Kind } from '../names.js';
import { kindOfDimension } from '../quantity/dimension.js';
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

const formats: Readonly<Partial<Record<Kind, (value: number) => string>>> = {
  angle: formatDegrees,
  time: formatSeconds,
  mass: formatKilograms,
  force: formatNewtons,
  energy: formatJoules,
  number: formatNumber,
};

/** '39 in'; what is made of other dimensions with what comes out: '19-1/2 in (radius / 2)'. */
export function sayDimension(named: NamedValue, units: LengthUnit): string {
  const written = String(named.source);
  if (named.expression.names.length === 0) return written;
  const kind = kindOfDimension(named.dimension);
  if (kind === 'length') return `${formatLength(named.value, units)} (${written})`;
  const format = kind === null ? undefined : formats[kind];
  return format === undefined ? written : `${format(named.value)} (${written})`;
}
