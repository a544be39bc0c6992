/** The words of a part's outline built into solids, with the ends that a rocker states of its bottom edge. */
import type { OutlineInSI } from '../design/design.js';
import type { LeftOut } from '../drawing/read/drawn.js';
import { drawnOutlines, type DrawnOutlines } from '../drawing/read/outlines.js';
import { inChair, type Flaw } from '../geometry/flaw.js';
import { outlineFlaws } from '../geometry/flaws.js';
import type { Loop, Outline } from '../geometry/piece.js';
import type { Point } from '../geometry/point.js';
import { bar } from '../geometry/words/bar.js';
import { circle } from '../geometry/words/circle.js';
import { path } from '../geometry/words/path.js';
import { rectangle } from '../geometry/words/rectangle.js';
import { rocker } from '../geometry/words/rocker.js';

export interface PartOutline {
  readonly outline: Outline;
  /** The boundaries of its solids: all that the floor can touch. */
  readonly solids: readonly Loop[];
  /** Ends of a rocker's bottom edge; null when no word of the part is a rocker. */
  readonly ends: readonly [Point, Point] | null;
  /** What was taken of drawing files, in the order of its words. */
  readonly drawn: readonly TakenFromFile[];
}

/** The outlines that a drawing file gave. */
export interface TakenFromFile extends Omit<DrawnOutlines, 'loops'> {
  readonly file: string;
  /** Metres a unit: as the file declares it and as the design states it; null: not at all. */
  readonly units: { readonly declared: number | null; readonly stated: number | null };
  /** How far curves may lie from lines that they are drawn as, metres; null: lines stay lines. */
  readonly smooth: number | null;
  readonly leftOut: readonly LeftOut[];
}

/** A flaw and the outline of the list that has it; null: the list as a whole. */
export interface OutlineFault {
  readonly outline: number | null;
  readonly flaw: Flaw;
}

export type BuiltOutline =
  ({ readonly ok: true } & PartOutline) | { readonly ok: false; readonly faults: readonly OutlineFault[] };

interface Word {
  readonly loops: DrawnOutlines['loops'];
  readonly drawn?: TakenFromFile;
  readonly ends: readonly [Point, Point] | null;
}

export function partOutline(words: readonly OutlineInSI[]): BuiltOutline {
  const faults: OutlineFault[] = [];
  const built: Word[] = [];
  words.forEach((word, outline) => {
    const made = buildWord(word);
    if ('flaws' in made) faults.push(...made.flaws.map((flaw) => ({ outline, flaw })));
    else built.push(made);
  });
  if (faults.length > 0) return { ok: false, faults };
  const loops = built.flatMap(({ loops: own }, outline) => own.map((loop) => ({ ...loop, outline })));
  const [only] = words;
  if (words.length === 1 && cannotCrossItself(only!) && !only!.hole) {
    const [{ boundary }] = loops as [(typeof loops)[0]];
    const outline = [{ boundary, holes: [] }];
    return { ok: true, outline, solids: [boundary], ends: built[0]!.ends, drawn: [] };
  }
  const drawnIn = words.some(({ word }) => word === 'drawing');
  const judged = outlineFlaws(loops, { ...inChair, drawn: drawnIn });
  if ('flaws' in judged)
    return {
      ok: false,
      faults: judged.flaws.map((flaw) => ({ outline: loops[flaw.loop]?.outline ?? null, flaw })),
    };
  const ends = built.find((word, i) => word.ends !== null && !words[i]!.hole)?.ends ?? null;
  const solids = judged.outline.map(({ boundary }) => boundary);
  const drawn = built.flatMap((word) => word.drawn ?? []);
  return { ok: true, outline: judged.outline, solids, ends, drawn };
}

/** Of a rocker one arc: a band of a circle of less than a full turn, less deep than its radius. */
const cannotCrossItself = (word: OutlineInSI): boolean =>
  word.word === 'rocker' ? word.arcs.length === 1 : word.word !== 'path' && word.word !== 'drawing';

function buildWord(word: OutlineInSI): Word | { flaws: readonly Flaw[] } {
  const { hole } = word;
  switch (word.word) {
    case 'rocker': {
      const made = rocker(word);
      if (!made.ok) return made;
      const loops = [{ boundary: made.boundary, hole }];
      return { loops, ends: [made.ends.tail, made.ends.nose] };
    }
    case 'path': {
      const made = path(word);
      return made.ok ? { loops: made.boundaries.map((boundary) => ({ boundary, hole })), ends: null } : made;
    }
    case 'drawing': {
      const { file, drawn, asked } = word;
      const made = drawnOutlines(drawn, asked);
      if (!made.ok) return made;
      const { box, duplicates, leftOpen, smoothing } = made;
      const units = { declared: drawn.unit, stated: asked.unit };
      return {
        // Cut out as a whole: what was an island is a hole no more.
        loops: made.loops.map((loop) => ({ ...loop, hole: loop.hole !== hole })),
        ends: null,
        drawn: {
          file,
          units,
          box,
          duplicates,
          leftOpen,
          smoothing,
          smooth: asked.smooth,
          leftOut: drawn.leftOut,
        },
      };
    }
    case 'bar':
      return single(bar(word), hole);
    case 'circle':
      return single(circle(word), hole);
    case 'rectangle':
      return single(rectangle(word), hole);
  }
}

function single(
  made: { ok: true; boundary: Loop } | { ok: false; flaws: readonly Flaw[] },
  hole: boolean,
): Word | { flaws: readonly Flaw[] } {
  return made.ok ? { loops: [{ boundary: made.boundary, hole }], ends: null } : made;
}
