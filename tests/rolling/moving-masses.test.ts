/** Masses that move in a rolling chair, against Lagrange's equation, Newton's laws and closed forms. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ahead, upward } from '../../src/geometry/lean.js';
import { contactAt } from '../../src/geometry/profile.js';
import { minus, plus, type Point } from '../../src/geometry/point.js';
import { combineMasses, type MassProperties } from '../../src/mass.js';
import { oneStep } from '../../src/numeric/ode.js';
import { rateFrom, upwardMomentum } from '../../src/rolling/moving-masses.js';
import { rateAlong } from '../../src/rolling/roll-leg.js';
import { reactionAt } from '../../src/rolling/run-forces.js';
import type { Script } from '../../src/rolling/script.js';
import { sumsOn, type Course, type Leg } from '../../src/rolling/scripted-place.js';
import { rollThrough } from '../../src/rolling/scripted-roll.js';
import { followLagrangian, lagrangianAt } from '../oracles/moving-lagrangian.js';
import { periodAt, standardGravity as g } from '../oracles/round-runner.js';
import { degree } from './roll.js';
import { plumbAbove, roundRunner, runner, type Runner } from './runners.js';
import { courseOn, floorShift, lagrangianOf, passedBy, still, thrown, thrownBack } from './scripted.js';

/** Arcs of several radii with a corner between the last two: it rocks over all of them. */
const made = runner(
  [
    { radius: 1.1, turn: 0.38 },
    { radius: 0.9, turn: 0.1 },
    { radius: 1.3, turn: 0.12 },
    { corner: 0.01 },
    { radius: 1.2, turn: 0.3 },
  ],
  -0.45,
  { x: 0.45, y: 0.1 },
);
const hip = { x: -0.1, y: 0.5 };
const chair: MassProperties = { mass: 20, inertia: 2.6, centre: { x: 0, y: 0.42 } };
const trunk: MassProperties = { mass: 50, inertia: 2.2, centre: { x: -0.14, y: 0.86 } };

/** A trunk thrown back and then swaying, a press that wanders, a push, and a foot for a while. */
const everything: Script = {
  fixed: chair,
  moving: [
    thrown(hip, trunk, thrownBack(-0.25, 0.4)),
    thrown({ x: 0.1, y: 0.4 }, { mass: 9, inertia: 0.2, centre: { x: 0.35, y: 0.42 } }, (time) => ({
      angle: 0.2 * Math.sin(3 * time),
      rate: 0.6 * Math.cos(3 * time),
      acceleration: -1.8 * Math.sin(3 * time),
    })),
  ],
  presses: [
    {
      place: (time) => ({ x: 0.1 * Math.sin(2 * time), y: 0.45 }),
      force: (time) => 60 * Math.cos(time) ** 2,
    },
  ],
  pushes: [{ place: { x: -0.3, y: 0.9 }, force: (time) => 12 * Math.sin(4 * time) }],
  foot: { force: 90, until: 0.55, ankle: { x: 0.4, y: 0.06 }, hip, reach: Infinity },
  breaks: [0.4],
  end: 0.4,
};

const near = (a: number, b: number): number => Math.abs(a - b);
const most = (values: readonly number[]): number => Math.max(...values.map(Math.abs));

/** How far a run is from Lagrange's, at some thirty points inside its legs: the oracle takes its time. */
function apart(runnerMade: Runner, course: Course, start: { lean: number; rate: number }) {
  const all = passedBy(course, rollThrough(course, start));
  const passed = all.filter((_, i) => i % Math.ceil(all.length / 30) === 0 || i === all.length - 1);
  const times = passed.map(({ time }) => time);
  const other = followLagrangian(lagrangianOf(runnerMade, course), start, times);
  const of = (key: 'lean' | 'rate' | 'normal' | 'along'): number =>
    most(passed.map((each, i) => each[key] - other[i]![key]));
  return { lean: of('lean'), rate: of('rate'), normal: of('normal'), along: of('along'), passed };
}

