/**
 * A third judge: the body of round-runner.ts as a circle in another general-purpose engine (planck), with that engine’s own
 * friction. A circle has no facets and no ends.
 */
import { Box, Circle, Settings, Vec2, World } from 'planck';
import type { RoundRunner } from './round-runner.js';
import { standardGravity as g } from './round-runner.js';

export interface RolledCircle {
  readonly times: readonly number[];
  /** Radians, counter-clockwise. */
  readonly leans: readonly number[];
}

/** Lower than the engine’s default of 5 mm: it lets shapes overlap by it. */
const slop = 1e-5;

/** From a standstill at a lean, at equal steps. */
export function rollCircle(
  { radius, body: { mass, inertia, centre } }: RoundRunner,
  release: number,
  { until, step, friction }: { readonly until: number; readonly step: number; readonly friction: number },
): RolledCircle {
  const before = Settings.linearSlop;
  Settings.linearSlop = slop;
  try {
    const world = new World({ gravity: new Vec2(0, -g), allowSleep: false });
    world.setContinuousPhysics(false);
    const floor = world.createBody();
    floor.createFixture({ shape: new Box(50, 1, new Vec2(0, -1), 0), friction });
    // Its origin is the circle’s centre.
    const roller = world.createBody({ type: 'dynamic', position: new Vec2(0, radius), angle: release });
    roller.createFixture({ shape: new Circle(radius), friction, density: 1 });
    const below = new Vec2(centre.x, centre.y - radius);
    roller.setMassData({ mass, center: below, I: inertia + mass * (below.x ** 2 + below.y ** 2) });
    const times = [0];
    const leans = [release];
    for (let n = 1; n * step <= until; n++) {
      world.step(step, 20, 8);
      times.push(n * step);
      leans.push(roller.getAngle());
    }
    return { times, leans };
  } finally {
    Settings.linearSlop = before;
  }
}

/** Mean of whole swings: passages of level one way, between two steps by a straight line. */
export function periodOfCircle({ times, leans }: RolledCircle): number {
  const passages = leans.slice(1).flatMap((lean, i) => {
    const before = leans[i]!;
    if (!(before < 0 && lean >= 0)) return [];
    return [times[i]! + ((times[i + 1]! - times[i]!) * -before) / (lean - before)];
  });
  return (passages.at(-1)! - passages[0]!) / (passages.length - 1);
}
