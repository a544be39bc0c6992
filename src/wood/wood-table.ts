/**
 * Specific gravity at 12 % moisture of the woods chairs are made of: clear wood, averages of a species.
 *
 * Source: Wood Handbook, Forest Products Laboratory, table 5-3. Read, copied out by others, in two editions
 * that agree in this column: FPL-GTR-190 (2010, table 5-3a) and FPL-GTR-282 (2021, table 5-3b).
 *
 * A plain word is a name here when the handbook lists one species of it (`cherry`, `walnut`, `beech`) or the
 * trade means one (`soft maple`). `oak`, `maple`, `ash`, `birch` and `pine` would be a guess and are no names.
 */
import type { Mark } from './wood.js';

export interface WoodRow {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly specificGravity: number;
  /** The row of the table, as printed. */
  readonly row: string;
  readonly mark: Mark;
}

/**
 * Trees of one species differ: coefficient of variation of specific gravity 10 %. From memory of the
 * handbook's chapter 5; the same for every species.
 */
export const woodSpread = 0.1;

// prettier-ignore
export const woodRows: readonly WoodRow[] = [
  { name: 'white ash', aliases: ['American white ash'], specificGravity: 0.6, row: 'Ash, White', mark: 'read' },
  { name: 'beech', aliases: ['American beech'], specificGravity: 0.64, row: 'Beech, American', mark: 'read' },
  { name: 'yellow birch', aliases: [], specificGravity: 0.62, row: 'Birch, Yellow', mark: 'read' },
  { name: 'cherry', aliases: ['black cherry', 'American cherry'], specificGravity: 0.5, row: 'Cherry, black', mark: 'read' },
  // Sold as one wood; shagbark and mockernut have the same number.
  { name: 'hickory', aliases: ['shagbark hickory', 'mockernut hickory'], specificGravity: 0.72, row: 'Hickory, true, Shagbark and Mockernut', mark: 'read' },
  { name: 'pignut hickory', aliases: [], specificGravity: 0.75, row: 'Hickory, true, Pignut', mark: 'read' },
  { name: 'pecan', aliases: ['pecan hickory'], specificGravity: 0.66, row: 'Hickory, pecan, Pecan', mark: 'read' },
  { name: 'hard maple', aliases: ['sugar maple', 'rock maple'], specificGravity: 0.63, row: 'Maple, Sugar', mark: 'read' },
  // Silver maple (0.47) is sold under this name too.
  { name: 'soft maple', aliases: ['red maple'], specificGravity: 0.54, row: 'Maple, Red', mark: 'read' },
  { name: 'red oak', aliases: ['northern red oak'], specificGravity: 0.63, row: 'Oak, red, Northern red', mark: 'read' },
  { name: 'southern red oak', aliases: [], specificGravity: 0.59, row: 'Oak, red, Southern red', mark: 'read' },
  { name: 'white oak', aliases: ['American white oak'], specificGravity: 0.68, row: 'Oak, white, White', mark: 'read' },
  { name: 'walnut', aliases: ['black walnut', 'American walnut'], specificGravity: 0.55, row: 'Walnut, black', mark: 'read' },
  { name: 'yellow poplar', aliases: ['poplar', 'tulip poplar'], specificGravity: 0.42, row: 'Yellow-poplar', mark: 'read' },
  { name: 'Douglas fir', aliases: ['coast Douglas fir'], specificGravity: 0.48, row: 'Douglas-fir, Coast', mark: 'read' },
  { name: 'eastern white pine', aliases: [], specificGravity: 0.35, row: 'Pine, Eastern white', mark: 'read' },
  { name: 'loblolly pine', aliases: [], specificGravity: 0.51, row: 'Pine, Loblolly', mark: 'read' },
  { name: 'longleaf pine', aliases: [], specificGravity: 0.59, row: 'Pine, Longleaf', mark: 'read' },
  { name: 'shortleaf pine', aliases: [], specificGravity: 0.51, row: 'Pine, Shortleaf', mark: 'read' },
  { name: 'slash pine', aliases: [], specificGravity: 0.59, row: 'Pine, Slash', mark: 'read' },
  // The four are sold mixed.
  { name: 'southern pine', aliases: ['southern yellow pine'], specificGravity: 0.55, row: 'mean of Loblolly, Longleaf, Shortleaf, Slash', mark: 'worked out here' },
];
