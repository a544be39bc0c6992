/** One line on a terminal about work that takes longer than a second, and nothing anywhere else. */
import type { World } from './world.js';

export interface Progress {
  readonly done: (count: number, total: number) => void;
  /** Takes the line away. */
  readonly end: () => void;
}

/** Milliseconds: nobody is told before, and no oftener than. */
const patience = 1000;
const interval = 250;

/** @param what is counted: 'designs' */
export function progressOf({ stderr, env }: World, what: string): Progress {
  if (!stderr.isTTY || env['CI'] !== undefined) return { done: () => undefined, end: () => undefined };
  const start = Date.now();
  let [told, shown] = [start + patience - interval, false];
  return {
    done: (count, total) => {
      const now = Date.now();
      if (now - told < interval) return;
      [told, shown] = [now, true];
      const say = (number: number): string => number.toLocaleString('en');
      // At the pace until now, of which nothing is known before the first is done.
      const left = count === 0 ? '' : `, ${sayTime(((now - start) / count) * (total - count))} left`;
      stderr.write(`\r\u001B[K${say(count)} of ${say(total)} ${what}${left}`);
    },
    end: () => {
      if (shown) stderr.write('\r\u001B[K');
      shown = false;
    },
  };
}

/** '40 s', '3 min', '2 h'. */
function sayTime(milliseconds: number): string {
  const seconds = milliseconds / 1000;
  if (seconds < 90) return `${Math.ceil(seconds)} s`;
  return seconds < 5400 ? `${Math.ceil(seconds / 60)} min` : `${Math.ceil(seconds / 3600)} h`;
}
