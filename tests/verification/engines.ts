/** Other engines and integrators on the same bodies: what the second calculation is worth, and a third judge. */
import { freeSwingSeen } from '../../src/contact/free-swing.js';
import { rollFreely } from '../../src/contact/free-roll.js';
import { stepFor } from '../../src/contact/second-opinion.js';
import { tipSpeed } from '../../src/contact/tip-speed.js';
import { profileOf, contactAt, radiusAt } from '../../src/geometry/profile.js';
import type { Loop } from '../../src/geometry/piece.js';
import { loopMoments } from '../../src/geometry/area-moments.js';
import { swingByOde } from '../oracles/ode-swing.js';
import { periodOfCircle, rollCircle } from '../oracles/planck-roller.js';
import { crestOn, periodAt, tipEnergyOn } from '../oracles/round-runner.js';
import { slideOn } from '../oracles/sliding-arc.js';
import { swingFreely, there } from '../rolling/roll.js';
import { roundRunner } from '../rolling/runners.js';
import { bodies, bodyNames, courseOf, degree, roundBody, type BodyName } from '../contact/round-bodies.js';
import type { OutsideCheck } from './outside-check.js';

const matter = 'matter-js 0.20, a free faceted body';
const step = 1 / 240;

function swung(name: BodyName, swing: number) {
  const round = roundBody(name);
  const period = periodAt(round, swing * degree);
  const release = { lean: swing * degree, other: -swing * degree, period };
  const seen = freeSwingSeen(courseOf(round, 40 * degree), release, stepFor(period, round.body.centre.y));
  if (seen === null) throw new RangeError(`no swing of ${name}`);
  return { ...seen, period: seen.period / period };
}

function tipped(name: BodyName): number {
  const round = roundBody(name);
  const { centre, radius, body } = round;
  const tail = roundRunner(centre, radius, -22 * degree, 22 * degree).ends.tail;
  const speed = Math.sqrt((2 * tipEnergyOn(tail, round)) / (body.inertia + body.mass * body.centre.y ** 2));
  const course = courseOf(round, 22 * degree, {
    until: 6,
    endsFalling: true,
    guards: [{ from: 0, back: crestOn(tail, round), forward: -Infinity }],
  });
  const facets = { from: -degree, to: 23 * degree, share: 0.05, step: step / 2 };
  return (tipSpeed(course, 0, speed, facets) ?? NaN) / speed;
}

function slid(friction: number): { readonly rms: number; readonly ratio: number } {
  const [radius, height, mass, inertia] = bodies.person;
  const reference = slideOn({ radius, height, mass, inertia, friction }, 15 * degree, 5, 0.01);
  const facets = { from: -16 * degree, to: 16 * degree, share: 0.05, step };
  const course = courseOf(roundBody('person'), 40 * degree, { until: 5 + 2 * step });
  const { passed, slide } = rollFreely(course, { lean: 15 * degree, rate: 0 }, { facets, friction });
  const off = reference.map(({ time, lean }) => {
    const i = passed.findIndex((here) => here.time > time);
    const [before, after] = [passed[i - 1]!, passed[i]!];
    const share = (time - before.time) / (after.time - before.time);
    return (before.lean + share * (after.lean - before.lean) - lean) / degree;
  });
  const farthest = reference.reduce(
    (most, one) => (Math.abs(one.slid) > Math.abs(most) ? one.slid : most),
    0,
  );
  return { rms: Math.hypot(...off) / Math.sqrt(off.length), ratio: slide / farthest };
}

const ellipse: Loop = [
  {
    kind: 'ellipse-arc',
    centre: { x: 0, y: 0.4 },
    axisA: { x: 0.5, y: 0 },
    axisB: { x: 0, y: 0.4 },
    start: 0,
    sweep: 2 * Math.PI,
  },
];
const ellipseBody = () => {
  const { area, centroid, polar } = loopMoments(ellipse);
  return { mass: area, centre: centroid, inertia: polar };
};

export const engines: readonly OutsideCheck[] = [
  ...bodyNames.flatMap((name): OutsideCheck[] => [
    ...(
      [
        [2, 3e-3],
        [8, 1e-3],
      ] as const
    ).map(([swing, within]): OutsideCheck => ({
      what: `period at ${swing}°, free body over exact, ${name}`,
      source: matter,
      mark: 'CALCULATED',
      unit: '',
      expected: 1,
      got: () => swung(name, swing).period,
      within,
      why: 'twice what facets of this size were measured to make',
    })),
    {
      what: `lean at rest by the middle of swings of 8°, ${name}`,
      source: matter,
      mark: 'CALCULATED',
      unit: '°',
      expected: 0,
      got: () => swung(name, 8).middle / degree,
      within: 0.002,
      why: 'twice what was measured',
    },
    {
      what: `starting speed to go over, free body over exact, ${name}`,
      source: matter,
      mark: 'CALCULATED',
      unit: '',
      expected: 1,
      got: () => tipped(name),
      within: 0.004,
      why: 'twice what was measured',
    },
  ]),
  ...[0.05, 0.1].flatMap((friction): OutsideCheck[] => [
    {
      what: `lean over 5 s of sliding at friction ${friction}, root mean square of the difference`,
      source: 'stick and slip in three degrees of freedom, integrated by odex 2.0',
      mark: 'CALCULATED',
      unit: '°',
      expected: 0,
      got: () => slid(friction).rms,
      within: 0.1,
      why: 'twice what was measured',
    },
    {
      what: `how far it slides at friction ${friction}, over that`,
      source: 'stick and slip in three degrees of freedom, integrated by odex 2.0',
      mark: 'CALCULATED',
      unit: '',
      expected: 1,
      got: () => slid(friction).ratio,
      within: 0.005,
      why: 'three times what was measured',
    },
  ]),
  ...[8, 15].map((swing): OutsideCheck => ({
    what: `period of a person’s chair at ${swing}°, a circle in an engine over exact`,
    source: 'planck 1.4, circle shape',
    mark: 'CALCULATED',
    unit: '',
    expected: 1,
    got: () =>
      periodOfCircle(rollCircle(roundBody('person'), swing * degree, { until: 8, step, friction: 100 })) /
      periodAt(roundBody('person'), swing * degree),
    within: 2e-4,
    why: 'the engine’s own step',
  })),
  ...[5, 40].map((swing): OutsideCheck => ({
    what: `period of a uniform ellipse, 0.5 by 0.4 m, let go at ${swing}°`,
    source: 'odex 2.0, momentum about the contact',
    mark: 'CALCULATED',
    unit: 's',
    expected: (() => {
      const profile = profileOf([[ellipse]]);
      const runner = {
        contact: (lean: number) => contactAt(profile, lean),
        radius: (lean: number) => radiusAt(profile, lean),
      };
      return swingByOde(runner, ellipseBody(), swing * degree);
    })(),
    got: () => there(swingFreely(ellipse, ellipseBody(), 0, swing * degree)).period,
    within: 1e-8,
    relative: true,
    why: 'tolerance of the integrator, 1e-12 a step',
  })),
];
