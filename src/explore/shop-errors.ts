/** How far off the shop is in each named dimension, and in alterations that the design states an error of: what the design says, and the trade's usual error where it does not. */
import type { DesignInSI, ErrorInSI } from '../design/design.js';
import type { Design } from '../design/read-design.js';
import { normalQuantile } from '../numeric/normal.js';
import { metresPer } from '../quantity/units.js';
import { alterationVariables, dimensionVariables, isLength, isMade, type Variable } from './variables.js';

export interface ShopError extends Pick<ErrorInSI, 'spread' | 'size'> {
  readonly variable: Variable;
  /** The trade's, as the design does not say. */
  readonly assumed: boolean;
}

/** Either way, evenly: common practice, no source. */
export const tradeError = metresPer.in / 32;
export const tradeErrorBasis = 'common practice, no source';

/**
 * In the order of the file. A dimension that is made of others follows them, and has an error of its own only where the
 * design says so; one that is no length as well.
 */
export function shopErrors(design: Design, { errors }: DesignInSI): ShopError[] {
  const stated = new Map(errors.map((error) => [error.dimension, error]));
  const ofDimensions = dimensionVariables(design);
  const named = new Set(ofDimensions.map(({ name }) => name));
  const altered = alterationVariables(design).filter(({ name }) => stated.has(name) && !named.has(name));
  return [...ofDimensions, ...altered].flatMap((variable): ShopError[] => {
    const own = stated.get(variable.name);
    if (own)
      return [{ variable, spread: own.spread, size: own.size * (variable.perUnit ?? 1), assumed: false }];
    if (!isLength(variable) || isMade(design, variable)) return [];
    return [{ variable, spread: 'even', size: tradeError, assumed: true }];
  });
}

/** Dimensions that are neither lengths nor made of others, and of which the design says no error: taken as exact. */
export function takenAsExact(design: Design, errors: readonly ShopError[]): Variable[] {
  const named = new Set(errors.map(({ variable }) => variable.name));
  return dimensionVariables(design).filter((one) => !named.has(one.name) && !isMade(design, one));
}

/** Standard deviation: of an even spread ±t it is t/√3. */
export const deviationOf = ({ spread, size }: Pick<ShopError, 'spread' | 'size'>): number =>
  spread === 'even' ? size / Math.sqrt(3) : size;

/** @param chance between 0 and 1, evenly distributed */
export const drawnError = ({ spread, size }: Pick<ShopError, 'spread' | 'size'>, chance: number): number =>
  size * (spread === 'even' ? 2 * chance - 1 : normalQuantile(chance));

/** The values of what has errors, dimensions each off by so much from what the design makes of the others. */
export function valuesOff(
  { dimensions }: Design,
  errors: readonly Pick<ShopError, 'variable'>[],
): (off: readonly number[]) => number[] {
  const places = new Map(errors.map(({ variable }, i) => [variable.name, i]));
  return (off) => {
    const values = new Map<string, number>();
    for (const { name, expression } of dimensions) {
      const place = places.get(name);
      const own = place === undefined ? 0 : off[place]! / (errors[place]!.variable.perUnit ?? 1);
      values.set(name, expression.valueIn(values) + own);
    }
    return errors.map(({ variable: { name, of, stated, perUnit = 1 } }, i) =>
      of === null ? values.get(name)! * perUnit : stated + off[i]!,
    );
  };
}
