/**
 * A design as a function of what is varied in it. It is compiled once: what a new value does not touch is not read,
 * drawn, weighed or seated again.
 */
import { chairBuilder } from '../chair/build-chair.js';
import type { Chair } from '../chair/chair.js';
import type { DesignInSI } from '../design/design.js';
import type { Issue } from '../design/issue.js';
import { issueAt } from '../design/issue-at.js';
import type { Design } from '../design/read-design.js';
import { designResolver } from '../design/resolve.js';
import { seatPeople, type People } from '../loads/people.js';
import type { Variable } from './variables.js';

/** A chair of a design for some values, with the people in it. */
export interface BuiltDesign {
  readonly ok: true;
  readonly design: DesignInSI;
  readonly chair: Chair;
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
  const resolve = designResolver(design);
  const build = chairBuilder();
  const seat = seater();
  const sized = sitterSizer(variables);
  return {
    design,
    variables,
    at: (values, sitters) => {
      const resolved = resolve(namedValues(variables, values));
      if (!resolved.ok) return resolved;
      const own = sized(resolved.value, values);
      const inSI = sitters === undefined ? own : { ...own, sitters };
      const [built, seated] = [build(inSI), seat(inSI)];
      if (built.ok && seated.ok) return { ok: true, design: inSI, chair: built.chair, people: seated.people };
      const drawn = built.ok ? [] : built.faults.map(({ path, flaw }) => issueAt(design, path, flaw));
      const sitting = seated.ok
        ? []
        : seated.faults.map(({ path, ...words }) => issueAt(design, path, words));
      return { ok: false, issues: built.ok ? sitting : drawn };
    },
  };
}

function namedValues(variables: readonly Variable[], values: readonly number[]): ReadonlyMap<string, number> {
  const named = new Map<string, number>();
  variables.forEach(({ name, of }, i) => {
    if (of === null) named.set(name, values[i]!);
  });
  return named;
}

/** Gives sitters the sizes that are varied; without any the design stays the same object. */
function sitterSizer(
  variables: readonly Variable[],
): (design: DesignInSI, values: readonly number[]) => DesignInSI {
  const sizes = variables.flatMap(({ of }, i) => (of === null ? [] : [{ ...of, i }]));
  let last:
    | {
        readonly from: DesignInSI['sitters'];
        readonly values: readonly number[];
        readonly sitters: DesignInSI['sitters'];
      }
    | undefined;
  return (design, values) => {
    if (sizes.length === 0 || design.sitters === 'standard') return design;
    const same = last?.from === design.sitters && sizes.every(({ i }) => last!.values[i] === values[i]);
    if (!same) {
      const sitters = design.sitters.map((sitter, index) => ({
        ...sitter,
        ...Object.fromEntries(
          sizes.filter((one) => one.sitter === index).map(({ size, i }) => [size, values[i]]),
        ),
      }));
      last = { from: design.sitters, values, sitters };
    }
    return { ...design, sitters: last!.sitters };
  };
}

/** Seats people anew only where they, the seat, the back or the arms are other objects than the last time. */
function seater(): typeof seatPeople {
  let last: { readonly of: readonly unknown[]; readonly seated: ReturnType<typeof seatPeople> } | undefined;
  return (design) => {
    const { kind, sitters, child, seat, back, arms } = design;
    const of = [kind, sitters, child, seat, back, arms];
    if (!last || of.some((thing, i) => thing !== last!.of[i])) last = { of, seated: seatPeople(design) };
    return last.seated;
  };
}
