/**
 * The loops of one part as its outline, every hole given to the solid it lies in; or what is wrong with them: loops
 * that cross themselves, solids that overlap, holes out of place. What touches at a point or along an edge does not
 * overlap. Only the solids of one part are looked at: parts may overlap, at a joint.
 */
import { boxesMeet } from './box.js';
import { inChair, type Flaw, type Telling } from './flaw.js';
import { loopFlaws, tangled } from './loop-flaws.js';
import { nestingOf, placeOutside, sharedPlace, type DrawnLoop, type Nesting } from './nesting.js';
import type { Outline } from './piece.js';
import type { Point } from './point.js';

export interface OutlineFlaw extends Flaw {
  /** Which loop of the list, from 0; messages count from 1. */
  readonly loop: number;
}

export type CheckedOutline =
  | { readonly ok: true; readonly outline: Outline }
  | { readonly ok: false; readonly flaws: readonly OutlineFlaw[] };

export function outlineFlaws(loops: readonly DrawnLoop[], telling = inChair): CheckedOutline {
  const alone = loops.flatMap(({ boundary }, loop) =>
    loopFlaws(boundary, telling.place).map((flaw) => ({ ...flaw, loop })),
  );
  if (alone.length > 0) return { ok: false, flaws: alone };
  // One solid has nothing to lie over; a sweep asks for it ten thousand times.
  const [only] = loops;
  if (loops.length === 1 && !only!.hole) {
    return { ok: true, outline: [{ boundary: only!.boundary, holes: [] }] };
  }
  const nesting = nestingOf(loops);
  if (nesting === null) return { ok: false, flaws: [{ ...tangled, loop: 0 }] };
  const flaws = [strayHoles, overlappingHoles, overlappingSolids, emptied].flatMap((look) =>
    look(nesting, telling),
  );
  if (flaws.length > 0) return { ok: false, flaws };
  const outline = nesting.solids.map(({ loop, holes }) => ({
    boundary: loops[loop]!.boundary,
    holes: holes.map((hole) => loops[hole]!.boundary),
  }));
  return { ok: true, outline };
}

const name = (loop: number): string => `outline ${loop + 1}`;

function strayHoles({ points, solids, strays }: Nesting, telling: Telling): OutlineFlaw[] {
  return strays.map((hole) => {
    const cut = solids.find(({ loop }) => sharedPlace(points, hole, loop) !== null)?.loop;
    return cut === undefined
      ? inNoSolid(hole)
      : sticksOut(hole, cut, placeOutside(points, hole, cut)!, telling);
  });
}

const inNoSolid = (loop: number): OutlineFlaw => ({
  expected: `the hole, ${name(loop)}, inside one of the solids`,
  found: 'a hole that lies in none',
  loop,
});

function sticksOut(loop: number, solid: number, at: Point, { place, drawn }: Telling): OutlineFlaw {
  if (drawn)
    return {
      expected: 'outlines of a part that do not cross',
      found: `${name(solid)} and ${name(loop)} crossing near ${place(at)}`,
      hint: 'put each part on a layer of its own; draw a notch as part of the outline',
      loop,
    };
  return {
    expected: `the hole, ${name(loop)}, wholly inside ${name(solid)}`,
    found: `a hole that crosses its boundary, near ${place(at)}`,
    hint: 'draw a notch as part of the boundary; cut a hole over a seam from each side',
    loop,
  };
}

function overlappingHoles({ boxes, points, solids }: Nesting, telling: Telling): OutlineFlaw[] {
  return solids.flatMap(({ holes }) =>
    pairsOf(holes).flatMap(([a, b]) => {
      if (!boxesMeet(boxes[a]!, boxes[b]!, 0)) return [];
      const place = sharedPlace(points, a, b);
      if (place === null) return [];
      const expected = 'holes that do not overlap';
      return [{ expected, found: overlap(a, b, place, telling), hint: 'draw them as one hole', loop: b }];
    }),
  );
}

function overlappingSolids({ boxes, points, solids }: Nesting, telling: Telling): OutlineFlaw[] {
  return pairsOf(solids).flatMap(([a, b]) => {
    if (!boxesMeet(boxes[a.loop]!, boxes[b.loop]!, 0)) return [];
    const place = sharedPlace(points, a.loop, b.loop, [...a.holes, ...b.holes]);
    if (place === null) return [];
    const expected = 'solids that do not overlap';
    const hint = telling.drawn
      ? 'put each part on a layer of its own, or draw them as one outline'
      : 'draw them as one outline, or mark what is cut out with `hole: true`';
    return [{ expected, found: overlap(a.loop, b.loop, place, telling), hint, loop: b.loop }];
  });
}

/** Holes may fill their solid to the edge. */
function emptied({ points, solids }: Nesting): OutlineFlaw[] {
  return solids.flatMap(({ loop, holes }) => {
    if (holes.length === 0 || sharedPlace(points, loop, loop, holes) !== null) return [];
    return [{ expected: `wood left of ${name(loop)}`, found: 'holes that take all of it', loop }];
  });
}

const overlap = (a: number, b: number, at: Point, { place }: Telling): string =>
  `${name(a)} and ${name(b)} overlapping near ${place(at)}`;

const pairsOf = <T>(items: readonly T[]): [T, T][] =>
  items.flatMap((a, i) => items.slice(i + 1).map((b): [T, T] => [a, b]));
