/**
 * Named dimensions that are written as pure numbers and of which everything that uses them takes a length in the design's
 * `units`: as it stands, halved or doubled, other sizes added. A ratio, a count, or what is used as both stays a number.
 */
import type { Design } from '../design/read-design.js';
import type { Value } from '../design/value.js';
import { isPure } from '../quantity/dimension.js';
import { metresPer } from '../quantity/units.js';
import { valuesWithin } from './used-names.js';

/** So many times a length that it is taken for, either way. */
const shares = [0.5, 1, 2];

export function bareLengths(design: Design): ReadonlySet<string> {
  const { dimensions, written } = design;
  const { units } = written;
  const pure = dimensions.filter(({ dimension }) => isPure(dimension));
  if (units === undefined || pure.length === 0) return new Set();
  const values = valuesWithin({ ...written, dimensions: undefined, errors: undefined });
  const found = pure.filter(({ name }) => {
    const [, least, most] = [0, 1, 2].map((by) => namedWith(design, name, by));
    const drawn = namedWith(design, name, 0);
    const stretched = [0, 1].map((by) => namedWith(design, name, by, 1.25));
    const made = madeOf(design, name);
    const using = values.filter(({ quantity }) => quantity.names.some((one) => made.has(one)));
    return (
      using.length > 0 &&
      using.every(({ quantity }: Value) => {
        const at = (named: ReadonlyMap<string, number>): number => quantity.valueIn(named);
        const slope = at(least!) - at(drawn);
        const near = 1e-9 * metresPer[units];
        return (
          quantity.kind === 'length' &&
          shares.some((share) => Math.abs(Math.abs(slope) - share * metresPer[units]) < near) &&
          // A straight line, whatever the others are.
          Math.abs(at(most!) - at(least!) - slope) < near &&
          Math.abs(at(stretched[1]!) - at(stretched[0]!) - slope) < near
        );
      })
    );
  });
  return new Set(found.map(({ name }) => name));
}

/** The name, and those that are made of it, directly or by way of others. */
function madeOf({ dimensions }: Design, name: string): ReadonlySet<string> {
  const made = new Set([name]);
  for (const one of dimensions) if (one.expression.names.some((other) => made.has(other))) made.add(one.name);
  return made;
}

/** All named values, with so much more of one, and so many times the others that are made of none. */
function namedWith(
  { dimensions }: Design,
  name: string,
  more: number,
  times = 1,
): ReadonlyMap<string, number> {
  const values = new Map<string, number>();
  for (const { name: own, expression } of dimensions) {
    const value = expression.valueIn(values);
    const other = expression.names.length === 0 ? times * value : value;
    values.set(own, own === name ? value + more : other);
  }
  return values;
}
