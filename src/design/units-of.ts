import type { LengthUnit } from '../quantity/units.js';
import type { WrittenDesign } from './schema.js';

/** What a bare length means in a design. */
export const unitsOf = ({ written }: { readonly written: Pick<WrittenDesign, 'units'> }): LengthUnit =>
  written.units ?? 'in';
