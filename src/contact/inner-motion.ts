/**
 * Masses that move within a body that is free, as a single body for a contact engine. With c(τ) the common centre of
 * gravity in the chair’s frame, q = r - c, ū = Σ m u / m and ā = Σ m a / m (relative to the chair), the engine’s body is the
 * place of the chair at c:
 *
 *     m dv/dτ = Σ F - m dū/dτ            dū/dτ = ā + θ̇ × ū                       v: of that place
 *     I θ̈     = Σ M - İ θ̇ - ḣ           İ = 2 Σ m q·u,  ḣ = Σ m (q × a) + Σ I_i φ̈    about c
 *
 * F, M: what the floor and the hands and feet do. The centre of gravity itself moves at v + ū.
 */
import { ahead, upward } from '../geometry/lean.js';
import { minus, type Point } from '../geometry/point.js';
import type { MassProperties } from '../mass.js';
import type { Script } from '../rolling/script.js';
import type { Pose, Put } from './engine-world.js';

/** How the masses lie and move relative to the chair at one time; chair’s frame. */
export interface InnerMotion extends MassProperties {
  /** ū and ā. */
  readonly drift: Point;
  readonly urge: Point;
  /** İ and ḣ. */
  readonly spreading: number;
  readonly twist: number;
}

export function innerMotion({ fixed, moving }: Script, time: number): InnerMotion {
  const movers = moving.map(({ mass, inertia, motion }) => ({ mass, inertia, ...motion(time) }));
  const mass = movers.reduce((sum, mover) => sum + mover.mass, fixed.mass);
  const mean = (of: (mover: (typeof movers)[number]) => Point, still: Point): Point => ({
    x: movers.reduce((sum, mover) => sum + mover.mass * of(mover).x, fixed.mass * still.x) / mass,
    y: movers.reduce((sum, mover) => sum + mover.mass * of(mover).y, fixed.mass * still.y) / mass,
  });
  const centre = mean((mover) => mover.centre, fixed.centre);
  const off = minus(fixed.centre, centre);
  let inertia = fixed.inertia + fixed.mass * (off.x ** 2 + off.y ** 2);
  let [spreading, twist] = [0, 0];
  for (const {
    mass: m,
    inertia: own,
    centre: at,
    velocity: u,
    acceleration: a,
    turnAcceleration,
  } of movers) {
    const q = minus(at, centre);
    inertia += own + m * (q.x ** 2 + q.y ** 2);
    spreading += 2 * m * (q.x * u.x + q.y * u.y);
    twist += m * (q.x * a.y - q.y * a.x) + own * turnAcceleration;
  }
  const drift = mean(({ velocity }) => velocity, none);
  const urge = mean(({ acceleration }) => acceleration, none);
  return { mass, centre, inertia, drift, urge, spreading, twist };
}

const none: Point = { x: 0, y: 0 };

/** Turned with the chair. */
const turned = (p: Point, lean: number): Point => ({ x: ahead(p, lean), y: upward(p, lean) });

/**
 * What the inner motion, the presses and pushes and the feet put on the body.
 * @param onFloor for how much of the time the feet push
 */
export function putOn(
  script: Script,
  inner: InnerMotion,
  { lean, rate, centre }: Pose,
  time: number,
  onFloor: number,
): Put {
  const [drift, urge] = [turned(inner.drift, lean), turned(inner.urge, lean)];
  let x = -inner.mass * (urge.x - rate * drift.y);
  let y = -inner.mass * (urge.y + rate * drift.x);
  let moment = -inner.spreading * rate - inner.twist;
  for (const { place, force } of script.presses) {
    const w = force(time);
    y -= w;
    moment -= w * turned(minus(place(time), inner.centre), lean).x;
  }
  for (const { place, force } of script.pushes) {
    const p = force(time);
    x -= p;
    moment += p * turned(minus(place, inner.centre), lean).y;
  }
  if (script.foot !== null) {
    const shove = onFloor * script.foot.force;
    y += shove;
    moment += shove * (script.foot.ankle.x - centre.x);
  }
  return { force: { x, y }, moment };
}

/** How much farther the hip may go from the ankle before the feet no longer reach the floor, metres. */
export function reachLeft({ foot }: Script, inner: InnerMotion, { lean, centre }: Pose): number {
  if (foot === null) return 0;
  const hip = turned(minus(foot.hip, inner.centre), lean);
  return foot.reach - Math.hypot(centre.x + hip.x - foot.ankle.x, centre.y + hip.y - foot.ankle.y);
}
