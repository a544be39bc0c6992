/**
 * A rigid body on a floor, free to slide, lift and tip. A contact engine pushes it out of the floor; the floor’s grip is a
 * force put on it, as the engine’s own friction is not Coulomb’s (it depends on step, iterations and scale, and not on
 * N). When N of a step is known, the grip is set right by an impulse:
 *
 *     ΔF = -v μ_c / Δt,   |F| ≤ μ N        1/μ_c = 1/m + h²/I
 *
 * v is the velocity of the place that touches, h how high the centre of gravity stands over it: ΔF stops that place where
 * the bound allows it. Looking at the velocity that it changes it is stable at any μ, and it sticks without a creep. The
 * F of the step before is put on before the floor pushes, so that N answers it; all of it afterwards would be an
 * energy out of nothing, 0.5 % a swing, and all of it before the body moves 15 %.
 */
import { ahead, upward } from '../geometry/lean.js';
import { minus, type Point } from '../geometry/point.js';
import type { MassProperties } from '../mass.js';
import { engineWorld, type Pose, type Put, type Start } from './engine-world.js';

export interface FreeMotion extends Pose {
  /** Height of the lowest place of the body, metres; below the floor where it touches. */
  readonly lowest: number;
  /** N and F of the last step, newton; F positive forward. */
  readonly normal: number;
  readonly along: number;
  /** v after that step, metres a second, where F is at its bound and it slides; else 0. */
  readonly slip: number;
}

export interface FreeBody {
  readonly now: () => FreeMotion;
  /**
   * One time step on a floor.
   * @param put what is put on it where it has moved to
   * @param friction Infinity: it never slides
   */
  readonly advance: (put: (pose: Pose) => Put, friction: number) => void;
  /** From here on its masses lie otherwise, chair’s frame; it moves on as it did. */
  readonly redistribute: (centre: Point, inertia: number) => void;
}

/** @param hull vertices in order of lean, chair’s frame, metres; @param step seconds */
export function freeBody(
  hull: readonly Point[],
  properties: MassProperties,
  step: number,
  start: Start,
): FreeBody {
  const world = engineWorld(hull, properties, step, start);
  const { mass } = properties;
  let { centre, inertia } = properties;
  let height = world.pose().centre.y - world.lowest();
  let [normal, along, slip] = [0, 0, 0];

  const alongFloor = (force: number): Put => ({ force: { x: force, y: 0 }, moment: force * height });

  /** @param rising upward speed before the floor pushed */
  function grip(friction: number, rising: number): void {
    const { x, y } = world.velocity();
    normal = Math.max(0, (mass * (y - rising)) / step);
    const reduced = 1 / (1 / mass + height ** 2 / inertia);
    const speed = x + world.pose().rate * height;
    const wish = normal > 0 ? along - (speed * reduced) / step : 0;
    const bound = friction === Infinity ? Infinity : friction * normal;
    const force = Math.min(Math.max(wish, -bound), bound);
    world.strike(alongFloor(force - along));
    slip = force === wish ? 0 : speed + ((force - along) * step) / reduced;
    along = force;
  }

  return {
    now: () => {
      const pose = world.pose();
      return { ...pose, lowest: pose.centre.y - height, normal, along, slip };
    },
    advance: (put, friction) => {
      let rising = 0;
      world.step(() => {
        const pose = world.pose();
        world.strike(put(pose));
        height = pose.centre.y - world.lowest();
        world.strike(alongFloor(along));
        rising = world.velocity().y;
      });
      grip(friction, rising);
    },
    redistribute: (to, about) => {
      const way = minus(to, centre);
      const { lean } = world.pose();
      [centre, inertia] = [to, about];
      world.redistribute({ x: ahead(way, lean), y: upward(way, lean) }, about);
    },
  };
}
