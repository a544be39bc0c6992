/** Among parts that were told apart by ids alone those that lie in another: holes of it, most likely, that nothing groups with it. */
import type { DrawnOutlines } from '../drawing/read/outlines.js';
import { turnsAround } from '../geometry/beside-runs.js';
import { contourOf, type Contour } from '../geometry/contour.js';
import { pointOn, type Loop } from '../geometry/piece.js';
import type { Judged } from './judged-groups.js';

/** In the place of those, with the reason, parts that are none. */
export function withoutInner(judged: readonly Judged[]): Judged[] {
  const solids = judged.map(({ made, flaws }) => (made.ok && flaws.length === 0 ? solidsOf(made) : []));
  return judged.map((one, i) => {
    const around = solids.findIndex(
      (others, j) =>
        j !== i &&
        solids[i]!.length > 0 &&
        solids[i]!.every(({ boundary }) => others.some(({ contour }) => liesWhollyIn(boundary, contour))),
    );
    if (around < 0) return one;
    const flaw = {
      expected: 'parts beside each other',
      found: `it lies wholly inside ${judged[around]!.group.name}`,
      hint: 'if it is a hole of that, put the two into one group; if it is a part, take away the #',
    };
    return { ...one, flaws: [flaw] };
  });
}

const solidsOf = ({ loops }: DrawnOutlines) =>
  loops.filter(({ hole }) => !hole).map(({ boundary }) => ({ boundary, contour: contourOf(boundary) }));

/** By the ends and middles of its pieces: what is drawn in a chair bends too little to leave another between them. */
const liesWhollyIn = (boundary: Loop, contour: Contour): boolean =>
  boundary.every((piece) => [0, 0.5].every((u) => turnsAround(contour, pointOn(piece, u)) !== 0));
