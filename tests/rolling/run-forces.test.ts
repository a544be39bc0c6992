/** What runs ask of the floor, against dense looks at the Lagrangian and against the free swing. */
import { describe, expect, it } from 'vitest';
import { lengthAt, profileOf } from '../../src/geometry/profile.js';
import { runForces } from '../../src/rolling/run-forces.js';
import type { Script } from '../../src/rolling/script.js';
import type { Course } from '../../src/rolling/scripted-place.js';
import { rollThrough } from '../../src/rolling/scripted-roll.js';
import { swingForces } from '../../src/rolling/swing.js';
import {
  followLagrangian,
  lagrangianAt,
  type MovingLoad,
  type Sample,
} from '../oracles/moving-lagrangian.js';
import { standardGravity as g } from '../oracles/round-runner.js';
import { off, swingFrom, there } from './roll.js';
import { plumbAbove, roundRunner, runner } from './runners.js';
import { courseOn, lagrangianOf, still, thrown, thrownBack } from './scripted.js';

const round = roundRunner({ x: 0, y: 1.1 }, 1.1, -0.6, 0.6);
const body = { mass: 30, inertia: 3, centre: { x: -0.02, y: 0.5 } };
const hip = { x: -0.1, y: 0.5 };
const trunk = { mass: 45, inertia: 2, centre: { x: -0.15, y: 0.85 } };
const rest = { lean: 0, rate: 0 };

const leaning: Script = {
  ...still(body),
  moving: [thrown(hip, trunk, thrownBack(-0.26, 0.45))],
  breaks: [0.45],
  end: 0.45,
};

const demand = ({ along, normal }: Sample): number => Math.abs(along) / normal;

/** The largest of what a Lagrangian run shows: looked at 200 times, then about the best 60 times, then 60 times again. */
function largest(load: MovingLoad, from: number, to: number, read: (sample: Sample) => number): number {
  let [a, b, most] = [from, to, -Infinity];
  for (const count of [200, 60, 60]) {
    const step = (b - a) / count;
    const looks = followLagrangian(
      load,
      rest,
      Array.from({ length: count + 1 }, (_, i) => Math.min(a + i * step, to)),
    );
    const best = looks.reduce((one, other) => (read(other) > read(one) ? other : one));
    most = Math.max(most, read(best));
    [a, b] = [Math.max(from, best.time - step), Math.min(to, best.time + step)];
  }
  return most;
}

describe('against the Lagrangian', () => {
  it.each([
    ['a trunk thrown', leaning],
    [
      'a trunk thrown, a press that fades and a push',
      {
        ...leaning,
        presses: [
          {
            place: (time: number) => ({ x: 0.1 * time, y: 0.45 }),
            force: (time: number) => 200 * Math.exp(-3 * time),
          },
        ],
        pushes: [{ place: { x: 0.2, y: 0.5 }, force: (time: number) => 20 * Math.sin(5 * time) }],
      },
    ],
  ] satisfies [string, Script][])('friction demand and least N: %s', { timeout: 30_000 }, (_, script) => {
    const course = courseOn(round, script, { until: 2 });
    const found = runForces(course, rollThrough(course, rest));
    const load = lagrangianOf(round, course);
    // Both sides of the break, whose acceleration jumps.
    const both = (read: (sample: Sample) => number): number =>
      Math.max(largest(load, 1e-12, 0.45 - 1e-9, read), largest(load, 0.45, 2, read));
    // Looks 1e-5 s apart leave 1e-11 of a second derivative of some hundreds; the break 1e-9 s of slopes of tens.
    expect(Math.abs(found.frictionDemand - both(demand))).toBeLessThan(1e-7);
    expect(Math.abs(found.leastFloorForce + both(({ normal }) => -normal / (75 * g)))).toBeLessThan(1e-7);
    expect(found.frictionDemand).toBeGreaterThan(0.05);
    expect(found.leastFloorForce).toBeLessThan(0.99);
  });
});

