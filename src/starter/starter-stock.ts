/** Sizes of stock in a starter, as a maker in inches and one in millimetres has them; of a grown person’s chair and of a child’s. */
import type { ChairKind } from '../names.js';

export type StarterUnits = 'in' | 'mm';

/** In inches, in millimetres. */
type Size = readonly [string, number];

/** Of grown people, of children, what it is. */
const stock: Readonly<Record<string, readonly [Size, Size, string]>> = {
  depth: [['2', 50], ['1-3/4', 44], 'of the rockers'],
  board: [['1-1/8', 28], ['1', 25], 'thickness of the rockers and the back posts'],
  legStock: [['1-5/8', 42], ['1-1/4', 32], 'front legs, square'],
  postStock: [['1-1/2', 38], ['1-1/4', 32], 'back posts, as seen from the side'],
  armBoard: [['7/8', 22], ['3/4', 19], 'thickness of the arms'],
  armWidth: [['3-1/2', 90], ['2', 50], 'of the arms'],
  seatBoard: [['3/4', 19], ['5/8', 16], 'thickness of the seat'],
  rail: [['1-3/4', 44], ['1-1/4', 32], 'height of the rails under the seat'],
  railBoard: [['3/4', 19], ['5/8', 16], 'thickness of the rails'],
  rung: [['7/8', 22], ['5/8', 16], 'diameter'],
  slat: [['3/8', 10], ['1/4', 6], 'thickness of the slats in the back'],
  slatWidth: [['1-1/2', 38], ['1-1/8', 28], 'of the slats'],
  lowerRail: [['1-1/2', 38], ['1-1/8', 28], 'height of the rail at the foot of the back'],
  crest: [['3', 75], ['2', 50], 'height of the rail at its top'],
};

/** The lines of a starter’s dimensions. */
export const stockLines = (kind: ChairKind, units: StarterUnits): string[] =>
  Object.entries(stock).map(([name, [grown, small, what]]) => {
    const [inches, millimetres] = kind === 'child' ? small : grown;
    return `${name}: ${units === 'in' ? `${inches} in` : `${millimetres} mm`} # ${what}`;
  });

/** Of screws, plugs and glue (judgement of this project). */
export function hardwareOf(kind: ChairKind, units: StarterUnits): string {
  if (units === 'in') return kind === 'child' ? '4 oz' : '9 oz';
  return kind === 'child' ? '110 g' : '250 g';
}
