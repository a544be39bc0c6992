/** How far numbers of a sample lie apart. */

export interface Spread {
  readonly mean: number;
  /** Standard deviation. */
  readonly deviation: number;
  /** 5 and 95 in a hundred lie below. */
  readonly low: number;
  readonly high: number;
}

/** null of no numbers. */
export function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const sorted = values.toSorted((a, b) => a - b);
  const deviation = values.length > 1 ? Math.sqrt(squares / (values.length - 1)) : 0;
  return { mean, deviation, low: quantileOf(sorted, 0.05), high: quantileOf(sorted, 0.95) };
}

/** Between the two nearest of sorted numbers, in line (Hyndman and Fan 1996, definition 7). */
export function quantileOf(sorted: readonly number[], share: number): number {
  if (!(sorted.length > 0 && share >= 0 && share <= 1))
    throw new RangeError(`quantileOf: ${share} of ${sorted.length} numbers`);
  const at = (sorted.length - 1) * share;
  const below = Math.floor(at);
  const [a, b] = [sorted[below]!, sorted[Math.min(below + 1, sorted.length - 1)]!];
  return a + (b - a) * (at - below);
}
