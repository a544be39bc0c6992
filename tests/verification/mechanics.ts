/** Textbook mechanics: bodies that rock, blocks that tip, convex bodies at rest. */
import { loopMoments } from '../../src/geometry/area-moments.js';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { flatImpact } from '../../src/rolling/flat-impact.js';
import { landscapeOf } from '../../src/rolling/landscape.js';
import { balancesOf } from '../../src/rolling/balance.js';
import { profileOf } from '../../src/geometry/profile.js';
import { decay } from '../../src/rolling/decay.js';
import { runningSurface } from '../../src/geometry/running-surface.js';
import { periodAt, tipEnergyOn, demandAtTurn } from '../oracles/round-runner.js';
import { degree, settled, there } from '../rolling/roll.js';
import { roundRunner } from '../rolling/runners.js';
import { block, bowl, ellipseAt, uniform } from '../rolling/textbook-shapes.js';
import { roundBody } from '../contact/round-bodies.js';
import { rounding, type OutsideCheck } from './outside-check.js';

const textbook = 'textbooks of vibration';
const ellipse = ellipseAt({ x: 0, y: 0.4 });

/** A bowl of 0.1 m with its centre of gravity so high and its inertia about it. */
const bowlPeriod = (height: number, inertia: number): number =>
  there(settled(bowl(0.1), { mass: 1, inertia, centre: { x: 0, y: height } }).smallPeriod);

function speedKept(alpha: number): number {
  const { half, high, body } = block(alpha);
  return flatImpact(body.inertia / body.mass, high, -half, half).speedRatio;
}

/** Stable rests of a uniform plane body. */
function restsOf(outline: Loop): number {
  const { centroid } = loopMoments(outline);
  return balancesOf(landscapeOf(profileOf([[outline]]), centroid)).filter(({ kind }) => kind === 'rest')
    .length;
}

const person = roundBody('person');
const made = roundRunner(person.centre, person.radius, -22 * degree, 22 * degree);
const personAt = (swing: number) => settled(made.outline, person.body, { swing });

/** Loss of the first half swing, degrees. */
function lossFrom(release: number): number {
  const { outline, ends } = roundRunner(person.centre, person.radius, -40 * degree, 40 * degree);
  const profile = profileOf([[outline]]);
  const surface = runningSurface(profile, () => [ends.nose, ends.tail]);
  const died = decay(landscapeOf(profile, person.body.centre), surface, person.body, 0, release * degree, {
    resistance: 1.5e-3,
  });
  const [first, second] = there(died).turns;
  return (Math.abs(first!.lean) - Math.abs(second!.lean)) / degree;
}

const housner = 'G. W. Housner 1963, Bull. Seism. Soc. Am. 53, 403-417';
const domokos = 'Domokos, Papadopoulos, Ruina 1994, J. Elasticity 36, 59-66';
const cylinder = 'plane rigid-body dynamics: cylinder with its mass off centre (textbooks)';

