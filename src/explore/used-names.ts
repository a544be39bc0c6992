/** Named dimensions that something of a design is made of, if only by way of others: no other changes anything. */
import type { Design } from '../design/read-design.js';
import { namesWithin, type Value } from '../design/value.js';

export function usedNames({ written, dimensions }: Design): ReadonlySet<string> {
  const used = new Set(namesWithin({ ...written, dimensions: undefined, errors: undefined }));
  // Each stands after those it is made of.
  for (const { name, expression } of dimensions.toReversed())
    if (used.has(name)) for (const other of expression.names) used.add(other);
  return used;
}

/** All values in a piece of the written design. */
export function valuesWithin(written: unknown): readonly Value[] {
  if (typeof written !== 'object' || written === null) return [];
  return 'quantity' in written ? [written as Value] : Object.values(written).flatMap(valuesWithin);
}
