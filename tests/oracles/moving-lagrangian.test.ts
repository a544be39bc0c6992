import { describe, expect, it } from 'vitest';
import {
  actuatorPower,
  floorPlace,
  followLagrangian,
  frozen,
  lagrangianAt,
  turningAbout,
  type MovingLoad,
} from './moving-lagrangian.js';
import { rollToTurn } from './rolling-motion.js';
import { demandAtTurn, periodAt, restOf, smallPeriodOf, standardGravity as g } from './round-runner.js';
import { halfDiscPeriod } from './textbook-periods.js';

const body = { mass: 31, inertia: 2.7, centre: { x: 0.05, y: 0.46 } };
const runner = { centre: { x: 0.02, y: 1.05 }, radius: 1.05, body };
const oneArc = { centre: runner.centre, radius: runner.radius, from: -2, to: 2 };
const chair: MovingLoad = { arcs: [oneArc], masses: [frozen(body)] };
const rest = restOf(runner);

/** Radii 1.05 and 1.30 m, joined in tangent at 0.05 rad, then a corner of 0.30 rad at the tail. */
const down = (lean: number) => ({ x: -Math.sin(lean), y: -Math.cos(lean) });
const far = { x: 0.02 - 0.25 * down(0.05).x, y: 1.05 - 0.25 * down(0.05).y };
const tail = { x: far.x + 1.3 * down(0.2).x, y: far.y + 1.3 * down(0.2).y };
const tracks = [
  { centre: runner.centre, radius: 1.05, from: -1, to: 0.05 },
  { centre: far, radius: 1.3, from: 0.05, to: 0.2 },
  { centre: tail, radius: 0, from: 0.2, to: 0.5 },
];

/** A trunk that swings about a hip, smoothly and for ever. */
const trunk = turningAbout(
  { x: 0.1, y: 0.4 },
  { mass: 46, inertia: 2.1, centre: { x: -0.05, y: 0.75 } },
  (time) => ({
    angle: 0.2 * Math.sin(5 * time),
    rate: Math.cos(5 * time),
    acceleration: -5 * Math.sin(5 * time),
  }),
);
const grid = (n: number, step: number): number[] => Array.from({ length: n }, (_, i) => (i + 1) * step);
const energy = ({ kinetic, potential }: { kinetic: number; potential: number }): number =>
  kinetic + potential;

describe('rigid, against closed forms', () => {
  it.each([1e-3, 0.3, 1])('comes back after the period of its amplitude %s three times', (amplitude) => {
    const start = { lean: rest + amplitude, rate: 0 };
    const [end] = followLagrangian(chair, start, [3 * periodAt(runner, amplitude)]);
    expect(Math.abs(end!.lean - start.lean)).toBeLessThan(1e-11);
    expect(Math.abs(end!.rate)).toBeLessThan(1e-11);
  });
  it('passes rest after a quarter of the small period', () => {
    // The period grows by about amplitude² / 16 of itself: 1e-9.
    const [end] = followLagrangian(chair, { lean: rest + 1e-4, rate: 0 }, [smallPeriodOf(runner) / 4]);
    expect(Math.abs(end!.lean - rest) / 1e-4).toBeLessThan(1e-8);
  });
  it('half disc: passes rest after a quarter of the textbook period', () => {
    const centre = { x: 0, y: 0.1 - (4 * 0.1) / (3 * Math.PI) };
    const inertia = 0.5 * 0.1 ** 2 - (0.4 / (3 * Math.PI)) ** 2;
    const disc = { arcs: [{ ...oneArc, centre: { x: 0, y: 0.1 }, radius: 0.1 }] };
    const masses = [frozen({ mass: 1, inertia, centre })];
    const [end] = followLagrangian({ ...disc, masses }, { lean: 1e-4, rate: 0 }, [halfDiscPeriod(0.1) / 4]);
    expect(Math.abs(end!.lean) / 1e-4).toBeLessThan(1e-8);
  });
  it('turns with the friction demand of the closed form', () => {
    const turn = lagrangianAt(chair, { time: 0, lean: rest + 0.3, rate: 0 });
    expect(Math.abs(turn.along) / turn.normal).toBeCloseTo(demandAtTurn(runner, 0.3), 12);
  });
});

