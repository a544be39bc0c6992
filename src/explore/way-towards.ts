/** How near one change by itself brings a limit that it does not meet. */
import type { JudgedLimit } from '../checks/verdict.js';
import { shortfallIn, type Searched } from './remedy.js';

export interface Way {
  readonly index: number;
  /** Where it comes nearest of the places looked at. */
  readonly steps: number;
  /** How far off it is there; infinite: there is no number anywhere. */
  readonly left: number;
}

/** Of the way to either end. */
const shares = [0.5, 1];

/** null: nowhere nearer than as it stands, or with nothing that tells how near. */
export function wayTowards(searched: Searched, index: number, limit: JudgedLimit): Way | null {
  const { least, greatest } = searched.changeable[index]!;
  const offAt = (steps: number): number =>
    Math.abs(shortfallIn(searched, [limit], new Map([[index, steps]])));
  let best: Way = { index, steps: 0, left: offAt(0) };
  for (const steps of shares.flatMap((share) => [Math.ceil(share * least), Math.floor(share * greatest)])) {
    const left = offAt(steps);
    if (left < best.left) best = { index, steps, left };
  }
  return best.steps === 0 ? null : best;
}
