/** A design's named values for these tests, and short ways to read with them. */
import { expect } from 'vitest';
import type { Kind } from '../../src/names.js';
import { dimensionOf } from '../../src/quantity/dimension.js';
import { compileExpression, type NameScope } from '../../src/quantity/expression.js';
import { compileQuantity } from '../../src/quantity/quantity.js';
import type { Mistake, Reading } from '../../src/quantity/reading.js';
import { lengthUnits, type LengthUnit } from '../../src/quantity/units.js';

const named = {
  radius: { kind: 'length', value: 1 },
  arc: { kind: 'length', value: 0.4 },
  a: { kind: 'length', value: 0.5 },
  lean: { kind: 'angle', value: 0.1 },
  ratio: { kind: 'number', value: 3 },
} as const satisfies Record<string, { kind: Kind; value: number }>;

const dimensions = new Map(Object.entries(named).map(([name, { kind }]) => [name, dimensionOf[kind]]));
export const scope: NameScope = {
  dimensionOf: (name) => dimensions.get(name),
  known: [...dimensions.keys()],
};
export const values = new Map(Object.entries(named).map(([name, { value }]) => [name, value]));

export function valueOf<T>(reading: Reading<T>): T {
  if (reading.ok) return reading.value;
  return expect.fail(`refused: ${JSON.stringify(reading.mistake)}`);
}

export function mistakeOf(reading: Reading<unknown>): Mistake {
  if (!reading.ok) return reading.mistake;
  return expect.fail('read without a mistake');
}

/** SI. */
export function read(source: string | number, kind: Kind = 'length', units: LengthUnit = 'in'): number {
  return valueOf(compileQuantity(source, { kind, units }, scope)).valueIn(values);
}

export function refused(source: string | number, kind: Kind = 'length'): Mistake {
  return mistakeOf(compileQuantity(source, { kind, units: lengthUnits[0]! }, scope));
}

/** SI, whatever it counts. */
export function evaluate(source: string | number): number {
  return valueOf(compileExpression(source, scope)).valueIn(values);
}
