/** What a benchmark asks and what it finds. */
export interface Benchmark {
  readonly question: string;
  readonly run: () => Promise<Finding[]>;
}

export interface Finding {
  readonly what: string;
  /** The median where it was measured more than once. */
  readonly value: number;
  /** The middle half of what was measured. */
  readonly spread?: { readonly low: number; readonly high: number };
  readonly unit: string;
  /** The most it should be. */
  readonly target?: number;
  readonly met?: boolean;
}
