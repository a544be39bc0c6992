/** Slipping, tipping and lifting of a free body, against an independent integrator and closed forms. */
import { describe, expect, it } from 'vitest';
import { rollFreely } from '../../src/contact/free-roll.js';
import { tipSpeed } from '../../src/contact/tip-speed.js';
import { crestOn, standardGravity as g, tipEnergyOn } from '../oracles/round-runner.js';
import { slideOn } from '../oracles/sliding-arc.js';
import { roundRunner } from '../rolling/runners.js';
import { bodies, bodyNames, courseOf, degree, roundBody } from './round-bodies.js';

const step = 1 / 240;

describe('a free body on a slippery floor', () => {
  // Stick and slip, three degrees of freedom, by odex: 0.06° and 0.2 % were measured.
  it.each([0.02, 0.05, 0.1, 0.2])('let go at 15° at friction %s goes as stick and slip say', (friction) => {
    const [radius, height, mass, inertia] = bodies.person;
    const reference = slideOn({ radius, height, mass, inertia, friction }, 15 * degree, 5, 0.01);
    const facets = { from: -16 * degree, to: 16 * degree, share: 0.05, step };
    const course = courseOf(roundBody('person'), 40 * degree, { until: 5 + 2 * step });
    const { passed, slide, lifts } = rollFreely(course, { lean: 15 * degree, rate: 0 }, { facets, friction });
    const off = reference.map(({ time, lean }) => {
      const i = passed.findIndex((here) => here.time > time);
      const [before, after] = [passed[i - 1]!, passed[i]!];
      const share = (time - before.time) / (after.time - before.time);
      return (before.lean + share * (after.lean - before.lean) - lean) / degree;
    });
    expect(Math.hypot(...off) / Math.sqrt(off.length)).toBeLessThan(0.1);
    const farthest = reference.reduce((most, { slid }) => (Math.abs(slid) > Math.abs(most) ? slid : most), 0);
    // At 0.2 it does not slide: 0.153 is asked for.
    expect(Math.abs(farthest) > 0).toBe(friction < 0.153);
    expect(Math.abs(slide - farthest)).toBeLessThanOrEqual(0.005 * Math.abs(farthest));
    expect(lifts).toBe(false);
  });

  it('asks for the friction of plane rigid-body motion where it grips', () => {
    const round = roundBody('person');
    const facets = { from: -9 * degree, to: 9 * degree, share: 0.02, step };
    const { passed } = rollFreely(
      courseOf(round, 40 * degree, { until: 4 }),
      { lean: 8 * degree, rate: 0 },
      { facets, friction: Infinity },
    );
    // After the first steps, in which it sinks in.
    const asked = passed.slice(30).map(({ along, normal }) => Math.abs(along) / normal);
    // m H |H'| / (I + m H²) at the turning point: 0.0827 (contact engines are off by half a hundredth of it).
    expect(Math.max(...asked)).toBeCloseTo(0.0827, 3);
  });
});

describe('a free body sent back over its tails', () => {
  // ½ (I + m h²) ω² = m g (|G - tail| - h); 0.4 % of ω is what a second calculation is held to.
  it.each(bodyNames)('%s goes over from the speed that the energy says', (name) => {
    const round = roundBody(name);
    const { centre, radius, body } = round;
    const tail = roundRunner(centre, radius, -22 * degree, 22 * degree).ends.tail;
    const arm = body.inertia + body.mass * body.centre.y ** 2;
    const speed = Math.sqrt((2 * tipEnergyOn(tail, round)) / arm);
    const course = courseOf(round, 22 * degree, {
      until: 6,
      endsFalling: true,
      guards: [{ from: 0, back: crestOn(tail, round), forward: -Infinity }],
    });
    const facets = { from: -degree, to: 23 * degree, share: 0.05, step: step / 2 };
    // Looked for from a bad guess.
    const found = tipSpeed(course, 0, 1.05 * speed, facets);
    expect(Math.abs(found! / speed - 1)).toBeLessThan(0.004);
  });

  it('finds none where nothing near what is expected does it', () => {
    const round = roundBody('child');
    const facets = { from: -degree, to: 23 * degree, share: 0.1, step };
    const course = courseOf(round, 22 * degree, { until: 1, endsFalling: true });
    expect(tipSpeed(course, 0, 0.1, facets)).toBeNull();
  });
});

describe('a free body that is thrown up', () => {
  const round = roundBody('empty');
  const [, , mass] = bodies.empty;
  const facets = { from: -degree, to: degree, share: 0.05, step };
  /** At first by 2 g, up to a time. */
  const thrown = (pushed: number, until: number) => {
    const push = { place: () => round.body.centre, force: (t: number) => (t < pushed ? -3 * mass * g : 0) };
    const course = courseOf(round, 40 * degree, { until });
    const script = { ...course.script, presses: [push], breaks: [pushed] };
    return rollFreely({ ...course, script }, { lean: 0, rate: 0 }, { facets, friction: 0.4 });
  };

  it('lifts', () => {
    const { passed, lifts } = thrown(1, 0.2);
    expect(lifts).toBe(true);
    // Up at 2 g, ½ 2 g t², less what the first step is late by: 2 g t Δt.
    const { centre, time } = passed.at(-1)!;
    expect(Math.abs(centre.y - round.body.centre.y - g * time ** 2)).toBeLessThan(2 * g * time * step);
  });

  it('has lifted when it has come down', () => {
    const { passed, lifts } = thrown(0.05, 1);
    // 2 g for 0.05 s, then free: up 25 mm and twice that again, down after 0.27 s; the first step is late.
    const highest = Math.max(...passed.map(({ lowest }) => lowest));
    expect(Math.abs(highest - 3 * g * 0.05 ** 2)).toBeLessThan(6 * g * 0.05 * step);
    expect(passed.at(-1)!.lowest).toBeLessThan(1e-3);
    expect(lifts).toBe(true);
  });

  it('has lifted by more than the engine’s own hops only', () => {
    expect(thrown(0.02, 1).lifts).toBe(true);
    // A millimetre.
    const { passed, lifts } = thrown(0.01, 1);
    expect(Math.max(...passed.map(({ lowest }) => lowest))).toBeGreaterThan(3e-4);
    expect(lifts).toBe(false);
  });
});
