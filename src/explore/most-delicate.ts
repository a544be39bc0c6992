/** Which sizes use up a limit first: by how much one may be off, all else as drawn, before a limit of a seated sitter is missed. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { Design } from '../design/read-design.js';
import { metresPer } from '../quantity/units.js';
import { designFunction } from './design-function.js';
import { judgeFor } from './judge.js';
import { usedNames } from './used-names.js';
import { dimensionVariables, isLength, isMade, type Variable } from './variables.js';

export interface Delicate {
  /** Of the dimension. */
  readonly name: string;
  /** Metres, more positive. */
  readonly by: number;
  /** The limit that is missed beyond that. */
  readonly limit: JudgedLimit;
}

/** A size that may be off by more is not delicate, metres: the trade sees that with the bare eye. */
export const farthest = 4 * metresPer.in;

/** Long against the rounding of a rest, short against every radius. */
const step = metresPer.in / 32;

/**
 * The most delicate first, each dimension once: lengths that are written as such, as what is made of others follows them.
 * @param count as many at most
 */
export function mostDelicate(design: Design, count: number): Delicate[] {
  const used = usedNames(design);
  const variables = dimensionVariables(design).filter(
    (one) => used.has(one.name) && isLength(one) && !isMade(design, one),
  );
  if (variables.length === 0 || !design.written.sitters) return [];
  const limitsAt = seatedLimits(design, variables);
  const stated = variables.map((variable) => variable.stated);
  const drawn = limitsAt(stated);
  const moved = (i: number, by: number): Limits =>
    limitsAt(stated.map((value, j) => (j === i ? value + by : value)));
  return variables
    .flatMap(({ name }, i) => {
      const reach = nearest(drawn, moved(i, step));
      return reach === null || Math.abs(reach.by) > farthest ? [] : [{ name, i, ...reach }];
    })
    .sort(closerFirst)
    .slice(0, count)
    .map(({ name, i, ...reach }) => ({
      name,
      by: mended(reach, (by) => moved(i, by)),
      limit: reach.limit,
    }))
    .filter(({ by }) => Math.abs(by) <= farthest)
    .sort(closerFirst);
}

const closerFirst = (a: { readonly by: number }, b: { readonly by: number }): number =>
  Math.abs(a.by) - Math.abs(b.by);

type Limits = ReadonlyMap<string, JudgedLimit>;

function seatedLimits(design: Design, variables: readonly Variable[]): (values: readonly number[]) => Limits {
  const f = designFunction(design, variables);
  const judge = judgeFor(['seated']);
  return (values) => {
    const built = f.at(values);
    return new Map(built.ok ? judge(built).limits.map((limit) => [limit.id, limit]) : []);
  };
}

interface Crossing {
  readonly by: number;
  readonly bound: number;
  readonly limit: JudgedLimit;
}

/** Chords to where the last one led (secants): the curve between is gentle, and two come within a hundredth of an inch. */
const chords = 2;

function mended({ by: first, bound, limit: { id, value } }: Crossing, moved: (by: number) => Limits): number {
  let by = first;
  for (let chord = 0; chord < chords; chord++) {
    const reached = moved(by).get(id)?.value ?? null;
    if (reached === null || reached === value) return by;
    by *= (bound - value!) / (reached - value!);
  }
  return by;
}

/** Of the limits that are met as drawn the bound that the straight lines come to first. */
function nearest(drawn: Limits, ahead: Limits): Crossing | null {
  const reaches = [...drawn.values()].flatMap((limit): Crossing[] => {
    const { id, verdict, value, range } = limit;
    const next = ahead.get(id)?.value ?? null;
    if (verdict !== 'pass' || value === null || next === null || next === value) return [];
    return [range.min, range.max].flatMap((bound) =>
      bound === null ? [] : [{ by: ((bound - value) / (next - value)) * step, bound, limit }],
    );
  });
  return reaches.reduce<Crossing | null>(
    (best, one) => (best === null || Math.abs(one.by) < Math.abs(best.by) ? one : best),
    null,
  );
}