export const mechanics: readonly OutsideCheck[] = [
  {
    what: 'period of a half disc of 0.1 m on its round side',
    source: `${textbook}: 2π sqrt((9π - 16) r / (8 g))`,
    mark: 'DERIVED',
    unit: 's',
    expected: 2 * Math.PI * Math.sqrt(((9 * Math.PI - 16) * 0.1) / (8 * 9.80665)),
    got: () => there(settled(bowl(0.1), uniform(bowl(0.1))).smallPeriod),
    ...rounding,
  },
  {
    what: 'period of a half hoop of 0.1 m',
    source: `${textbook}: 2π sqrt((π - 2) r / g)`,
    mark: 'DERIVED',
    unit: 's',
    expected: 2 * Math.PI * Math.sqrt(((Math.PI - 2) * 0.1) / 9.80665),
    got: () => {
      const below = 0.2 / Math.PI;
      return bowlPeriod(0.1 - below, 0.01 - below ** 2);
    },
    ...rounding,
  },
  {
    what: 'period of a solid hemisphere of 0.1 m',
    source: `${textbook}: 2π sqrt(26 r / (15 g))`,
    mark: 'DERIVED',
    unit: 's',
    expected: 2 * Math.PI * Math.sqrt(2.6 / (15 * 9.80665)),
    got: () => bowlPeriod(0.0625, (83 / 320) * 0.01),
    ...rounding,
  },
  {
    what: 'period of a uniform ellipse, 0.5 by 0.4 m, on its flat side',
    source: `${textbook}: 2π sqrt(b (a² + 5 b²) / (4 g (a² - b²)))`,
    mark: 'DERIVED',
    unit: 's',
    expected: 2 * Math.PI * Math.sqrt((0.4 * (0.25 + 0.8)) / (4 * 9.80665 * (0.25 - 0.16))),
    got: () => there(settled(ellipse, uniform(ellipse)).smallPeriod),
    ...rounding,
  },
  {
    what: 'small period of a chair with a person on one arc of 1.07 m',
    source: `${cylinder}: 2π sqrt((I + m h²) / (m g d))`,
    counts: textbook,
    mark: 'DERIVED',
    unit: 's',
    expected: 2 * Math.PI * Math.sqrt((9 + 80 * 0.36) / (80 * 9.80665 * 0.47)),
    got: () => there(personAt(6 * degree).smallPeriod),
    ...rounding,
  },
  {
    what: 'its period at 8°',
    source: `${cylinder}: energy integral by the rule of Gauss and Chebyshev`,
    counts: textbook,
    mark: 'DERIVED',
    unit: 's',
    expected: periodAt(person, 8 * degree),
    got: () => there(personAt(8 * degree).swing).period,
    ...rounding,
  },
  {
    what: 'its energy to go over a tail that ends 22° behind',
    source: 'energy: m g (|G - end| - h)',
    counts: textbook,
    mark: 'DERIVED',
    unit: 'J',
    expected: tipEnergyOn(made.ends.tail, person),
    got: () => there(personAt(6 * degree).back.tip).energy,
    ...rounding,
  },
  {
    what: 'friction it asks for at the turn of a swing of 8°',
    source: `${cylinder}: m H |H'| / (I + m H²)`,
    counts: textbook,
    mark: 'DERIVED',
    unit: '',
    expected: demandAtTurn(person, 8 * degree),
    got: () => there(personAt(8 * degree).forces).frictionDemand,
    ...rounding,
  },
  ...[0.05, 0.2, 0.5].map((alpha): OutsideCheck => ({
    what: `speed kept as a block of slenderness ${alpha} lands on its base`,
    source: `${housner}: 1 - 1.5 sin² α`,
    mark: 'CITED',
    unit: '',
    expected: 1 - 1.5 * Math.sin(alpha) ** 2,
    got: () => speedKept(alpha),
    ...rounding,
  })),
  {
    what: 'angle at which that block goes over',
    source: housner,
    mark: 'CITED',
    unit: 'rad',
    expected: 0.2,
    got: () => {
      const { outline, body } = block(0.2);
      return there(settled(outline, body).back.tip).angle;
    },
    ...rounding,
  },
  ...Object.entries({
    'an ellipse': ellipse,
    'a triangle': polygon([
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 0.2, y: 0.5 },
    ]),
    'a half disc': bowl(0.3),
  }).map(([name, outline]): OutsideCheck => ({
    what: `stable rests of ${name}: two or more`,
    source: domokos,
    mark: 'CITED',
    unit: '',
    expected: 2,
    got: () => Math.min(2, restsOf(outline)),
    within: 0,
    why: 'a count',
  })),
  ...[
    [1, 0.36574],
    [6, 0.36693],
    [15, 0.37357],
    [25, 0.38764],
  ].map(([release, expected]): OutsideCheck => ({
    what: `amplitude that rolling resistance takes from a half swing of ${release}°`,
    source: 'energy balance integrated in 40 digits (arm 1.5 mm)',
    counts: textbook,
    mark: 'DERIVED',
    unit: '°',
    expected: expected!,
    got: () => lossFrom(release!),
    within: 1e-5,
    why: 'printed to five decimals',
  })),
];
