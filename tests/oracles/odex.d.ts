/** What is used of odex, whose own types are its sources, which are not strict. */
export declare class Solver {
  constructor(equations: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  solve(
    rates: (x: number, y: readonly number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
  ): { readonly y: number[] };
}
