/**
 * The largest value of a smooth f on [a, b]: a few samples find the hill, golden sections climb it.
 * Good for functions with no more hills than `samples` can see.
 */
const golden = (Math.sqrt(5) - 1) / 2;
/** Near a smooth top a step of √ε moves f by ε only: closer than 1e-8 of the range nothing is gained. */
const closeness = 1e-8;

/** A place and the value there. */
export interface Top {
  readonly x: number;
  readonly value: number;
}

export const maximum = (f: (x: number) => number, a: number, b: number, samples?: number): number =>
  topOf(f, a, b, samples).value;

export function topOf(f: (x: number) => number, a: number, b: number, samples = 5): Top {
  let best = -Infinity;
  let at = 0;
  for (let i = 0; i < samples; i++) {
    const value = f(a + ((b - a) * i) / (samples - 1));
    if (value > best) [best, at] = [value, i];
  }
  const step = (b - a) / (samples - 1);
  if (at === 0 && f(a + inside * step) <= best) return { x: a, value: best };
  if (at === samples - 1 && f(b - inside * step) <= best) return { x: b, value: best };
  const left = a + Math.max(at - 1, 0) * step;
  const right = a + Math.min(at + 1, samples - 1) * step;
  const climbed = climb(f, left, right);
  return climbed.value <= best ? { x: a + at * step, value: best } : climbed;
}

/** Whether an end is the top is asked this share of a step inside: what lies nearer is higher by its square at most. */
const inside = 1e-6;

/** Nearer than some roundings of the places themselves no step is left to take. */
const roundings = 8 * 2 ** -52;

function climb(f: (x: number) => number, a: number, b: number): Top {
  const tolerance = Math.max(closeness * Math.abs(b - a), roundings * Math.max(Math.abs(a), Math.abs(b)));
  let [left, right] = [a, b];
  let [inLeft, inRight] = [b - golden * (b - a), a + golden * (b - a)];
  let [atLeft, atRight] = [f(inLeft), f(inRight)];
  while (Math.abs(right - left) > tolerance) {
    if (atLeft > atRight) {
      [right, inRight, atRight] = [inRight, inLeft, atLeft];
      inLeft = right - golden * (right - left);
      atLeft = f(inLeft);
    } else {
      [left, inLeft, atLeft] = [inLeft, inRight, atRight];
      inRight = left + golden * (right - left);
      atRight = f(inRight);
    }
  }
  return { x: atLeft > atRight ? inLeft : inRight, value: Math.max(atLeft, atRight) };
}
