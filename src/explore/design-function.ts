/**
 * A design as a function of what is varied in it. It is compiled once: what a new value does not touch is not read,
 * drawn, weighed or seated again.
 */
import { alteredChairBuilder } from '../chair/altered-chair.js';
import type { Chair } from '../chair/chair.js';
import type { DesignInSI, SitterInSI } from '../design/design.js';
import type { Issue } from '../design/issue.js';
import { issueAt } from '../design/issue-at.js';
import type { Design } from '../design/read-design.js';
import { designResolver } from '../design/resolve.js';
import { keptWhileSame } from '../kept.js';
import { seatPeople, type People } from '../loads/people.js';
import type { Variable } from './variables.js';

/** A chair of a design for some values, with the people in it. */
export interface BuiltDesign {
  readonly ok: true;
  readonly design: DesignInSI;
  readonly chair: Chair;
  /** As it is drawn, without its alterations. */
  readonly drawn: Chair;
  readonly people: People;
}

export type Tried = BuiltDesign | { readonly ok: false; readonly issues: readonly Issue[] };

export interface DesignFunction {
  readonly design: Design;
  readonly variables: readonly Variable[];
  /**
   * @param values one a variable, SI
   * @param sitters other people than those of the design
   */
  readonly at: (values: readonly number[], sitters?: DesignInSI['sitters']) => Tried;
}

export function designFunction(design: Design, variables: readonly Variable[]): DesignFunction {
  const build = designBuilder(design);
  const [sized, changed] = [sitterSizer(variables), alterer(variables)];
  return {
    design,
    variables,
    at: (values, sitters) =>
      build(namedValues(variables, values), (inSI) => {
        const own = changed(sized(inSI, values), values);
        return sitters === undefined ? own : { ...own, sitters };
      }),
  };
}

/** Builds a design, and seats its people in it, for named values other than those of the file. */
export function designBuilder(
  design: Design,
): (values?: ReadonlyMap<string, number>, changed?: (inSI: DesignInSI) => DesignInSI) => Tried {
  const resolve = designResolver(design);
  const build = alteredChairBuilder();
  const seat = seater();
  return (values, changed = (inSI) => inSI) => {
    const resolved = resolve(values);
    if (!resolved.ok) return resolved;
    const inSI = changed(resolved.value);
    const built = build(inSI);
    // A line the wrong way round is told once, where it is drawn.
    if (!built.ok)
      return { ok: false, issues: built.faults.map(({ path, flaw }) => issueAt(design, path, flaw)) };
    const seated = seat(built.design);
    if (seated.ok) return { ...built, people: seated.people };
    return { ok: false, issues: seated.faults.map(({ path, ...words }) => issueAt(design, path, words)) };
  };
}

function namedValues(variables: readonly Variable[], values: readonly number[]): ReadonlyMap<string, number> {
  const named = new Map<string, number>();
  variables.forEach(({ name, of, perUnit = 1 }, i) => {
    if (of === null) named.set(name, values[i]! / perUnit);
  });
  return named;
}

/** Sets the alterations that are varied; without any the design stays the same object. */
function alterer(
  variables: readonly Variable[],
): (design: DesignInSI, values: readonly number[]) => DesignInSI {
  const varied = variables.flatMap(({ of }, i) =>
    of !== null && 'alteration' in of ? [[of.alteration, i] as const] : [],
  );
  if (varied.length === 0) return (design) => design;
  return (design, values) => ({
    ...design,
    alterations: {
      ...design.alterations,
      ...Object.fromEntries(varied.map(([name, i]) => [name, values[i]!])),
    },
  });
}

/** Gives sitters the sizes that are varied; without any the design stays the same object. */
function sitterSizer(
  variables: readonly Variable[],
): (design: DesignInSI, values: readonly number[]) => DesignInSI {
  const varied = variables.flatMap(({ of }, i) => (of !== null && 'sitter' in of ? [{ ...of, i }] : []));
  const kept = keptWhileSame<readonly SitterInSI[]>();
  return (design, values) => {
    const { sitters } = design;
    if (varied.length === 0 || sitters === 'standard') return design;
    const sized = kept([sitters, ...varied.map(({ i }) => values[i])], () =>
      sitters.map((sitter, index) => {
        const own = varied.filter((one) => one.sitter === index).map(({ size, i }) => [size, values[i]]);
        return { ...sitter, ...(Object.fromEntries(own) as Partial<SitterInSI>) };
      }),
    );
    return { ...design, sitters: sized };
  };
}

/** Seats people anew only where they, the seat, the back or the arms are other objects than the last time. */
function seater(): typeof seatPeople {
  const kept = keptWhileSame<ReturnType<typeof seatPeople>>();
  return (design) => {
    const { kind, sitters, child, seat, back, arms } = design;
    return kept([kind, sitters, child, seat, back, arms], () => seatPeople(design));
  };
}
