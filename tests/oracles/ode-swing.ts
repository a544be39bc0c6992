/**
 * Half a swing by an independent integrator (odex), from momentum about the contact as rolling-motion.ts has it:
 * any profile whose contact and radius are given as functions of lean.
 */
import { Solver } from 'odex';
import type { MassProperties } from '../../src/mass.js';
import type { Point } from '../../src/geometry/point.js';
import { standardGravity as g } from './round-runner.js';

export interface SmoothRunner {
  /** In the body’s frame. */
  readonly contact: (lean: number) => Point;
  readonly radius: (lean: number) => number;
}

/** Seconds from a standstill to the next, there and back: twice the time to the first turning point. */
export function swingByOde(runner: SmoothRunner, body: MassProperties, release: number): number {
  const state = (lean: number) => {
    const p = runner.contact(lean);
    const [x, y] = [body.centre.x - p.x, body.centre.y - p.y];
    const [sin, cos] = [Math.sin(lean), Math.cos(lean)];
    return { ahead: x * cos - y * sin, above: x * sin + y * cos };
  };
  // L = (I + m r²) θ̇,  L̇ = m r_x (ρ θ̇² - g)
  const rates = (_: number, [lean, momentum]: readonly number[]): number[] => {
    const { ahead, above } = state(lean!);
    const rate = momentum! / (body.inertia + body.mass * (ahead ** 2 + above ** 2));
    return [rate, body.mass * ahead * (runner.radius(lean!) * rate ** 2 - g)];
  };
  const solver = new Solver(2);
  solver.absoluteTolerance = 1e-12;
  solver.relativeTolerance = 1e-12;
  const at = (time: number): number[] =>
    time === 0 ? [release, 0] : solver.solve(rates, 0, [release, 0], time).y;
  // The turn is where the momentum comes back to nothing.
  let [early, late] = [0.05, 0.05];
  const moving = Math.sign(at(early)[1]!);
  while (Math.sign(at(late)[1]!) === moving) [early, late] = [late, late + 0.05];
  while (late - early > 1e-11) {
    const middle = (early + late) / 2;
    if (Math.sign(at(middle)[1]!) === moving) early = middle;
    else late = middle;
  }
  return early + late;
}
