import { expect, it } from 'vitest';
import type { Cubic } from '../../src/geometry/piece.js';
import { lengthAt, perimeter, profileOf } from '../../src/geometry/profile.js';

/** Simpson's rule on 2000 steps: error far below 1e-13 for these. */
function simpson(f: (x: number) => number, to: number): number {
  const n = 2000;
  let sum = f(0) + f(to);
  for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * f((to * i) / n);
  return (sum * to) / (3 * n);
}

it('runs along a curve that begins straight, where the radius has no bound', () => {
  // y = x³ from its flex at 0, on the hull from there: ds = sqrt(1 + 9 x⁴) dx; the rest of the hull is its chord.
  const cubic: Cubic = {
    kind: 'cubic',
    from: { x: 0, y: 0 },
    control1: { x: 1 / 3, y: 0 },
    control2: { x: 2 / 3, y: 0 },
    to: { x: 1, y: 1 },
  };
  const chord = { kind: 'line', from: cubic.to, to: cubic.from } as const;
  const profile = profileOf([[[cubic, chord]]]);
  const arc = (to: number): number => simpson((x) => Math.sqrt(1 + 9 * x ** 4), to);
  expect(perimeter(profile)).toBeCloseTo(arc(1) + Math.SQRT2, 11);
  // The slope 3x² faces down at θ = -atan(3x²); lengths grow with θ, from the end at (1, 1) to the flex.
  const at = (x: number): number => lengthAt(profile, -Math.atan(3 * x * x));
  for (const x of [0.05, 0.3, 0.9]) expect(at(x) - at(0.95)).toBeCloseTo(arc(0.95) - arc(x), 11);
});
