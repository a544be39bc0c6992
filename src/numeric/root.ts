/**
 * Roots of continuous functions in a bracket: Brent's method (R. P. Brent, Algorithms for Minimization without
 * Derivatives, 1973, chapter 4), and all sign changes that samples show.
 */

/** To the last digits of the bracket's numbers: nothing nearer can be told apart. */
const closest = 4 * 2 ** -52;
/** Brent's bound is the square of bisection's 52 steps; in practice a dozen serve. */
const mostSteps = 200;

/**
 * x in [a, b] with f(x) = 0.
 * @throws RangeError when f has the same sign at both ends, or is not a number there
 */
export function rootBetween(f: (x: number) => number, a: number, b: number): number {
  let [best, other, fBest, fOther] = [b, a, f(b), f(a)];
  if (fBest === 0) return best;
  if (fOther === 0) return other;
  if (!(Math.sign(fBest) * Math.sign(fOther) < 0))
    throw new RangeError(`rootBetween: ${fOther} at ${a} and ${fBest} at ${b}`);
  let [last, fLast] = [other, fOther];
  let step = best - last;
  let stepBefore = step;
  for (let count = 0; count < mostSteps && fBest !== 0; count++) {
    if (fBest * fOther > 0) {
      [other, fOther] = [last, fLast];
      step = best - last;
      stepBefore = step;
    }
    if (Math.abs(fOther) < Math.abs(fBest)) {
      [last, best, other] = [best, other, best];
      [fLast, fBest, fOther] = [fBest, fOther, fBest];
    }
    const tolerance = closest * Math.max(Math.abs(best), closest);
    const half = (other - best) / 2;
    if (Math.abs(half) <= tolerance) return best;
    const guess = interpolated(last, best, other, fLast, fBest, fOther, half);
    const usable =
      Math.abs(stepBefore) >= tolerance &&
      Math.abs(guess) < Math.min(1.5 * Math.abs(half), Math.abs(stepBefore / 2));
    [stepBefore, step] = usable && guess * half > 0 ? [step, guess] : [half, half];
    [last, fLast] = [best, fBest];
    best += Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance;
    fBest = f(best);
  }
  return best;
}

/** Step from the best point by inverse quadratic interpolation, or by the secant where only two points differ. */
function interpolated(
  last: number,
  best: number,
  other: number,
  fLast: number,
  fBest: number,
  fOther: number,
  half: number,
): number {
  if (Math.abs(fLast) <= Math.abs(fBest)) return half;
  const s = fBest / fLast;
  if (last === other) return (2 * half * s) / (s - 1);
  const q = fLast / fOther;
  const r = fBest / fOther;
  const p = s * (2 * half * q * (q - r) - (best - last) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}

/**
 * Every root on (a, b) that `samples` steps show as a change of sign, in order. Values within `noise` of zero have no
 * sign of their own: they take that of the sample before.
 */
export function signChanges(
  f: (x: number) => number,
  a: number,
  b: number,
  samples: number,
  noise = 0,
): number[] {
  const roots: number[] = [];
  let [at, before] = [a, f(a)];
  for (let i = 1; i <= samples; i++) {
    const x = i === samples ? b : a + ((b - a) * i) / samples;
    const here = f(x);
    if (Math.abs(here) <= noise) continue;
    if (before * here < 0 && Math.abs(before) > noise) roots.push(rootBetween(f, at, x));
    [at, before] = [x, here];
  }
  return roots;
}
