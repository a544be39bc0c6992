/** The values of one file compiled, with its units and named values. */
import type { Kind } from '../names.js';
import { compileExpression } from '../quantity/expression.js';
import { isPure, kindOfDimension } from '../quantity/dimension.js';
import { compileQuantity, type Quantity } from '../quantity/quantity.js';
import { compileRange } from '../quantity/range.js';
import type { Mistake } from '../quantity/reading.js';
import { shown } from '../quantity/source-text.js';
import type { LengthUnit } from '../quantity/units.js';
import type { NamedValues, Source } from './dimensions.js';
import type { Words } from './places.js';
import { faultOfRange, faultOfValue, type Must, type Value, type ValueRange } from './value.js';

/** `unstated`: the file has no `units`; `unreadable`: it has, but they are at fault themselves. */
export type Units = LengthUnit | 'unstated' | 'unreadable';

export interface ValueFault extends Words, Partial<Pick<Mistake, 'at'>> {
  /** Every length without unit lacks the same line of the file: one mistake is enough. */
  readonly lacksUnits?: true;
}

export type Compiled<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly mistake: ValueFault };

export interface Compile {
  readonly value: (source: Source, kind: Kind, must: Must) => Compiled<Value>;
  readonly range: (source: Source, kind: Kind) => Compiled<ValueRange>;
  /** The named dimensions of the file. */
  readonly names: readonly string[];
  /** What a named dimension is; `other`: an area, a speed …; `unsure`: it could not be read itself. */
  readonly kindOf: (name: string) => Kind | 'other' | 'unknown' | 'unsure';
}

export function compilerOf(named: NamedValues, units: Units): Compile {
  const { scope, values, isUnsure } = named;
  const want = (kind: Kind) =>
    ({ kind, units: units === 'unstated' || units === 'unreadable' ? 'm' : units }) as const;
  const isBare = (source: Source) => {
    const expression = compileExpression(source, scope);
    return expression.ok && isPure(expression.value.dimension);
  };
  const lacksUnits = (kind: Kind, ends: readonly Source[]) =>
    units === 'unstated' && kind === 'length' && ends.some(isBare);
  return {
    value: (source, kind, must) => {
      if (isUnsure(source)) return { ok: true, value: { source, must, quantity: unsure } };
      const reading = compileQuantity(source, want(kind), scope);
      if (!reading.ok) return reading;
      if (lacksUnits(kind, [source])) return { ok: false, mistake: noUnits(source) };
      const value = { source, must, quantity: reading.value };
      return compiled(value, faultOfValue(value, reading.value.valueIn(values)));
    },
    range: (source, kind) => {
      const ends = String(source).split('..');
      if (ends.some(isUnsure)) return { ok: true, value: { source, min: null, max: null } };
      const reading = compileRange(source, want(kind), scope);
      if (!reading.ok) return reading;
      if (lacksUnits(kind, ends)) return { ok: false, mistake: noUnits(source) };
      const end = (quantity: Quantity | null) => quantity && { source, must: 'any' as const, quantity };
      const range = { source, min: end(reading.value.min), max: end(reading.value.max) };
      return compiled(range, faultAtOwnValues(range, values));
    },
    names: scope.known,
    kindOf: (name) => {
      const dimension = scope.dimensionOf(name);
      if (dimension !== undefined) return kindOfDimension(dimension) ?? 'other';
      return scope.known.includes(name) ? 'unsure' : 'unknown';
    },
  };
}

/** What stands for a value of which nothing can be said: the design is refused for what made it so. */
const unsure: Quantity = { kind: 'number', names: [], valueIn: () => NaN };

const compiled = <T>(value: T, mistake: ValueFault | undefined): Compiled<T> =>
  mistake ? { ok: false, mistake } : { ok: true, value };

function faultAtOwnValues(range: ValueRange, values: ReadonlyMap<string, number>): Words | undefined {
  const { min, max } = range;
  const low = min && min.quantity.valueIn(values);
  const high = max && max.quantity.valueIn(values);
  const faultOfEnd = (end: Value | null, value: number | null) => end && faultOfValue(end, value!);
  return faultOfEnd(min, low) ?? faultOfEnd(max, high) ?? faultOfRange(range, low, high);
}

function noUnits(source: Source): ValueFault {
  return {
    expected: 'a length with its unit, or `units` for the whole file',
    found: shown(String(source)),
    hint: 'say what a bare length means with a line such as `units: in`',
    lacksUnits: true,
  };
}