describe('rigid, over joints and a corner', () => {
  const load = { ...chair, arcs: tracks };
  const start = { lean: -0.45, rate: 0 };
  it('turns where and when the motion by Runge and Kutta turns, on the corner', () => {
    const { time, turn } = rollToTurn(tracks, body, start.lean, 1, 2e-4);
    const [end] = followLagrangian(load, start, [time]);
    expect(turn).toBeGreaterThan(0.2);
    // Order 4 in steps of 0.2 ms: about 1e-12.
    expect(Math.abs(end!.lean - turn!)).toBeLessThan(1e-10);
    expect(Math.abs(end!.rate)).toBeLessThan(1e-10);
  });
  it('keeps its energy, which is not zero, and is not moved by restarts', () => {
    const run = followLagrangian(load, start, grid(40, 0.1));
    const first = energy(lagrangianAt(load, { time: 0, ...start }));
    expect(Math.max(...run.map(({ kinetic }) => kinetic))).toBeGreaterThan(5);
    for (const each of run) expect(Math.abs(energy(each) - first)).toBeLessThan(1e-10 * first);
    const restarted = followLagrangian({ ...load, breaks: grid(60, 0.0617) }, start, grid(40, 0.1));
    for (const [i, each] of run.entries())
      expect(Math.abs(each.lean - restarted[i]!.lean)).toBeLessThan(1e-11);
  });
  it('lays radius times lean on the floor, and nothing on the corner', () => {
    const at = (lean: number) => floorPlace(tracks, tail, lean);
    const first = floorPlace(tracks, { x: 0.02, y: 0 }, 0);
    expect(first).toEqual({ x: 0, y: 0 });
    for (const lean of [0.2, 0.33, 0.5]) {
      expect(at(lean).x).toBeCloseTo(-(1.05 * 0.05 + 1.3 * 0.15), 14);
      expect(at(lean).y).toBeCloseTo(0, 14);
    }
  });
  it('leaves a rest on a joint to either side alike, mirrored, under a push that grows from nothing', () => {
    const high = { x: 0, y: 1.3 };
    const [front, back] = [
      { ...tracks[0]!, centre: { x: 0, y: 1.05 }, from: -1, to: 0 },
      { centre: high, radius: 1.3, from: 0, to: 1 },
    ];
    const flip = { ...back, from: -1, to: 0 };
    const pushed = (arcs: MovingLoad['arcs'], sense: number): number[] => {
      const push = { force: (time: number) => sense * 30 * time ** 3, at: () => ({ x: 0, y: 0.5 }) };
      const masses = [frozen({ ...body, centre: { x: 0, y: 0.46 } })];
      const load = { arcs, masses, pushes: [push] };
      return followLagrangian(load, { lean: 0, rate: 0 }, grid(8, 0.2)).map(({ lean }) => lean * sense);
    };
    const first = pushed([front, back], 1);
    const mirrored = pushed([flip, { ...front, from: 0, to: 1 }], -1);
    expect(first.at(-1)).toBeGreaterThan(0.1);
    for (const [i, lean] of first.entries()) expect(Math.abs(lean - mirrored[i]!)).toBeLessThan(1e-12);
  });
  it('refuses a flat, times that go back and a lean beyond the arcs', () => {
    const [first, , last] = tracks;
    const at = (arcs: typeof tracks) => () => lagrangianAt({ ...chair, arcs }, { time: 0, lean: 0, rate: 0 });
    expect(at([{ ...first!, to: 0.2 }, last!])).toThrow(RangeError);
    expect(() => followLagrangian(load, { lean: 0.4, rate: 3 }, [2])).toThrow('no arc');
    expect(() => followLagrangian(load, start, [0.2, 0.1])).toThrow('not after');
  });
});

