/** The starting speed at which a free body goes over its tails, by halving. */
import type { Course } from '../rolling/scripted-place.js';
import type { Facets } from './faceted-hull.js';
import { rollFreely } from './free-roll.js';

/** To so much of itself. */
const closeness = 5e-4;
/** It is looked for this far about what is expected first, then farther and farther. */
const first = 0.004;
const farthest = 0.5;

/**
 * Radians a second; null when it is not within half of what is expected.
 * @param course ends by its guards when it goes over, and `endsFalling`
 * @param expected about how fast, radians a second
 */
export function tipSpeed(course: Course, rest: number, expected: number, facets: Facets): number | null {
  const goes = (share: number): boolean => {
    const start = { lean: rest, rate: share * expected };
    return rollFreely(course, start, { facets, friction: Infinity }).goesOver === 'back';
  };
  const goesAtOnce = goes(1);
  const way = goesAtOnce ? -1 : 1;
  let [near, far, reach] = [1, 1 + way * first, first];
  while (goes(far) === goesAtOnce) {
    if (reach > farthest) return null;
    reach *= 2;
    [near, far] = [far, 1 + way * reach];
  }
  while (Math.abs(far - near) > closeness) {
    const middle = (near + far) / 2;
    if (goes(middle) === goesAtOnce) near = middle;
    else far = middle;
  }
  return (expected * (near + far)) / 2;
}
