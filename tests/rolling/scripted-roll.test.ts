/** Runs through scripts: what ends them, what they pass, standing on flats. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contactOn } from '../../src/geometry/hull-element.js';
import { ahead, upward } from '../../src/geometry/lean.js';
import { minus, plus, type Point } from '../../src/geometry/point.js';
import { elementOf, lengthAt } from '../../src/geometry/profile.js';
import type { MassProperties } from '../../src/mass.js';
import { flatImpact } from '../../src/rolling/flat-impact.js';
import { rateFrom } from '../../src/rolling/moving-masses.js';
import { reactionAt } from '../../src/rolling/run-forces.js';
import type { FootShove, Script } from '../../src/rolling/script.js';
import { sumsOn, type Course, type Leg, type Place } from '../../src/rolling/scripted-place.js';
import { rollThrough, turningLeans } from '../../src/rolling/scripted-roll.js';
import { between } from '../arbitraries/rolling.js';
import { followLagrangian } from '../oracles/moving-lagrangian.js';
import { armAt, rollToTurn } from '../oracles/rolling-motion.js';
import { standardGravity as g } from '../oracles/round-runner.js';
import { swingFrom, there } from './roll.js';
import { plumbAbove, roundRunner, runner } from './runners.js';
import { courseOn, lagrangianOf, legOnArcs, still, thrown, thrownBack } from './scripted.js';

const round = roundRunner({ x: 0, y: 1 }, 1, -0.5, 0.5);
const body: MassProperties = { mass: 30, inertia: 3, centre: { x: 0, y: 0.5 } };
const pushed = (force: (time: number) => number, more: Partial<Script> = {}): Script => ({
  ...still(body),
  pushes: [{ place: { x: -0.2, y: 1 }, force }],
  ...more,
});
const atRest = { lean: 0, rate: 0 };

describe('joints and corners', () => {
  it('are passed as the motion step by step passes them', () => {
    const made = runner(
      [{ radius: 1.2, turn: 0.45 }, { radius: 0.9, turn: 0.1 }, { corner: 0.02 }, { radius: 1.1, turn: 0.4 }],
      -0.5,
    );
    const rocks = { ...body, centre: plumbAbove(made.tracks, -0.1, 0.45) };
    const { time, turn } = rollToTurn(made.tracks, rocks, -0.4, 1, 2e-4);
    const { legs } = rollThrough(courseOn(made, still(rocks)), { lean: -0.4, rate: 0 });
    const turned = legs.find(({ from }) => from.sense < 0)!.from;
    expect(turn).toBeGreaterThan(0.08);
    // Order 4 at 0.2 ms: some 1e-12.
    expect(turned.lean).toBeCloseTo(turn!, 10);
    expect(turned.time).toBeCloseTo(time, 9);
  });

  it('at rest it stays there, on one arc and at a joint, however long', () => {
    const joined = runner(
      [
        { radius: 1.2, turn: 0.5 },
        { radius: 0.9, turn: 0.5 },
      ],
      -0.5 - 0.07,
    );
    for (const [made, lean] of [
      [round, 0],
      [joined, -0.07],
    ] as const) {
      const stands = { ...body, centre: plumbAbove(made.tracks.slice(1), lean, 0.5) };
      const { legs, end } = rollThrough(courseOn(made, still(stands)), { lean, rate: 0 });
      expect(end.time).toBe(5);
      // Begun at rest but for a rounding.
      expect(Math.abs(end.lean - lean)).toBeLessThan(1e-12);
      expect(legs.length).toBeLessThan(1000);
    }
  });
});

describe('going over', () => {
  it.each([
    ['back', 1],
    ['forward', -1],
  ] as const)('%s: at the lean that says so, when it gets there', (way, sense) => {
    const course = courseOn(
      round,
      pushed(() => sense * 60),
      { guards: [{ from: 0, back: 0.4, forward: -0.4 }] },
    );
    const { goesOver, end, leavesFloor } = rollThrough(course, atRest);
    expect([goesOver, leavesFloor]).toEqual([way, false]);
    expect(end.lean).toBeCloseTo(sense * 0.4, 12);
    const [other] = followLagrangian(lagrangianOf(round, course), atRest, [end.time]);
    expect(other!.lean).toBeCloseTo(sense * 0.4, 10);
  });

  it('only from a time on: past it earlier is none, past it then is', () => {
    const late = (from: number): Course => {
      const free = { from: 0, back: Infinity, forward: -Infinity };
      return courseOn(
        round,
        pushed(() => 0),
        { guards: [free, { from, back: 0.1, forward: -0.1 }], until: 3 },
      );
    };
    const start = { lean: 0.2, rate: 0 };
    const turn = rollThrough(late(9), start).legs.find(({ from }) => from.sense > 0)!.from;
    // There and back: high at the turns, low half-way between them.
    const high = rollThrough(late(turn.time), start);
    expect([high.goesOver, high.end.time]).toEqual(['forward', turn.time]);
    const low = rollThrough(late(turn.time / 2), start);
    expect(low.goesOver).toBe('forward');
    expect(low.end.lean).toBeCloseTo(-0.1, 12);
    expect(low.end.time).toBeGreaterThan(turn.time / 2);
  });
});

describe('a foot', () => {
  const foot: FootShove = {
    force: 80,
    until: 0.5,
    ankle: { x: 1, y: 0.08 },
    hip: { x: 0.1, y: 0.5 },
    reach: Infinity,
  };
  /** The ankle 0.35 m ahead of the contact at rest. */
  const shoving = (more: Partial<FootShove>): { course: Course } => {
    const { profile } = courseOn(round, still(body));
    const ankle = { x: 0.35 - lengthAt(profile, 0), y: 0.08 };
    return { course: courseOn(round, { ...still(body), foot: { ...foot, ankle, ...more } }) };
  };

  it('leaves the floor on its second', () => {
    const { course } = shoving({});
    const { legs, end } = rollThrough(course, atRest);
    expect(legs.some(({ from }) => from.time === 0.5)).toBe(true);
    const [other] = followLagrangian(lagrangianOf(round, course), atRest, [5]);
    expect(end.lean).toBeCloseTo(other!.lean, 9);
  });

  it('leaves it earlier where the leg is straight, and not to come back', () => {
    const { course } = shoving({});
    const long = (lean: number): number => legOnArcs(round, course, course.script.foot!, lean);
    const reach = long(0) + 0.6 * (long(0.04) - long(0));
    const short = shoving({ reach }).course;
    const { legs, end } = rollThrough(short, atRest);
    const left = legs.find(({ from }) => !from.footOn)!.from;
    expect(left.time).toBeLessThan(0.5);
    expect(left.time).toBeGreaterThan(0.05);
    // Where the oracle's own places are the reach apart.
    expect(long(left.lean)).toBeCloseTo(reach, 11);
    const [at, other] = followLagrangian(lagrangianOf(round, short, left.time), atRest, [left.time, 5]);
    expect(at!.lean).toBeCloseTo(left.lean, 10);
    expect(end.lean).toBeCloseTo(other!.lean, 9);
    expect(legs.filter(({ from }) => from.time > left.time).every(({ from }) => !from.footOn)).toBe(true);
  });
});

