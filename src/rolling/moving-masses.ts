/**
 * A rolling chair in which masses move. With r_i from the contact to a mass, u_i its velocity and a_i its acceleration
 * relative to the chair (floor axes), φ̇_i its turn rate relative to the chair, L the angular momentum about the contact:
 *
 *     L  = A θ̇ + B        A = Σ (m |r|² + I)        B = Σ (m (r × u) + I φ̇)
 *     L̇  = ρ θ̇ p_y - g Σ m r_x + Q                  p_y = Σ m (θ̇ r_x + u_y)
 *     Ẋ_C = -ρ θ̇
 *
 * Q: of a press w at b  -w (X_b - X_C), of a push P towards -x at b  +P Y_b, of a foot force f at x_f  +f (x_f - X_C).
 * Differentiated once more, with Σ m r·u = K and T = Σ (m (r × a) + I φ̈):
 *
 *     A θ̈ = -(g + ρ θ̇²) Σ m r_x - 2 θ̇ K - T + Q
 *     ṗ_x = Σ m (-θ̈ r_y - θ̇² r_x - 2 θ̇ u_y + a_x)        F = ṗ_x + P
 *     ṗ_y = Σ m (θ̈ r_x + θ̇² (ρ - r_y) + 2 θ̇ u_x + a_y)   N = ṗ_y + g Σ m + Σ w - f
 */
import type { Touch } from '../geometry/hull-element.js';
import type { Point } from '../geometry/point.js';
import type { State } from '../numeric/ode.js';
import { g } from './gravity.js';
import type { Script } from './script.js';

/** The sums of the equations above at one time and lean. */
export interface Sums {
  /** A, B, and ρ. */
  readonly arm: number;
  readonly own: number;
  readonly radius: number;
  /** Σ m, Σ m r_x, Σ m r_y. */
  readonly mass: number;
  readonly ahead: number;
  readonly above: number;
  /** Σ m u and Σ m a, floor axes. */
  readonly drift: Point;
  readonly urge: Point;
  /** K and T. */
  readonly spread: number;
  readonly twist: number;
  /** Q without the foot, Σ w, Σ P. */
  readonly moment: number;
  readonly pressed: number;
  readonly pushed: number;
}

/** Sums are taken in the chair's frame and turned once: they are what a run spends its time on. */
export function sumsAt(script: Script, { contact, radius }: Touch, lean: number, time: number): Sums {
  const { fixed } = script;
  const [stillX, stillY] = [fixed.centre.x - contact.x, fixed.centre.y - contact.y];
  let mass = fixed.mass;
  let [firstX, firstY] = [mass * stillX, mass * stillY];
  let arm = fixed.inertia + mass * (stillX * stillX + stillY * stillY);
  let [own, spread, twist] = [0, 0, 0];
  let [driftX, driftY, urgeX, urgeY] = [0, 0, 0, 0];
  for (const body of script.moving) {
    const { mass: m, inertia } = body;
    const { centre, velocity: u, acceleration: a, turnRate, turnAcceleration } = body.motion(time);
    const [x, y] = [centre.x - contact.x, centre.y - contact.y];
    mass += m;
    firstX += m * x;
    firstY += m * y;
    arm += inertia + m * (x * x + y * y);
    own += m * (x * u.y - y * u.x) + inertia * turnRate;
    spread += m * (x * u.x + y * u.y);
    twist += m * (x * a.y - y * a.x) + inertia * turnAcceleration;
    driftX += m * u.x;
    driftY += m * u.y;
    urgeX += m * a.x;
    urgeY += m * a.y;
  }
  let [pressed, pressedX, pressedY] = [0, 0, 0];
  for (const { force, place } of script.presses) {
    const [w, { x, y }] = [force(time), place(time)];
    pressed += w;
    pressedX += w * (x - contact.x);
    pressedY += w * (y - contact.y);
  }
  let [pushed, pushedX, pushedY] = [0, 0, 0];
  for (const { force, place } of script.pushes) {
    const p = force(time);
    pushed += p;
    pushedX += p * (place.x - contact.x);
    pushedY += p * (place.y - contact.y);
  }
  const [sin, cos] = [Math.sin(lean), Math.cos(lean)];
  return {
    arm,
    own,
    radius,
    mass,
    ahead: firstX * cos - firstY * sin,
    above: firstX * sin + firstY * cos,
    drift: { x: driftX * cos - driftY * sin, y: driftX * sin + driftY * cos },
    urge: { x: urgeX * cos - urgeY * sin, y: urgeX * sin + urgeY * cos },
    spread,
    twist,
    moment: pushedX * sin + pushedY * cos - (pressedX * cos - pressedY * sin),
    pressed,
    pushed,
  };
}

/** θ̇ from L. */
export const rateFrom = ({ arm, own }: Sums, momentum: number): number => (momentum - own) / arm;

/** L from θ̇. */
export const momentumFrom = ({ arm, own }: Sums, rate: number): number => arm * rate + own;

/** p_y, newton seconds. */
export const upwardMomentum = ({ ahead, drift }: Sums, rate: number): number => rate * ahead + drift.y;

/** The floor's push on the feet: how much, and how far ahead of the contact's zero. */
export interface FootForce {
  readonly force: number;
  readonly x: number;
}
export const noFoot: FootForce = { force: 0, x: 0 };

const momentOf = ({ force, x }: FootForce, contactX: number): number => force * (x - contactX);

/** (θ̇, L̇, Ẋ_C) at the state (θ, L, X_C). */
export function motionRate(sums: Sums, [, momentum, contactX]: State, foot: FootForce): State {
  const rate = rateFrom(sums, momentum!);
  const moment = sums.moment + momentOf(foot, contactX!);
  return [
    rate,
    sums.radius * rate * upwardMomentum(sums, rate) - g * sums.ahead + moment,
    -sums.radius * rate,
  ];
}

/** θ̈ */
export function accelerationAt(sums: Sums, rate: number, contactX: number, foot: FootForce): number {
  const { arm, radius, ahead, spread, twist, moment } = sums;
  const turning = moment + momentOf(foot, contactX) - twist;
  return (turning - (g + radius * rate * rate) * ahead - 2 * rate * spread) / arm;
}

export interface FloorReaction {
  /** N and F, newton; F positive forward. */
  readonly normal: number;
  readonly along: number;
}

export function floorReaction(
  sums: Sums,
  rate: number,
  contactX: number,
  foot: FootForce,
  acceleration = accelerationAt(sums, rate, contactX, foot),
): FloorReaction {
  const { radius, mass, ahead, above, drift, urge, pressed, pushed } = sums;
  const squared = rate * rate;
  const upwards = acceleration * ahead + squared * (radius * mass - above) + 2 * rate * drift.x + urge.y;
  const forwards = -acceleration * above - squared * ahead - 2 * rate * drift.y + urge.x;
  return { normal: upwards + g * mass + pressed - foot.force, along: forwards + pushed };
}
