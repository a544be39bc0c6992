/**
 * The largest value of f on [a, b] by looking everywhere: 2,000 places, then the neighbourhood of the best one again,
 * five times. Wherever f jumps it comes as near to the higher side as numbers do. f must have no hill narrower than
 * 1/2,000 of the range.
 */
export function denseMaximum(f: (x: number) => number, a: number, b: number): number {
  const count = 2000;
  let [from, to, largest] = [a, b, -Infinity];
  for (let look = 0; look < 6; look++) {
    const step = (to - from) / count;
    let at = from;
    for (let i = 0; i <= count; i++) {
      const x = i === count ? to : from + i * step;
      const value = f(x);
      if (value >= largest) [largest, at] = [value, x];
    }
    [from, to] = [Math.max(a, at - step), Math.min(b, at + step)];
  }
  return largest;
}
