/** What a chair would do with the lines of its drawings left as lines where they were read as curves. */
import type { Chair } from '../chair/chair.js';
import type { DesignInSI } from '../design/design.js';
import type { Design } from '../design/read-design.js';
import { loadsOf } from '../loads/loads-of.js';
import { measureLoad, type Measured } from '../measures/catalogue.js';
import { rollLoads, type LoadRecord } from '../measures/record.js';
import { designBuilder } from './design-function.js';

export interface Unsmoothed {
  readonly record: LoadRecord;
  readonly measured: Measured;
}

/**
 * Empty, and with the first sitter in it; nothing where no lines became curves.
 * @param chair of the design for these values
 */
export function unsmoothed(
  design: Design,
  chair: Chair,
  values: ReadonlyMap<string, number> | undefined,
): Unsmoothed[] {
  const taken = chair.parts.flatMap(({ drawn }) => drawn);
  if (!taken.some(({ smoothing }) => smoothing !== null && smoothing.lines > 0)) return [];
  const built = designBuilder(design)(values, asLines);
  if (!built.ok) return [];
  const loads = loadsOf(built.design, built.chair, built.people, ['empty', 'seated']);
  const first = built.people.persons[0]?.name ?? null;
  return rollLoads(
    built.chair,
    loads.filter(({ sitter }) => sitter === null || sitter === first),
    built.design.floor.rolling,
  ).map((record) => ({ record, measured: measureLoad(record) }));
}

const asLines = (design: DesignInSI): DesignInSI => ({
  ...design,
  parts: design.parts.map((part) => ({
    ...part,
    outline: part.outline.map((word) =>
      word.word === 'drawing' ? { ...word, asked: { ...word.asked, smooth: null } } : word,
    ),
  })),
});
