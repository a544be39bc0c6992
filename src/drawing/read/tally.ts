/** Counts what is left out of a drawing. */
import type { LeftOut } from './drawn.js';

export interface Tally {
  readonly add: (what: string, why: string, line: number) => void;
  readonly list: () => readonly LeftOut[];
}

export function tally(): Tally {
  const counts = new Map<string, { what: string; why: string; count: number; line: number }>();
  return {
    add: (what, why, line) => {
      const key = `${what}\n${why}`;
      const found = counts.get(key);
      if (found) found.count++;
      else counts.set(key, { what, why, count: 1, line });
    },
    list: () => [...counts.values()],
  };
}