describe('forces from outside', () => {
  it('presses, pushes and a foot that stay the same have potentials: the sum is constant', () => {
    const [w, pull, f] = [300, 40, 120];
    const [b, back] = [
      { x: 0.3, y: 0.4 },
      { x: -0.2, y: 1 },
    ];
    const load: MovingLoad = {
      ...chair,
      presses: [{ force: () => w, at: () => b }],
      pushes: [{ force: () => pull, at: () => back }],
      foot: { force: () => f, x: 0.25 },
    };
    // X_C = -R θ: the foot does f (x_f θ + R θ²/2).
    const sum = (s: { lean: number; kinetic: number; potential: number }): number =>
      energy(s) +
      w * floorPlace(load.arcs, b, s.lean).y +
      pull * floorPlace(load.arcs, back, s.lean).x -
      f * (0.25 * s.lean + (1.05 * s.lean ** 2) / 2);
    const start = { lean: 0.1, rate: 0.4 };
    // Section 2 of the mechanics, at a turning point: N = m (g + H' θ̈) + w - f, with H' = X_G - X_C.
    const still = lagrangianAt(load, { time: 0, lean: 0.1, rate: 0 });
    const ahead = floorPlace(load.arcs, body.centre, 0.1).x + 1.05 * 0.1;
    expect(still.normal).toBeCloseTo(31 * (g + ahead * still.acceleration) + w - f, 10);
    const before = lagrangianAt(load, { time: 0, ...start });
    for (const each of followLagrangian(load, start, grid(10, 0.17))) {
      expect(Math.abs(each.kinetic - before.kinetic)).toBeGreaterThan(0.01);
      expect(Math.abs(sum(each) - sum(before))).toBeLessThan(1e-9);
      expect(Math.abs(each.work - energy(each) + energy(before))).toBeLessThan(1e-9);
    }
  });
  it('a wheel pushed at its axle for 0.27 s, then not: uniform acceleration, then none', () => {
    const wheel = frozen({ mass: 20, inertia: 3, centre: runner.centre });
    const push = { force: (time: number) => (time < 0.27 ? 50 : 0), at: () => runner.centre };
    const load = { arcs: [{ ...oneArc, to: 9 }], masses: [wheel], pushes: [push], breaks: [0.27] };
    const gain = (50 * 1.05) / (3 + 20 * 1.05 ** 2);
    const [during, after] = followLagrangian(load, { lean: 0, rate: 0 }, [0.2, 1]);
    expect(during!.lean).toBeCloseTo((gain * 0.2 ** 2) / 2, 13);
    expect(during!.along).toBeCloseTo(50 - 20 * 1.05 * gain, 11);
    expect(after!.lean).toBeCloseTo(gain * 0.27 * (0.135 + 0.73), 13);
  });
});