describe('leaving the floor', () => {
  // A mass that falls at c t in the chair: N = (m₀ + m) g - m c t.
  it('is when N falls through 0', () => {
    const c = 40;
    const falls = {
      mass: 10,
      inertia: 0,
      motion: (time: number) => ({
        centre: { x: 0, y: 0.9 - (c * time ** 3) / 6 },
        velocity: { x: 0, y: (-c * time ** 2) / 2 },
        acceleration: { x: 0, y: -c * time },
        ...{ turnRate: 0, turnAcceleration: 0 },
      }),
    };
    const run = rollThrough(courseOn(round, { ...still(body), moving: [falls], end: 5 }), atRest);
    expect([run.leavesFloor, run.goesOver]).toEqual([true, null]);
    expect(run.end.time).toBeCloseTo((40 * g) / (10 * c), 11);
  });

  it('standing on a flat too', () => {
    const flat = runner([{ radius: 1, turn: 0.4 }, { flat: 0.1 }, { radius: 1, turn: 0.4 }], -0.4);
    const centre = plus(plumbAbove(flat.tracks.slice(2), 0, 0.5), { x: 0.05, y: 0 });
    const script: Script = {
      ...still({ ...body, centre }),
      foot: { force: 30 * g + 1, until: 1, ankle: { x: 0, y: 0 }, hip: centre, reach: Infinity },
    };
    expect(rollThrough(courseOn(flat, script), atRest).leavesFloor).toBe(true);
  });
});

