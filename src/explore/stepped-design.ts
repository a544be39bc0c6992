/** A design changed by whole maker's steps, judged. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { Design } from '../design/read-design.js';
import { loadsOf } from '../loads/loads-of.js';
import type { LoadId } from '../names.js';
import { valueAfter, type Changeable } from './changeable.js';
import { designFunction, type BuiltDesign, type Tried } from './design-function.js';
import { judgeFor, type Judgement } from './judge.js';

/** Whole steps by index of what is changed. */
export type Steps = ReadonlyMap<number, number>;

/** What of a judgement a search looks at: the chair itself is not kept, there are thousands. */
export interface JudgedSteps {
  readonly rolled: ReadonlySet<LoadId>;
  readonly limits: readonly JudgedLimit[];
}

/** A load of a sitter, or without one. */
export type Ridden = Pick<JudgedLimit, 'load' | 'sitter'>;

export interface JudgedInSteps {
  /** All that the design is put through, in order. */
  readonly all: readonly Ridden[];
  /** With so many steps of each change; null: it cannot be built. */
  readonly judged: (steps: Steps, wanted: readonly Ridden[]) => JudgedSteps | null;
}

/** Each load of each sitter is judged once. */
export function judgedInSteps(design: Design, changeable: readonly Changeable[]): JudgedInSteps {
  const { at } = designFunction(
    design,
    changeable.map(({ variable }) => variable),
  );
  const valuesAt = (steps: Steps): number[] =>
    changeable.map((each, i) => (steps.has(i) ? valueAfter(each, steps.get(i)!) : each.variable.stated));
  const keepBuilt = keptFew<Tried>();
  const known = new Map<string, Map<string, JudgedSteps> | null>();
  const judges = new Map<string, ReturnType<typeof judgeFor>>();
  const judgeOf = (name: string, { load, sitter }: Ridden): ReturnType<typeof judgeFor> => {
    const judge = judges.get(name) ?? judgeFor([load], new Set([sitter]));
    judges.set(name, judge);
    return judge;
  };
  const judged: JudgedInSteps['judged'] = (steps, wanted) => {
    const changed = [...steps].filter(([, count]) => count !== 0).sort(([a], [b]) => a - b);
    const key = changed.join(' ');
    const built = (): Tried => keepBuilt(key, () => at(valuesAt(new Map(changed))));
    if (!known.has(key)) known.set(key, built().ok ? new Map() : null);
    const parts = known.get(key) ?? null;
    if (parts === null) return null;
    const names = new Map(
      wanted.map(({ load, sitter }) => [JSON.stringify([load, sitter]), { load, sitter }]),
    );
    const own = [...names].map(([name, ridden]) => {
      const before = parts.get(name);
      if (before !== undefined) return before;
      const part = judgedOf(judgeOf(name, ridden)(built() as BuiltDesign));
      parts.set(name, part);
      return part;
    });
    return {
      rolled: new Set(own.flatMap(({ rolled }) => [...rolled])),
      limits: own.flatMap(({ limits }) => limits),
    };
  };
  return { all: allOf(at(valuesAt(new Map()))), judged };
}

const judgedOf = ({ loads, limits }: Judgement): JudgedSteps => ({
  rolled: new Set(loads.map(({ record }) => record.load.id)),
  limits,
});

const allOf = (built: Tried): Ridden[] =>
  built.ok
    ? loadsOf(built.design, built.chair, built.people).map(({ id, sitter }) => ({ load: id, sitter }))
    : [];

/** As many chairs as one search goes back to. */
const few = 64;

/** The last few that were made, by name. */
function keptFew<T>(): (name: string, make: () => T) => T {
  const kept = new Map<string, T>();
  return (name, make) => {
    const before = kept.get(name);
    const value = before ?? make();
    kept.delete(name);
    kept.set(name, value);
    if (kept.size > few) kept.delete(kept.keys().next().value!);
    return value;
  };
}
