/** Other engines and integrators on the same bodies, beside what this project says of them. */
import { freeSwingSeen } from '../../src/contact/free-swing.js';
import { rollFreely } from '../../src/contact/free-roll.js';
import { stepFor } from '../../src/contact/second-opinion.js';
import { tipSpeed } from '../../src/contact/tip-speed.js';
import type { RestRecord } from '../../src/rolling/roll-at-rest.js';
import { swingByOde } from '../oracles/ode-swing.js';
import { periodOfCircle, rollCircle } from '../oracles/planck-roller.js';
import type { RoundRunner } from '../oracles/round-runner.js';
import { slideOn } from '../oracles/sliding-arc.js';
import { settled, swingFreely, there } from '../rolling/roll.js';
import { roundRunner } from '../rolling/runners.js';
import { ellipseAt, uniform } from '../rolling/textbook-shapes.js';
import { bodies, bodyNames, courseOf, degree, roundBody, type BodyName } from '../contact/round-bodies.js';
import type { OutsideCheck } from './outside-check.js';

const matter = 'matter-js 0.20, a free faceted body that this project drives';
const slipping = 'odex 2.0: stick and slip in three degrees of freedom';
const step = 1 / 240;

/** What this project says of a body on a runner that ends so far away, degrees. */
function exactly({ centre, radius, body }: RoundRunner, end: number, swing: number): RestRecord {
  const { outline } = roundRunner(centre, radius, -end * degree, end * degree);
  return settled(outline, body, { swing: swing * degree });
}

/** G turned about the arc’s centre: off plumb by so much, radians. */
function asideBy(round: RoundRunner, off: number): RoundRunner {
  const hang = round.radius - round.body.centre.y;
  const centre = { x: -hang * Math.sin(off), y: round.radius - hang * Math.cos(off) };
  return { ...round, body: { ...round.body, centre } };
}

/** What the engine does, let go so many degrees from a lean, radians. */
function swung(round: RoundRunner, swing: number, about: number) {
  const period = there(exactly(round, 40, swing).swing).period;
  const release = { lean: about + swing * degree, other: about - swing * degree, period };
  const seen = freeSwingSeen(courseOf(round, 40 * degree), release, stepFor(period, round.body.centre.y));
  if (seen === null) throw new RangeError('swung: it does not swing');
  return seen;
}

/** Energy that sends it over its tail 22° behind, joule. */
function tipped(name: BodyName): number {
  const round = roundBody(name);
  const { body } = round;
  const arm = body.inertia + body.mass * body.centre.y ** 2;
  const course = courseOf(round, 22 * degree, {
    until: 6,
    endsFalling: true,
    guards: [{ from: 0, back: 60 * degree, forward: -Infinity }],
  });
  const facets = { from: -degree, to: 23 * degree, share: 0.05, step: step / 2 };
  // About what sends a chair over, radians a second.
  return (arm * tipSpeed(course, 0, 1.2, facets)! ** 2) / 2;
}

/** The free body of this project on a slippery floor, beside a reference at the same times. */
function slid(friction: number) {
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
  return { rms: Math.hypot(...off) / Math.sqrt(off.length), slide, farthest };
}

/** Half axes a = 0.5 and b = 0.4 m: p = (a² n_x, b² n_y) / w and ρ = a² b² / w³ with w² = a² n_x² + b² n_y², n downwards. */
const ellipseRunner = {
  contact: (lean: number) => {
    const [x, y, w] = ellipseNormal(lean);
    return { x: (0.25 * x) / w, y: 0.4 + (0.16 * y) / w };
  },
  radius: (lean: number) => 0.04 / ellipseNormal(lean)[2] ** 3,
};
function ellipseNormal(lean: number): readonly [number, number, number] {
  const [x, y] = [-Math.sin(lean), -Math.cos(lean)];
  return [x, y, Math.sqrt(0.25 * x ** 2 + 0.16 * y ** 2)];
}
/** π a b, and m (a² + b²) / 4. */
const ellipseBody = {
  mass: 0.2 * Math.PI,
  centre: { x: 0, y: 0.4 },
  inertia: (0.2 * Math.PI * 0.41) / 4,
};
const ellipse = ellipseAt({ x: 0, y: 0.4 });

export const engines: readonly OutsideCheck[] = [
  ...bodyNames.flatMap((name): OutsideCheck[] => [
    ...(
      [
        [2, 3e-3],
        [8, 1e-3],
      ] as const
    ).map(([swing, within]): OutsideCheck => ({
      what: `period at ${swing}°, ${name}`,
      source: matter,
      mark: 'CALCULATED',
      unit: 's',
      expected: () => swung(roundBody(name), swing, 0).period,
      got: () => there(exactly(roundBody(name), 40, swing).swing).period,
      within,
      relative: true,
      why: 'twice what facets of this size were measured to make',
    })),
    {
      what: `lean at rest with G aside, ${name}`,
      source: `${matter}: middle of swings of 8°`,
      mark: 'CALCULATED',
      unit: '°',
      expected: () => swung(asideBy(roundBody(name), 0.0849), 8, 0.0849).middle / degree,
      got: () => exactly(asideBy(roundBody(name), 0.0849), 40, 8).rest.lean / degree,
      within: 0.002,
      why: 'twice what was measured',
    },
    {
      what: `energy to go over tails that end 22° behind, ${name}`,
      source: matter,
      mark: 'CALCULATED',
      unit: 'J',
      expected: () => tipped(name),
      got: () => there(exactly(roundBody(name), 22, 8).back.tip).energy,
      within: 0.008,
      relative: true,
      why: '0.4 % of the speed, twice what was measured',
    },
  ]),
  ...[0.05, 0.1].flatMap((friction): OutsideCheck[] => [
    {
      what: `lean over 5 s of sliding at friction ${friction}, root mean square of the difference`,
      source: slipping,
      mark: 'CALCULATED',
      unit: '°',
      expected: 0,
      got: () => slid(friction).rms,
      within: 0.1,
      why: 'half as much again as was measured',
    },
    {
      what: `how far it slides at friction ${friction}`,
      source: slipping,
      mark: 'CALCULATED',
      unit: 'mm',
      expected: () => 1000 * slid(friction).farthest,
      got: () => 1000 * slid(friction).slide,
      within: 0.005,
      relative: true,
      why: 'three times what was measured',
    },
  ]),
  ...[8, 15].map((swing): OutsideCheck => ({
    what: `period of a person’s chair at ${swing}°`,
    source: 'planck 1.4, circle shape',
    mark: 'CALCULATED',
    unit: 's',
    expected: () =>
      periodOfCircle(rollCircle(roundBody('person'), swing * degree, { until: 8, step, friction: 100 })),
    got: () => there(exactly(roundBody('person'), 40, swing).swing).period,
    within: 2e-4,
    relative: true,
    why: 'the engine’s own step',
  })),
  ...[5, 40].map((swing): OutsideCheck => ({
    what: `period of a uniform ellipse, 0.5 by 0.4 m, let go at ${swing}°`,
    source: 'odex 2.0, momentum about the contact',
    mark: 'CALCULATED',
    unit: 's',
    expected: () => swingByOde(ellipseRunner, ellipseBody, swing * degree),
    got: () => there(swingFreely(ellipse, uniform(ellipse), 0, swing * degree)).period,
    within: 1e-8,
    relative: true,
    why: 'tolerance of the integrator, 1e-12 a step',
  })),
];
