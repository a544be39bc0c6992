/** What of a design may be varied: its named dimensions, the sizes of its sitters, and the alterations of the chair. */
import type { Design } from '../design/read-design.js';
import type { Value } from '../design/value.js';
import { alterationNames, alterations, type AlterationName } from '../names.js';
import { dimensionOf, sameDimension, type Dimension } from '../quantity/dimension.js';
import { metresPer } from '../quantity/units.js';
import { bareLengths } from './bare-lengths.js';

export type SitterSizeName = 'stature' | 'mass' | 'percentile';

export interface SitterSize {
  readonly sitter: number;
  readonly size: SitterSizeName;
}

export interface Variable {
  /** As a maker names it: `radius`, `tallest mass`. */
  readonly name: string;
  readonly dimension: Dimension;
  /** SI, as the design states it. */
  readonly stated: number;
  /** Of a length that the design writes as a pure number: what 1 of it is, SI. */
  readonly perUnit?: number;
  /** Which sitter's size or which alteration it is; null: it is a named dimension. */
  readonly of: SitterSize | { readonly alteration: AlterationName } | null;
}

/** Everything that may be varied in a design: the dimensions in the order of the file, the sitters, the alterations. */
export function variablesOf(design: Design): Variable[] {
  return [...dimensionVariables(design), ...sitterSizesOf(design), ...alterationVariables(design)];
}

/** Whether it is made of other dimensions, which it follows. */
export const isMade = ({ dimensions }: Design, { name }: Pick<Variable, 'name'>): boolean =>
  dimensions.some((one) => one.name === name && one.expression.names.length > 0);

export const isLength = ({ dimension }: Pick<Variable, 'dimension'>): boolean =>
  sameDimension(dimension, dimensionOf.length);

/** Whether or not the chair can have them: that is told when it is built. */
export function alterationVariables({ written, dimensions }: Design): Variable[] {
  const named = new Map(dimensions.map(({ name, value }) => [name, value]));
  return alterationNames.map((name) => ({
    name,
    dimension: dimensionOf[alterations[name]],
    stated: written.alterations?.[name]?.quantity.valueIn(named) ?? 0,
    of: { alteration: name },
  }));
}

/** The named dimensions only, in the order of the file. */
export function dimensionVariables(design: Design): Variable[] {
  const { dimensions, written } = design;
  const bare = bareLengths(design);
  const perUnit = metresPer[written.units ?? 'm'];
  const inFile = Object.keys(written.dimensions ?? {});
  return dimensions
    .toSorted((a, b) => inFile.indexOf(a.name) - inFile.indexOf(b.name))
    .map(({ name, dimension, value }) =>
      bare.has(name)
        ? { name, dimension: dimensionOf.length, stated: value * perUnit, perUnit, of: null }
        : { name, dimension, stated: value, of: null },
    );
}

function sitterSizesOf({ written, dimensions }: Design): Variable[] {
  const { sitters } = written;
  if (sitters === undefined || sitters === 'standard') return [];
  const named = new Map(dimensions.map(({ name, value }) => [name, value]));
  return sitters.flatMap((sitter, index) => {
    const sizes: readonly (readonly [SitterSizeName, Value | undefined])[] = [
      ['stature', sitter.stature ?? sitter.height],
      ['mass', sitter.mass ?? sitter.weight],
      ['percentile', sitter.percentile],
    ];
    return sizes.flatMap(([size, value]): Variable[] => {
      if (value === undefined) return [];
      const { quantity } = value;
      const dimension = dimensionOf[quantity.kind];
      return [
        {
          name: `${sitter.name} ${size}`,
          dimension,
          stated: quantity.valueIn(named),
          of: { sitter: index, size },
        },
      ];
    });
  });
}
