/** Counts what is left out of a drawing, by name and reason. */
import type { LeftOut } from './drawn.js';

export interface Tally {
  /** @param line where one stands */
  readonly add: (what: string, why: string, line: number) => void;
  /** In the order in which they first came. */
  readonly list: () => readonly LeftOut[];
}

export function tally(): Tally {
  const counts = new Map<string, LeftOut>();
  return {
    add: (what, why, line) => {
      const key = `${what}\n${why}`;
      const { count, line: first } = counts.get(key) ?? { count: 0, line };
      counts.set(key, { what, why, count: count + 1, line: Math.min(first, line) });
    },
    list: () => [...counts.values()],
  };
}
