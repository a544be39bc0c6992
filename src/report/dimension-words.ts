/** A named dimension of a design in words, as the maker wrote it. */
import type { NamedValue } from '../design/dimensions.js';
import { kindOfDimension } from '../quantity/dimension.js';
import type { LengthUnit } from '../quantity/units.js';
import { sayOfKind } from './kind-words.js';

/** '39 in'; what is made of other dimensions with what comes out: '19-1/2 in (radius / 2)'. */
export function sayDimension(named: NamedValue, units: LengthUnit): string {
  const written = String(named.source);
  if (named.expression.names.length === 0) return written;
  const kind = kindOfDimension(named.dimension);
  const comes = kind === null ? null : sayOfKind(kind, named.value, units);
  return comes === null ? written : `${comes} (${written})`;
}
