/** A value for something that is varied, as a maker writes it: `38-1/2 in`, `radius + 2 in`, `80 kg`. */
import { whyFarBeyond } from '../design/bounds.js';
import type { Design } from '../design/read-design.js';
import {
  describeDimension,
  dimensionOf,
  isPure,
  kindOfDimension,
  sameDimension,
} from '../quantity/dimension.js';
import { compileExpression } from '../quantity/expression.js';
import type { Mistake } from '../quantity/reading.js';
import { shown } from '../quantity/source-text.js';
import { metresPer } from '../quantity/units.js';
import { scopeOf } from './argument.js';
import type { Variable } from './variables.js';

export type ReadValue =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly mistake: Omit<Mistake, 'at'> };

/**
 * SI. A bare number is a length in the design's `units` where a length is wanted; a dimension that the design states as
 * a pure number takes one. What no file may state is refused here too.
 */
export function readValue(text: string, { name, dimension }: Variable, design: Design): ReadValue {
  const reading = compileExpression(text, scopeOf(design));
  if (!reading.ok) return reading;
  const { dimension: found, valueIn } = reading.value;
  const value = valueIn(new Map(design.dimensions.map((each) => [each.name, each.value])));
  const { units } = design.written;
  const bare = isPure(found) && sameDimension(dimension, dimensionOf.length);
  if (bare && units === undefined) return refused(`a length with its unit for ${name}`, shown(text));
  if (!bare && !sameDimension(found, dimension)) return refused(...otherKind(text, name, dimension, found));
  const inSI = bare ? value * metresPer[units!] : value;
  if (!Number.isFinite(inSI)) return refused('a finite number', shown(text));
  const kind = kindOfDimension(dimension);
  const beyond = kind && whyFarBeyond(kind, inSI);
  return beyond === null ? { ok: true, value: inSI } : refused(`${beyond} for ${name}`, shown(text));
}

function otherKind(
  text: string,
  name: string,
  wanted: Variable['dimension'],
  found: Variable['dimension'],
): [expected: string, found: string, hint?: string] {
  const expected = `${describeDimension(wanted)} for ${name}`;
  const says = `${describeDimension(found)}, ${shown(text)}`;
  if (!isPure(wanted)) return [expected, says];
  return [expected, says, `the design states ${name} as a pure number: write it without a unit`];
}

const refused = (expected: string, found: string, hint?: string): ReadValue => ({
  ok: false,
  mistake: { expected, found, ...(hint !== undefined && { hint }) },
});
