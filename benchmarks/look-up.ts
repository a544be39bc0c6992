/** How a look-up on the profile grows with the number of arcs. */
import { fullTurn } from '../src/geometry/lean.js';
import { supportAt } from '../src/geometry/profile.js';
import type { Finding } from './finding.js';
import { runnerOf } from './steady-measures.js';
import { microsecondsPerCall } from './timing.js';

export const question = 'Does the height over the floor cost as log n to look up?';

/** Leans spread over the turn by the golden section, so that no branch is learnt by heart. */
const leans = Array.from({ length: 4096 }, (_, i) => fullTurn * ((i * 0.6180339887498949) % 1));

export function run(): Promise<Finding[]> {
  const cost = (count: number): number => {
    const { profile } = runnerOf(count);
    let next = 0;
    return microsecondsPerCall(() => supportAt(profile, leans[next++ & 4095]!)).low;
  };
  const few = cost(100);
  return Promise.resolve(
    [1_000, 10_000].map((count) => ({
      what: `look-up among ${count} arcs, over 100 arcs`,
      value: cost(count) / few,
      unit: '×',
      // log n / log 100, twice over: ten thousand arcs no longer lie in the fastest cache.
      target: (2 * Math.log(count)) / Math.log(100),
      met: cost(count) / few <= (2 * Math.log(count)) / Math.log(100),
    })),
  );
}