const withFlat = (flat: number) => {
  const made = runner([{ radius: 1.1, turn: 0.4 }, { flat }, { radius: 0.9, turn: 0.4 }], -0.4);
  const rear = plumbAbove(made.tracks.slice(2), 0, 0.5);
  return { made, over: (ahead: number): Point => plus(rear, { x: ahead, y: 0 }) };
};
/** Where the flat is on the floor, but for the rounding of the drawing. */
const atFlat = ({ lean }: Place): boolean => Math.abs(lean) < 1e-12;
const rateOf = (course: Course, { index, lean, time, momentum }: Place): number =>
  rateFrom(sumsOn(course, index, lean, time), momentum);
const endOf = ({ from, points }: Leg): Place => {
  const { time, state } = points.at(-1)!;
  return { ...from, time, lean: state[0]!, momentum: state[1]! };
};

describe('a flat rolled over', () => {
  it('by a rigid body strikes as it does in a free swing, and turns where that turns', () => {
    fc.assert(
      fc.property(between(0.005, 0.05), between(0.1, 0.9), between(0.1, 0.3), (flat, share, release) => {
        const { made, over } = withFlat(flat);
        const rolls = { ...body, centre: over(share * flat) };
        const course = courseOn(made, still(rolls));
        const { legs, grip } = rollThrough(course, { lean: release, rate: 0 });
        const met = legs.findIndex(({ from }) => atFlat(from));
        const [before, after] = [endOf(legs[met - 1]!), legs[met]!.from];
        const [left, hit] = [2, 1].map((i) => armAt(made.tracks[i]!, rolls.centre, 0));
        const impact = flatImpact(body.inertia / body.mass, 0.5, left!.x, hit!.x);
        // The lean is taken to 0 from within a step's rounding of it.
        expect(rateOf(course, after) / rateOf(course, { ...before, lean: 0 })).toBeCloseTo(
          impact.speedRatio,
          9,
        );
        expect(grip).toBeGreaterThanOrEqual(impact.grip - 1e-9);
        const turned = legs.find(({ from }) => from.sense > 0)!.from;
        const { turns } = there(swingFrom(made.outline, rolls, 0, release));
        expect(turned.lean).toBeCloseTo(turns[0], 9);
      }),
      { numRuns: 30 },
    );
  });

  // Σ m (r × v) + I ω about the place met, v from before: what strikes there has no moment about it.
  it('keeps the moment of momentum about the place met while masses move, and asks for the grip of the impulse', () => {
    const { made, over } = withFlat(0.04);
    const rolls = { ...body, centre: over(0.02) };
    const trunk = { mass: 25, inertia: 1.2, centre: plus(rolls.centre, { x: -0.03, y: 0.35 }) };
    const hip = plus(rolls.centre, { x: 0.05, y: 0 });
    const sway = thrown(hip, trunk, (time) => ({
      angle: 0.1 * Math.sin(3 * time),
      rate: 0.3 * Math.cos(3 * time),
      acceleration: -0.9 * Math.sin(3 * time),
    }));
    const course = courseOn(made, { ...still(rolls), moving: [sway] });
    const { legs, grip } = rollThrough({ ...course, until: 1 }, { lean: 0.2, rate: 0 });
    const met = legs.findIndex(({ from }) => atFlat(from) && !from.stands);
    const { from } = legs[met]!;
    const before = { ...endOf(legs[met - 1]!), lean: 0 };
    const contact = (index: number): Point => contactOn(elementOf(course.profile, index).element, 0);
    const masses = [
      { ...rolls, velocity: { x: 0, y: 0 }, turnRate: 0 },
      { ...trunk, ...sway.motion(from.time) },
    ];
    const arm = (q: Point, about: Point): Point => ({
      x: ahead(minus(q, about), 0),
      y: upward(minus(q, about), 0),
    });
    const moving = (place: Place, about: Point) => {
      const rate = rateOf(course, place);
      let [L, x, y] = [0, 0, 0];
      for (const { mass, inertia, centre, velocity, turnRate } of masses) {
        const r = arm(centre, contact(place.index));
        const v = { x: velocity.x - rate * r.y, y: velocity.y + rate * r.x };
        const s = arm(centre, about);
        [L, x, y] = [
          L + mass * (s.x * v.y - s.y * v.x) + inertia * (rate + turnRate),
          x + mass * v.x,
          y + mass * v.y,
        ];
      }
      return { L, x, y };
    };
    const [was, is] = [moving(before, contact(from.index)), moving(from, contact(from.index))];
    expect(legs.filter((leg) => atFlat(leg.from))).toHaveLength(1);
    expect(is.L).toBeCloseTo(was.L, 9);
    expect(Math.abs(is.L)).toBeGreaterThan(1);
    expect(grip).toBeCloseTo(Math.abs((is.x - was.x) / (is.y - was.y)), 9);
  });

  it('too long to pass is stood on', () => {
    const { made, over } = withFlat(1.4);
    const { legs, end } = rollThrough(courseOn(made, still({ ...body, centre: over(0.7) })), {
      lean: 0.05,
      rate: 0,
    });
    expect(legs.at(-1)!.from.stands).toBe(true);
    expect([atFlat(end), end.time, end.stands]).toEqual([true, 5, true]);
  });
});

