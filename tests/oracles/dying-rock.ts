/**
 * A half swing on one arc against rolling resistance, with the lean θ in place of time: e = θ̇² obeys, by dividing
 * the equation of motion by θ̇ (de/dθ = 2 θ̈), a linear equation
 *
 *     de/dθ = -2 [H'(g + ρ e) + σ c (g + (ρ - H) e)] / (k² + H² + H'² + σ c H')
 *
 * smooth through both turning points. Equal steps of Runge and Kutta's order 4; the turn is where e is 0 again.
 */
import { standardGravity as g } from './round-runner.js';

export interface DyingRock {
  readonly radius: number;
  /** How far G hangs below the centre of the arc, metres. */
  readonly hang: number;
  readonly gyration2: number;
  readonly resistance: number;
}

/** Lean from rest at which it turns, let go at another. */
export function turnAgainst(rock: DyingRock, release: number, steps = 4000): number {
  const sense = release > 0 ? -1 : 1;
  // From release towards as far on the other side: with any loss it turns before.
  const step = (-2 * release) / steps;
  let [lean, energy] = [release, 0];
  for (let i = 0; i <= steps; i++) {
    const next = advanced(rock, sense, lean, energy, step);
    if (next <= 0 && i > 0) return lean + step * shareToZero(rock, sense, lean, energy, step);
    [lean, energy] = [lean + step, next];
  }
  throw new RangeError(`turnAgainst: still moving at ${lean}`);
}

function shareToZero(rock: DyingRock, sense: number, lean: number, energy: number, step: number): number {
  let [before, after] = [0, 1];
  for (let i = 0; i < 54; i++) {
    const middle = (before + after) / 2;
    if (advanced(rock, sense, lean, energy, middle * step) > 0) before = middle;
    else after = middle;
  }
  return (before + after) / 2;
}

function advanced(rock: DyingRock, sense: number, lean: number, energy: number, h: number): number {
  const slope = (at: number, e: number): number => change(rock, sense, at, e);
  const a = slope(lean, energy);
  const b = slope(lean + h / 2, energy + (h / 2) * a);
  const c = slope(lean + h / 2, energy + (h / 2) * b);
  const d = slope(lean + h, energy + h * c);
  return energy + (h * (a + 2 * b + 2 * c + d)) / 6;
}

function change({ radius, hang, gyration2, resistance }: DyingRock, sense: number, lean: number, e: number) {
  const [height, ahead] = [radius - hang * Math.cos(lean), hang * Math.sin(lean)];
  const against = sense * resistance * (g + (radius - height) * e);
  return (
    (-2 * (ahead * (g + radius * e) + against)) /
    (gyration2 + height ** 2 + ahead ** 2 + sense * resistance * ahead)
  );
}