describe('against Lagrange', () => {
  const course = courseOn(made, everything);
  const start = { lean: 0.02, rate: 0 };

  it('a thrown trunk, presses, pushes and a foot over arcs and a corner: 5 s', () => {
    const { lean, rate, normal, along, passed } = apart(made, course, start);
    const leans = passed.map((each) => each.lean);
    expect(passed.at(-1)!.time).toBeGreaterThan(4.9);
    // It rolls over every joint and the corner.
    expect(Math.min(...leans)).toBeLessThan(-0.07);
    expect(Math.max(...leans)).toBeGreaterThan(0.16);
    // Measured: 7e-14 rad, 2e-13 rad/s, 4e-11 N of some 800; room for other machines' sines.
    expect(lean).toBeLessThan(1e-11);
    expect(rate).toBeLessThan(1e-11);
    expect(normal).toBeLessThan(1e-8);
    expect(along).toBeLessThan(1e-8);
  });

  it('X_C is the length run along the profile, nothing on a corner', () => {
    const shift = floorShift(made, course);
    // Sums of some hundred steps, 1e-12 each.
    for (const { lean, contactX } of passedBy(course, rollThrough(course, start))) {
      let length = 0;
      for (const { from, to, radius } of made.tracks.slice(1, -1))
        length += radius * Math.min(Math.max(lean - from, 0), to - from);
      expect(near(contactX, shift - length)).toBeLessThan(1e-10);
    }
  });

  // Sizes in steps, so that none is a rounding of nothing.
  const sized = (min: number, max: number): fc.Arbitrary<number> =>
    fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((step) => step / 1000);
  const scenes = fc.record({
    radii: fc.array(sized(0.8, 2), { minLength: 1, maxLength: 4 }),
    chairMass: sized(5, 40),
    trunkMass: sized(5, 60),
    gyration: sized(0.1, 0.4),
    height: sized(0.3, 0.6),
    aheadBy: sized(-0.3, 0.3),
    during: sized(0.3, 1.5),
    sway: sized(0, 0.15),
    swayRate: sized(1, 6),
    press: sized(0, 150),
    pressAt: sized(-0.3, 0.3),
    push: sized(-15, 15),
    foot: sized(0, 60),
    lean: sized(-0.05, 0.05),
    rate: sized(-0.3, 0.3),
  });

  // Measured over 200 at random, 3 s each: 1.2e-12 rad.
  it('random chairs, masses and scripts', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(scenes, (s) => {
        const turn = 1.2 / s.radii.length;
        const onArcs = runner(
          s.radii.map((radius) => ({ radius, turn })),
          -0.6,
        );
        const centre = plumbAbove(onArcs.tracks, 0, s.height);
        const pivot = plus(centre, { x: 0.05, y: -0.05 });
        const top = plus(centre, { x: 0, y: 0.15 });
        const swaying = { mass: s.trunkMass / 3, inertia: 0.3, centre: plus(centre, { x: 0.1, y: 0 }) };
        const script: Script = {
          fixed: { mass: s.chairMass, inertia: s.chairMass * s.gyration ** 2, centre },
          moving: [
            thrown(
              pivot,
              { mass: s.trunkMass, inertia: s.trunkMass * 0.05, centre: top },
              thrownBack(s.aheadBy, s.during),
            ),
            thrown(pivot, swaying, (time) => ({
              angle: s.sway * Math.sin(s.swayRate * time),
              rate: s.sway * s.swayRate * Math.cos(s.swayRate * time),
              acceleration: -s.sway * s.swayRate ** 2 * Math.sin(s.swayRate * time),
            })),
          ],
          presses: [
            { place: (time) => plus(centre, { x: s.pressAt * Math.cos(time), y: 0 }), force: () => s.press },
          ],
          pushes: [{ place: top, force: (time) => s.push * Math.cos(2 * time) }],
          foot: { force: s.foot, until: 0.9, ankle: { x: 0, y: 0 }, hip: pivot, reach: Infinity },
          breaks: [s.during],
          end: s.during,
        };
        // Nothing is asked of it once it nears its ends, where the oracle's arcs end.
        const course = courseOn(onArcs, script, {
          guards: [{ from: 0, back: 0.55, forward: -0.55 }],
          until: 2,
        });
        const { lean, normal, along } = apart(onArcs, course, { lean: s.lean, rate: s.rate });
        // The promise; forces of hundreds of newtons turn with it.
        expect(lean).toBeLessThan(1e-9);
        expect(normal).toBeLessThan(1e-6);
        expect(along).toBeLessThan(1e-6);
      }),
      // The oracle takes half a second for each, so that shrinking would take minutes.
      { numRuns: 6, endOnFailure: true },
    );
  });
});