describe('standing on a flat', () => {
  const { made, over } = withFlat(0.1);
  // G 0.03 m before the front end, held by a press 0.2 m behind it that fades: it leaves at w = m g 0.03/0.2.
  const held = (force: (time: number) => number): Script => ({
    ...still({ ...body, centre: over(0.13) }),
    presses: [{ place: () => over(-0.1), force }],
  });

  it('lasts until what presses no longer holds it, and goes over the end that says so', () => {
    const fades = (time: number): number => 100 * (1 - time / 2);
    const { legs } = rollThrough(courseOn(made, held(fades), { until: 1.5 }), atRest);
    const leaves = 2 * (1 - (30 * g * 0.03) / (0.2 * 100));
    expect(legs[0]!.from.stands).toBe(true);
    expect(legs[1]!.from.stands).toBe(false);
    expect(legs[1]!.from.time).toBeCloseTo(leaves, 10);
    expect(legs[1]!.from.sense).toBe(-1);
    expect(elementOf(courseOn(made, held(fades)).profile, legs[1]!.from.index).element.to).toBeCloseTo(0, 12);
  });

  it('bears all that weighs and pushes', () => {
    const script = { ...held(() => 100), pushes: [{ place: over(0), force: () => 7 }] };
    const course = courseOn(made, script);
    const { legs, end } = rollThrough(course, atRest);
    expect([legs.every(({ from }) => from.stands), end.lean]).toEqual([true, 0]);
    const felt = reactionAt(course, legs[0]!.from, legs[0]!.points[1]!);
    expect(felt.normal).toBeCloseTo(30 * g + 100, 10);
    expect(felt.along).toBeCloseTo(7, 12);
  });

  it('with nothing that moves is a rest to the end', () => {
    const { legs, end, grip } = rollThrough(courseOn(made, still({ ...body, centre: over(0.05) })), atRest);
    expect(legs).toHaveLength(1);
    expect([end.time, end.lean, end.stands, grip]).toEqual([5, 0, true, 0]);
  });
});

