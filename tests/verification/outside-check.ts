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
  readonly mark: Mark;
  readonly unit: string;
  readonly expected: number;
  readonly got: () => number;
  /** By how much they may differ, in the unit; relative: of the expected number. */
  readonly within: number;
  readonly relative?: true;
  /** Why by so much. */
  readonly why: string;
}

const answers = new WeakMap<OutsideCheck, number>();

/** What the project says, worked out once. */
export function gotOf(check: OutsideCheck): number {
  const got = answers.get(check) ?? check.got();
  answers.set(check, got);
  return got;
}

export const offBy = ({ expected, relative }: OutsideCheck, got: number): number =>
  Math.abs(got - expected) / (relative ? Math.abs(expected) : 1);

/** NaN holds against nothing. */
export const holds = (check: OutsideCheck, got: number): boolean => offBy(check, got) <= check.within;

/** Rounding of numbers of order one to fifteen digits, and of a few operations on them. */
export const rounding = {
  within: 1e-9,
  relative: true,
  why: 'closed form against closed form: rounding',
} as const;
