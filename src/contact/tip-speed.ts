/** The starting speed at which a free body goes over its tails, by halving. */
import type { Course } from '../rolling/scripted-place.js';
import type { Facets } from './faceted-hull.js';
import { rollFreely } from './free-roll.js';

/** To so much of what is expected. */
const closeness = 2e-4;
/** It is looked for this far about what is expected first, then farther and farther, down to nothing and to so much. */
const first = 0.004;
const farthest = 16;

/**
 * Radians a second; null when it is neither less than that nor up to 16 times what is expected.
 * @param course ends by its guards when it goes over, and `endsFalling`
 * @param expected about how fast, radians a second
 */
export function tipSpeed(course: Course, rest: number, expected: number, facets: Facets): number | null {
  const goes = (share: number): boolean => {
    const start = { lean: rest, rate: share * expected };
    return rollFreely(course, start, { facets, friction: Infinity }).goesOver === 'back';
  };
  const goesAtOnce = goes(1);
  const farther = (reach: number): number => (goesAtOnce ? Math.max(0, 1 - reach) : 1 + reach);
  let [near, far, reach] = [1, farther(first), first];
  while (far > 0 && goes(far) === goesAtOnce) {
    if (reach > farthest) return null;
    reach *= 2;
    [near, far] = [far, farther(reach)];
  }
  while (Math.abs(far - near) > closeness) {
    const middle = (near + far) / 2;
    if (goes(middle) === goesAtOnce) near = middle;
    else far = middle;
  }
  return (expected * (near + far)) / 2;
}