describe('the end', () => {
  const trunk = { mass: 40, inertia: 2, centre: { x: 0, y: 0.8 } };
  const throwing = (during: number): Script => ({
    ...still(body),
    moving: [thrown({ x: 0.05, y: 0.45 }, trunk, thrownBack(-0.2, during))],
    breaks: [during],
    end: during,
  });

  it('falling comes with the first turn after the script, and not before', () => {
    const { end, legs } = rollThrough(courseOn(round, throwing(0.3), { endsFalling: true }), {
      lean: 0,
      rate: 1,
    });
    expect(end.time).toBeGreaterThan(0.3);
    expect(end.sense).toBe(-1);
    expect(rateOf(courseOn(round, throwing(0.3)), end)).toBeCloseTo(0, 9);
    expect(legs.filter(({ from }) => from.time >= 0.3).every(({ from }) => from.sense > 0)).toBe(true);
  });

  it('falling comes with the script where it falls already', () => {
    const falling = { lean: 0.3, rate: 0 };
    const { end } = rollThrough(courseOn(round, throwing(0.3), { endsFalling: true }), falling);
    expect(rateOf(courseOn(round, throwing(0.3)), end)).toBeLessThan(0);
    expect(end.time).toBe(0.3);
  });

  it('a turn before the end of the script, or of the shove, is none', () => {
    const rising = { lean: 0.3, rate: 0.05 };
    const script = throwing(0.3);
    const turns = (run: Script) => rollThrough(courseOn(round, run, { endsFalling: true }), rising);
    const early = turns(script);
    const turned = early.legs.find(({ from }) => from.sense < 0)!.from;
    expect(turned.time).toBeLessThan(0.2);
    expect(early.end.time).toBe(0.3);
    const ankle = { x: -lengthAt(courseOn(round, script).profile, 0.2), y: 0 };
    const foot = { force: 1, until: 0.4, ankle, hip: { x: 0, y: 0.5 }, reach: Infinity };
    expect(turns({ ...script, foot }).end.time).toBe(0.4);
  });

  it('else with its time', () => {
    expect(rollThrough(courseOn(round, throwing(0.3), { until: 2 }), atRest).end.time).toBe(2);
  });

  it('the extremes of a run are among its turning leans, from any time on', () => {
    const course = courseOn(round, throwing(0.6), { until: 3 });
    const run = rollThrough(course, { lean: 0.02, rate: 0 });
    const times = Array.from({ length: 300 }, (_, i) => (i + 1) * 0.01);
    const leans = followLagrangian(lagrangianOf(round, course), { lean: 0.02, rate: 0 }, times).map(
      ({ lean }) => lean,
    );
    // A hill between looks 0.01 s apart: θ̈/8 of 1e-4 s², some 1e-5 at most.
    expect(Math.max(...turningLeans(run)) - Math.max(0.02, ...leans)).toBeLessThan(5e-5);
    expect(Math.max(...turningLeans(run))).toBeGreaterThanOrEqual(Math.max(...leans) - 1e-10);
    expect(Math.min(...turningLeans(run))).toBeLessThanOrEqual(Math.min(...leans) + 1e-10);
    const late = leans.slice(59);
    expect(Math.max(...turningLeans(run, 0.6)) - Math.max(...late)).toBeLessThan(5e-5);
    expect(Math.max(...turningLeans(run, 0.6))).toBeGreaterThanOrEqual(Math.max(...late) - 1e-10);
  });
});