describe('where the shove of a foot jumps', () => {
  /** A shove that lifts while it lasts: least N just before its end, or at its beginning. */
  const shoved = (until: number): Course => {
    const x = 0.3 - lengthAt(profileOf([[round.outline]]), 0);
    const foot = { force: 120, until, ankle: { x, y: 0.08 }, hip, reach: Infinity };
    return courseOn(round, { ...still(body), foot }, { until: 1.2 });
  };

  it('both sides of the jump are felt', () => {
    const course = shoved(0.3);
    const run = rollThrough(course, rest);
    const found = runForces(course, run);
    const load = lagrangianOf(round, course);
    const jump = run.legs.find(({ from }) => from.time === 0.3)!.from;
    const [at] = followLagrangian(load, rest, [0.3]);
    expect(jump.lean).toBeCloseTo(at!.lean, 10);
    const sides = [0.3 - 1e-13, 0.3].map((time) => lagrangianAt(load, { ...at!, time }));
    expect(sides[1]!.normal - sides[0]!.normal).toBeGreaterThan(60);
    const felt = Math.max(largest(load, 1e-12, 0.3 - 1e-12, demand), largest(load, 0.3, 1.2, demand));
    expect(Math.abs(found.frictionDemand - felt)).toBeLessThan(1e-7);
    for (const side of sides) {
      expect(found.frictionDemand).toBeGreaterThanOrEqual(demand(side) - 1e-9);
      expect(found.leastFloorForce).toBeLessThanOrEqual(side.normal / (30 * g) + 1e-9);
    }
  });

  it('the least is that of its first moment, before anything moves', () => {
    const course = shoved(0.02);
    const start = lagrangianAt(lagrangianOf(round, course), { time: 0, ...rest });
    const { leastFloorForce } = runForces(course, rollThrough(course, rest));
    expect(leastFloorForce).toBeLessThanOrEqual(start.normal / (30 * g) + 1e-12);
    // In 0.02 s the lean grows by a thousandth.
    expect(leastFloorForce).toBeCloseTo(start.normal / (30 * g), 2);
  });
});

describe('a rigid body', () => {
  it('asks what its free swing asks', () => {
    for (const release of [0.05, 0.2, 0.45]) {
      const lean = Math.atan2(0.02, 0.6) + release;
      const swing = there(swingFrom(round.outline, body, lean - release, lean));
      const course = courseOn(round, still(body), { until: swing.period });
      const found = runForces(course, rollThrough(course, { lean, rate: 0 }));
      const wanted = swingForces(swing);
      // Both climb the same hills to their own 1e-10.
      expect(off(found.frictionDemand, wanted.frictionDemand)).toBeLessThan(1e-9);
      expect(off(found.leastFloorForce, wanted.leastFloorForce)).toBeLessThan(1e-9);
    }
  });

  it('over a flat asks for the grip of its impacts too', () => {
    const made = runner([{ radius: 1.1, turn: 0.4 }, { flat: 0.05 }, { radius: 0.9, turn: 0.4 }], -0.4);
    const rear = plumbAbove(made.tracks.slice(2), 0, 0.6);
    const rolls = { mass: 60, inertia: 60 * 0.2 ** 2, centre: { x: rear.x + 0.025, y: rear.y } };
    const swing = there(swingFrom(made.outline, rolls, 0, 0.01));
    const course = courseOn(made, still(rolls), { until: swing.period });
    const found = runForces(course, rollThrough(course, { lean: 0.01, rate: 0 }));
    const wanted = swingForces(swing);
    expect(swing.impacts).toHaveLength(2);
    expect(found.frictionDemand).toBeGreaterThanOrEqual(
      Math.max(...swing.impacts.map(({ grip }) => grip)) - 1e-9,
    );
    expect(off(found.frictionDemand, wanted.frictionDemand)).toBeLessThan(1e-9);
    expect(off(found.leastFloorForce, wanted.leastFloorForce)).toBeLessThan(1e-9);
  });

  it('that leaves the floor stands on nothing', () => {
    const foot = { force: 400, until: 1, ankle: { x: 0, y: 0 }, hip, reach: Infinity };
    const course = courseOn(round, { ...still(body), foot });
    const { frictionDemand, leastFloorForce } = runForces(course, rollThrough(course, rest));
    expect([Number.isFinite(frictionDemand), leastFloorForce]).toEqual([false, 0]);
  });
});
