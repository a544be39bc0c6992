/**
 * The least change, in whole steps either way, with which something is met. Its shortfall tells on which side and by how
 * much it is not: 0 when it is met, negative below, positive above, infinite where there is no number.
 *
 * The way out is walked in doubling strides until it is met or changes sides, then halved down to the first whole step; where
 * sides change without its being met, as where a number begins, the rest of the stride is looked through too. What is met on a short stretch inside one stride, with the same side short on both its ends, is not found.
 */
export type Shortfall = (steps: number) => number;

/**
 * @param least @param greatest the range, whole steps, 0 within
 * @returns whole steps; null: not met in the range, or met already
 */
export function leastChange(shortfall: Shortfall, least: number, greatest: number): number | null {
  const start = shortfall(0);
  if (start === 0) return null;
  const up = walked(shortfall, start, 1, greatest);
  // The other way has to be shorter.
  const down = walked(shortfall, start, -1, Math.min(-least, up === null ? Infinity : up - 1));
  return down ?? up;
}

/** So many strides farther off in a row, and the way is given up. */
const patience = 3;

function walked(shortfall: Shortfall, start: number, sense: 1 | -1, most: number): number | null {
  const at = (steps: number): number => shortfall(sense * steps);
  let [near, off, worse] = [0, start, 0];
  for (let stride = 1; near < most; stride *= 2) {
    const far = Math.min(near + stride, most);
    const there = at(far);
    if (there === 0 || Math.sign(there) !== Math.sign(off)) {
      const found = firstMet(at, near, off, far, there);
      if (found !== null) return sense * found;
    }
    worse = Math.abs(there) > Math.abs(off) ? worse + 1 : 0;
    if (worse === patience) return null;
    [near, off] = [far, there];
  }
  return null;
}

/** Between a step where it is not met and one where it is, or is short on the other side. */
function firstMet(at: Shortfall, near: number, off: number, far: number, there: number): number | null {
  let [low, high, last] = [near, far, there];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const here = at(middle);
    if (here !== 0 && Math.sign(here) === Math.sign(off)) low = middle;
    else [high, last] = [middle, here];
  }
  if (last === 0) return high;
  return high < far && Math.sign(last) !== Math.sign(there) ? firstMet(at, high, last, far, there) : null;
}
