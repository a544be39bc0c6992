/** What of a design may be varied: its named dimensions, and the sizes of its sitters. */
import type { Design } from '../design/read-design.js';
import type { Value } from '../design/value.js';
import { dimensionOf, type Dimension } from '../quantity/dimension.js';

export type SitterSizeName = 'stature' | 'mass' | 'percentile';

export interface Variable {
  /** As a maker names it: `radius`, `tallest mass`. */
  readonly name: string;
  readonly dimension: Dimension;
  /** SI, as the design states it. */
  readonly stated: number;
  /** Which sitter's size it is; null: it is a named dimension. */
  readonly of: { readonly sitter: number; readonly size: SitterSizeName } | null;
}

/** Everything that may be varied in a design: the dimensions in the order of the file, then the sitters. */
export function variablesOf(design: Design): Variable[] {
  return [...dimensionsOf(design), ...sitterSizesOf(design)];
}

const dimensionsOf = ({ dimensions, written }: Design): Variable[] => {
  const inFile = Object.keys(written.dimensions ?? {});
  return dimensions
    .toSorted((a, b) => inFile.indexOf(a.name) - inFile.indexOf(b.name))
    .map(({ name, dimension, value }) => ({ name, dimension, stated: value, of: null }));
};

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
