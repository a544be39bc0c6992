/** Parts that only ids tell apart and that lie in another: holes of it, most likely, that nothing groups with it. */
import type { DrawnOutlines } from '../drawing/read/outlines.js';
import { turnsAround } from '../geometry/beside-runs.js';
import { contourOf, type Contour } from '../geometry/contour.js';
import { pointOn, type Loop } from '../geometry/piece.js';
import { isPart, type Judged } from './judged.js';

/** In the place of those, with the reason, parts that are none. */
export function withoutInner(judged: readonly Judged[]): readonly Judged[] {
  if (judged.every(({ group }) => group.by !== 'id')) return judged;
  const solids = judged.map((one) => (one.made.ok && isPart(one) ? solidsOf(one.made) : []));
  const liesIn = (i: number, j: number): boolean =>
    solids[i]!.length > 0 &&
    solids[i]!.every(({ boundary }) => solids[j]!.some(({ contour }) => liesWhollyIn(boundary, contour)));
  return judged.map((one, i) => {
    if (one.group.by !== 'id') return one;
    const covers = (j: number): boolean => j !== i && liesIn(i, j);
    const j = judged.findIndex((_, j) => covers(j) && (j < i || !liesIn(j, i)));
    return j < 0 ? one : { ...one, flaws: [inner(judged[j]!.group.name, liesIn(j, i))] };
  });
}

const inner = (other: string, same: boolean) => ({
  expected: 'parts beside each other',
  found: same ? `it covers the same as ${other}` : `it lies wholly inside ${other}`,
  hint: same
    ? 'keep one of the two'
    : 'if it is a hole of that, put the two into one group; if it is a part, take away the #',
});

const solidsOf = ({ loops }: DrawnOutlines) =>
  loops.filter(({ hole }) => !hole).map(({ boundary }) => ({ boundary, contour: contourOf(boundary) }));

/** By the ends and middles of its pieces: what is drawn in a chair bends too little to leave another between them. */
const liesWhollyIn = (boundary: Loop, contour: Contour): boolean =>
  boundary.every((piece) => [0, 0.5].every((u) => turnsAround(contour, pointOn(piece, u)) !== 0));