describe('frozen masses', () => {
  const round = roundRunner({ x: 0, y: 1.05 }, 1.05, -0.5, 0.5);
  const halves = [-0.2, 0.1].map((x) => ({ mass: 20, inertia: 1, centre: { x, y: 0.5 + x } }));
  const body = combineMasses([chair, ...halves]);
  const frozen: Script = {
    ...still(chair),
    moving: halves.map((half) => thrown(half.centre, half, () => ({ angle: 0, rate: 0, acceleration: 0 }))),
  };
  const rest = Math.atan2(-body.centre.x, 1.05 - body.centre.y);

  it.each([1, 6, 20])(
    'swing %s° to and fro in the period of the closed form, back to where they came from',
    (amplitude) => {
      const lean = rest + amplitude * degree;
      const run = rollThrough(courseOn(round, frozen, { until: 12 }), { lean, rate: 0 });
      const turns = run.legs.filter(({ from }, i) => i > 0 && from.sense !== run.legs[i - 1]!.from.sense);
      const period = periodAt({ centre: { x: 0, y: 1.05 }, radius: 1.05, body }, amplitude * degree);
      expect(turns.length).toBeGreaterThan(5);
      turns.forEach(({ from }, i) => {
        // Measured over 12 s: 9e-12 s and 4e-13 rad, growing with time.
        expect(near(from.time, ((i + 1) * period) / 2)).toBeLessThan(1e-10);
        expect(near(from.lean, i % 2 ? lean : 2 * rest - lean)).toBeLessThan(1e-11);
      });
    },
  );

  it('move as the one body that they make', () => {
    const start = { lean: 0.2, rate: -0.5 };
    const [one, many] = [still(body), frozen].map(
      (script) => rollThrough(courseOn(round, script), start).end,
    );
    // Their sums round differently; nothing else.
    expect(near(one!.lean, many!.lean)).toBeLessThan(1e-12);
    expect(near(one!.momentum, many!.momentum)).toBeLessThan(1e-11 * body.mass);
  });
});

/** States a few steps of h about a time inside the leg that holds it. */
function fivePoints(course: Course, legs: readonly Leg[], time: number, h: number) {
  const leg = legs.find(
    ({ points }) => points[0]!.time < time - 2 * h && points.at(-1)!.time > time + 2 * h,
  )!;
  const before = leg.points.findLast((point) => point.time <= time - 2 * h)!;
  const rate = rateAlong(course, leg.from.index, { force: 0, x: 0 });
  return [-2, -1, 0, 1, 2].map((i) => {
    const point = oneStep(rate, before, time + i * h - before.time).to;
    return { leg, point, lean: point.state[0]!, time: point.time };
  });
}

/** f' at the middle of five, error h⁴ f⁽⁵⁾/30. */
const slopeOf = ([a, b, , c, d]: readonly number[], h: number): number =>
  (a! - 8 * b! + 8 * c! - d!) / (12 * h);

