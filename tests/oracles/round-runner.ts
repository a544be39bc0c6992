/**
 * A rigid body on a runner of one arc, in closed form, while the contact stays on the arc: radius R, G a distance e
 * behind its centre and v below it, d = sqrt(e² + v²), h = R - d.
 *
 *     rest             tan θ = e/v                                         (statics: G plumb below the centre)
 *     small period     2π sqrt((I + m h²) / (m g d))                       (textbook: cylinder with its mass off centre)
 *     friction demand  m H |H'| / (I + m H²) at a turning point            (F, N of plane rigid-body motion)
 *
 * Standing on a point q of the body it goes over where G is plumb above q, |G - q| over the floor.
 */
import type { MassProperties } from '../../src/mass.js';
import type { Point } from '../../src/geometry/point.js';

/** Standard gravity, 3rd CGPM 1901, typed in again so that the code's own is tested too. */
export const standardGravity = 9.80665;

export interface RoundRunner {
  readonly centre: Point;
  readonly radius: number;
  readonly body: MassProperties;
}

export const hangOf = ({ centre, body }: RoundRunner): number =>
  Math.hypot(centre.x - body.centre.x, centre.y - body.centre.y);

export const restOf = ({ centre, body }: RoundRunner): number =>
  Math.atan2(centre.x - body.centre.x, centre.y - body.centre.y);

export const heightAtRest = (runner: RoundRunner): number => runner.radius - hangOf(runner);

export function smallPeriodOf(runner: RoundRunner): number {
  const { mass, inertia } = runner.body;
  const aboutContact = inertia + mass * heightAtRest(runner) ** 2;
  return 2 * Math.PI * Math.sqrt(aboutContact / (mass * standardGravity * hangOf(runner)));
}

/** Where the body standing on q balances with G above it. */
export const crestOn = (q: Point, { body: { centre } }: RoundRunner): number =>
  Math.atan2(centre.x - q.x, centre.y - q.y);

export function tipEnergyOn(q: Point, runner: RoundRunner): number {
  const { mass, centre } = runner.body;
  const over = Math.hypot(centre.x - q.x, centre.y - q.y);
  return mass * standardGravity * (over - heightAtRest(runner));
}

/** At a turning point `amplitude` from rest. */
export function demandAtTurn(runner: RoundRunner, amplitude: number): number {
  const { mass, inertia } = runner.body;
  const height = runner.radius - hangOf(runner) * Math.cos(amplitude);
  const slope = hangOf(runner) * Math.sin(amplitude);
  return (mass * height * slope) / (inertia + mass * height ** 2);
}

/**
 * Period at an amplitude a: from the energy integral, with θ = a cos u (rule of Gauss and Chebyshev),
 *
 *     T = 2 ∫ sqrt(A / (2 g d (cos θ - cos a))) dθ = (2π/n) Σ sqrt(A a² sin² u / (4 g d sin((a+θ)/2) sin((a-θ)/2)))
 */
export function periodAt(runner: RoundRunner, amplitude: number, nodes = 200): number {
  const { radius, body } = runner;
  const [gyration2, hang] = [body.inertia / body.mass, hangOf(runner)];
  let sum = 0;
  for (let i = 0; i < nodes; i++) {
    const u = ((i + 0.5) * Math.PI) / nodes;
    const lean = amplitude * Math.cos(u);
    const arm2 = gyration2 + (radius - hang * Math.cos(lean)) ** 2 + (hang * Math.sin(lean)) ** 2;
    const fall = 4 * standardGravity * hang * product(amplitude, u);
    sum += Math.sqrt((arm2 * (amplitude * Math.sin(u)) ** 2) / fall);
  }
  return (2 * Math.PI * sum) / nodes;
}

/** sin((a+θ)/2) sin((a-θ)/2) with a ± a cos u = 2a cos²(u/2), 2a sin²(u/2). */
const product = (a: number, u: number): number =>
  Math.sin(a * Math.cos(u / 2) ** 2) * Math.sin(a * Math.sin(u / 2) ** 2);
