/** A number of this project held against one that was not made here. */

/** How the outside number is known. */
export type Mark =
  /** Read where its source says. */
  | 'READ'
  /** From memory: shown beside, never asserted. */
  | 'MEMORY'
  /** A closed form derived from published equations, or worked out of read figures. */
  | 'DERIVED'
  /** What another program of general purpose calculates. */
  | 'CALCULATED'
  /** As the literature is cited or a unit defined; not read here. */
  | 'CITED';

export interface OutsideCheck {
  /** What is checked, in a few words. */
  readonly what: string;
  /** Where the expected number comes from. */
  readonly source: string;
  /** The same source under the name that another check counts it by; left out: the beginning of `source`. */
  readonly counts?: string;
  readonly mark: Mark;
  readonly unit: string;
  /** A function where it takes long to work out. */
  readonly expected: number | (() => number);
  /** What the project says. */
  readonly got: () => number;
  /** By how much they may differ, in the unit; relative: of the expected number. */
  readonly within: number;
  readonly relative?: true;
  /** Why by so much. */
  readonly why: string;
}

const answers = new WeakMap<() => number, number>();

/** Worked out once. */
function once(work: () => number): number {
  const answer = answers.get(work) ?? work();
  answers.set(work, answer);
  return answer;
}

/** What the project says. */
export const gotOf = ({ got }: OutsideCheck): number => once(got);

export const expectedOf = ({ expected }: OutsideCheck): number =>
  typeof expected === 'number' ? expected : once(expected);

/** Sources that know nothing of each other. */
export const sourcesOf = (checks: readonly OutsideCheck[]): Set<string> =>
  new Set(checks.map(({ counts, source }) => counts ?? source.split(/[,:(]/)[0]!.trim()));

/** By how much they may differ, in the unit. */
export const allowedOf = (check: OutsideCheck): number =>
  check.within * (check.relative ? Math.abs(expectedOf(check)) : 1);

/** NaN holds against nothing. */
export const holds = (check: OutsideCheck, got: number): boolean =>
  Math.abs(got - expectedOf(check)) <= allowedOf(check);

/** Rounding of numbers of order one to fifteen digits, and of a few operations on them. */
export const rounding = {
  within: 1e-9,
  relative: true,
  why: 'closed form against closed form: rounding',
} as const;