describe('energy and momentum', () => {
  const script = { ...everything, foot: null };
  const course = courseOn(made, script);
  const { legs } = rollThrough(course, { lean: 0.02, rate: 0 });
  const load = lagrangianOf(made, course);
  const h = 1e-3;
  const instants = [0.11, 0.2, 0.31, 0.62, 0.93, 1.51, 2.2, 3.1, 4.3].filter((time) =>
    legs.some(({ points }) => points[0]!.time < time - 0.01 && points.at(-1)!.time > time + 0.01),
  );

  it('energy grows by the power of the motion inside and of what presses, to 1e-8 W', () => {
    expect(instants.length).toBeGreaterThan(5);
    const powers = instants.map((time) => {
      const samples = fivePoints(course, legs, time, h).map(({ leg, point, lean }) => {
        const rate = rateFrom(sumsOn(course, leg.from.index, lean, point.time), point.state[1]!);
        return lagrangianAt(load, { time: point.time, lean, rate });
      });
      const energies = samples.map(({ kinetic, potential }) => kinetic + potential);
      const { power, outerPower } = samples[2]!;
      // Measured: 1.3e-9 W, the five points' own.
      expect(near(slopeOf(energies, h), power + outerPower)).toBeLessThan(1e-8);
      return power;
    });
    expect(most(powers)).toBeGreaterThan(20);
  });

  // Newton about a place of the floor: d/dτ Σ m (P × V) + I ω = moments of gravity, N, presses and pushes; F has none.
  it('moment of momentum about a place of the floor grows by the moments about it', () => {
    const about = { x: 0.3, y: 0 };
    for (const time of instants) {
      const samples = fivePoints(course, legs, time, h).map(({ leg, point, lean }) => {
        const sums = sumsOn(course, leg.from.index, lean, point.time);
        const [, momentum, contactX] = point.state as [number, number, number];
        const up = upwardMomentum(sums, rateFrom(sums, momentum));
        const { normal } = reactionAt(course, leg.from, point);
        const X = (q: Point): number =>
          contactX - about.x + ahead(minus(q, contactAt(course.profile, lean)), lean);
        const Y = (q: Point): number => upward(minus(q, contactAt(course.profile, lean)), lean);
        const weights = [chair, ...script.moving.map((m) => ({ ...m, ...m.motion(point.time) }))];
        const moment =
          normal * (contactX - about.x) -
          weights.reduce((sum, { mass, centre }) => sum + mass * g * X(centre), 0) -
          script.presses.reduce((sum, p) => sum + p.force(point.time) * X(p.place(point.time)), 0) +
          script.pushes.reduce((sum, p) => sum + p.force(point.time) * Y(p.place), 0);
        return { own: momentum + (contactX - about.x) * up, moment };
      });
      const own = samples.map((sample) => sample.own);
      // Measured: 1.6e-9 N m, the five points' own.
      expect(near(slopeOf(own, h), samples[2]!.moment)).toBeLessThan(1e-8);
    }
  });
});

describe('steps', () => {
  it('of order 8: half as long, some 256 times as near', () => {
    const round = roundRunner({ x: 0, y: 1.05 }, 1.05, -0.5, 0.5);
    const sway = thrown(hip, trunk, (time) => ({
      angle: 0.3 * Math.cos(4 * time),
      rate: -1.2 * Math.sin(4 * time),
      acceleration: -4.8 * Math.cos(4 * time),
    }));
    const course = courseOn(round, { ...still(chair), moving: [sway] });
    const { legs } = rollThrough(course, { lean: 0, rate: 0.1 });
    const rate = rateAlong(course, legs[0]!.from.index, { force: 0, x: 0 });
    const after = (steps: number): number => {
      let point = legs[0]!.points[0]!;
      for (let i = 0; i < steps; i++) point = oneStep(rate, point, 0.8 / steps).to;
      return point.state[0]!;
    };
    const exact = after(256);
    const errors = [4, 8, 16].map((steps) => near(after(steps), exact));
    // Observed: 8.2, at steps of 0.1 and 0.05 s. A lower order of 7 would show as 7.
    expect(Math.log2(errors[1]! / errors[2]!)).toBeGreaterThan(7.6);
    expect(errors[2]).toBeGreaterThan(1e-14);
  });
});