describe('masses that move', () => {
  it('frozen, two masses move as the one body they make', () => {
    // 2 × 15.5 kg, 0.2 m to each side: I = 2 × 0.5 + 31 × 0.04.
    const half = (x: number) => frozen({ mass: 15.5, inertia: 0.5, centre: { x: 0.05 + x, y: 0.46 } });
    const one = { ...chair, masses: [frozen({ ...body, inertia: 2.24 })] };
    const [a] = followLagrangian(one, { lean: 0.4, rate: -1 }, [1.3]);
    const [b] = followLagrangian(
      { ...chair, masses: [half(-0.2), half(0.2)] },
      { lean: 0.4, rate: -1 },
      [1.3],
    );
    expect(Math.abs(a!.lean - b!.lean)).toBeLessThan(1e-12);
    expect(b!.kinetic).toBeCloseTo(a!.kinetic, 11);
  });
  it('a rotor at the axle of a wheel: (I + I_r + m R²) θ̇ = -I_r φ̇', () => {
    const disc = { mass: 5, inertia: 0.8, centre: runner.centre };
    const spin = (time: number) => ({ angle: time ** 3, rate: 3 * time ** 2, acceleration: 6 * time });
    const wheel = frozen({ mass: 20, inertia: 3, centre: runner.centre });
    const load = { ...chair, masses: [wheel, turningAbout(runner.centre, disc, spin)] };
    const [end] = followLagrangian(load, { lean: 0, rate: 0 }, [1]);
    expect(end!.rate).toBeCloseTo((-0.8 * 3) / (3.8 + 25 * 1.05 ** 2), 13);
    expect(end!.work).toBeCloseTo(end!.kinetic, 12);
  });
  it('a mass that walks in a wheel and keeps its place at α from plumb: uniform acceleration', () => {
    // Newton: floor f = -(M + m) R η; about the axle I η = R f - m g r sin α + m r R η cos α.
    const [M, I, m, r, alpha, R] = [20, 12, 8, 0.8, -0.35, 1.05];
    const eta = (-m * g * r * Math.sin(alpha)) / (I + (M + m) * R ** 2 - m * r * R * Math.cos(alpha));
    const place = { x: 0.02 + r * Math.sin(alpha), y: R - r * Math.cos(alpha) };
    const back = (time: number) => ({ angle: (-eta * time ** 2) / 2, rate: -eta * time, acceleration: -eta });
    const walker = turningAbout(runner.centre, { mass: m, inertia: 0.3, centre: place }, back);
    const masses = [frozen({ mass: M, inertia: I, centre: runner.centre }), walker];
    for (const end of followLagrangian(
      { arcs: [{ ...oneArc, to: 9 }], masses },
      { lean: 0, rate: 0 },
      [0.7, 1.9],
    )) {
      expect(end.lean).toBeCloseTo((eta * end.time ** 2) / 2, 12);
      expect(end.power).toBeCloseTo((I + (M + m) * R ** 2) * eta ** 2 * end.time, 10);
      expect(end.along).toBeCloseTo(-(M + m) * R * eta, 10);
      expect(end.normal).toBeCloseTo((M + m) * g, 10);
    }
  });
  it('over joints, energy grows by the power inside, within 1e-8 W of its slope by differences', () => {
    const load = { arcs: tracks, masses: [frozen(body), trunk] };
    const start = { lean: 0.1, rate: -0.5 };
    const before = energy(lagrangianAt(load, { time: 0, ...start }));
    const run = followLagrangian(load, start, grid(20, 0.1));
    expect(Math.max(...run.map(({ work }) => Math.abs(work)))).toBeGreaterThan(5);
    for (const each of run) expect(Math.abs(energy(each) - before - each.work)).toBeLessThan(1e-9);
    const h = 1e-3;
    const near = followLagrangian(
      load,
      start,
      [-2, -1, 0, 1, 2].map((i) => 0.43 + i * h),
    );
    const [a, b, , c, d] = near.map(energy);
    // Five points: the error falls as h⁴, 3e-8 W at h = 2 ms and 2e-9 W here, of 57 W.
    const slope = (a! - 8 * b! + 8 * c! - d!) / (12 * h);
    expect(Math.abs(slope - actuatorPower(load, near[2]!))).toBeLessThan(1e-8);
  });
  it('turningAbout is one motion: its velocity and acceleration are differences of its place', () => {
    const h = 1e-4;
    const of = (f: (time: number) => { x: number; y: number }) => (f(0.3 + h).x - f(0.3 - h).x) / (2 * h);
    // Differences of order 2: h² times some hundreds.
    expect(of(trunk.place)).toBeCloseTo(trunk.velocity(0.3).x, 6);
    expect(of(trunk.velocity)).toBeCloseTo(trunk.acceleration(0.3).x, 5);
  });
});
