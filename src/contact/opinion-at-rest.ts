/** The second calculation of a body released on its running surface. */
import type { MassProperties } from '../mass.js';
import { fullTurn, withinTurn } from '../geometry/lean.js';
import { isCorner } from '../geometry/hull-element.js';
import { hasFlatBetween, type Profile } from '../geometry/profile.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import { isMissing } from '../numeric/missing.js';
import { g } from '../rolling/gravity.js';
import { landscapeOf } from '../rolling/landscape.js';
import type { RestRecord } from '../rolling/roll-at-rest.js';
import type { Course } from '../rolling/scripted-place.js';
import { freeSwing, type Swing } from '../rolling/swing.js';
import type { Facets } from './faceted-hull.js';
import { rollFreely } from './free-roll.js';
import { freeSwingSeen } from './free-swing.js';
import {
  coarseShare,
  energyTolerance,
  stepFor,
  unmoved,
  type Compared,
  type SecondOpinion,
} from './second-opinion.js';
import { tipSpeed } from './tip-speed.js';

export interface Released {
  readonly profile: Profile;
  readonly surface: RunningSurface;
  readonly body: MassProperties;
  /** What the exact model says. */
  readonly atRest: RestRecord;
  /** How far back of its rest it is let go, radians. */
  readonly swing: number;
  /** Of the floor. */
  readonly friction: number;
}

/**
 * Of the rest by the middle of swings, radians: on one arc or curve; where the swing passes from one to another, which the
 * engine’s noise feels on one side more than on the other; where it pivots on a corner, a single vertex.
 */
const restTolerance = {
  alike: (0.002 * Math.PI) / 180,
  joints: (0.006 * Math.PI) / 180,
  corners: (0.02 * Math.PI) / 180,
};
/** A wide swing loses by the square of its width, in a narrow one facets are felt. */
const widthFactor = (amplitude: number): number =>
  (1 + (amplitude / usualSwing) ** 2) * Math.max(1, (0.7 * usualSwing) / amplitude);
const usualSwing = (6 * Math.PI) / 180;
/** On a corner the period is off by so much more. */
const cornerFactor = 3;
/** Of the period, at 8° and above. Facets weigh more in a small swing: 0.3 % at 2°, between by a power. */
const periodTolerance = { share: 1e-3, swing: (8 * Math.PI) / 180, power: Math.log(3) / Math.log(4) };
/** Never calculated a second time. */
const never = ['tipping forward and sideways', 'steady pushes'];

export function opinionAtRest(released: Released): SecondOpinion {
  const { atRest } = released;
  const step = stepFor(isMissing(atRest.swing) ? null : atRest.swing.period);
  const swung = swingSeen(released, step);
  const tipped = tipSeen(released, step);
  return {
    compared: [...swung.compared, ...tipped.compared],
    ...floorSeen(released, step),
    notCovered: [...swung.notCovered, ...tipped.notCovered, ...never],
  };
}

type Part = Pick<SecondOpinion, 'compared' | 'notCovered'>;
const notCovered = (what: string, why: string): Part => ({ compared: [], notCovered: [`${what}: ${why}`] });

const alone = ({ profile, body }: Released, more: Pick<Course, 'until'> & Partial<Course>): Course => ({
  profile,
  script: unmoved(body),
  guards: [{ from: 0, back: Infinity, forward: -Infinity }],
  endsFalling: false,
  ...more,
});

/** The swing of the exact model, or one as wide as the runner has room for, by halves; or why it has none. */
function swingWithRoom({ profile, surface, body, atRest, swing }: Released): Swing | string {
  if (!isMissing(atRest.swing)) return atRest.swing;
  const landscape = landscapeOf(profile, body.centre);
  const { lean } = atRest.rest;
  let why = atRest.swing.missing;
  for (let amplitude = swing / 2; amplitude >= narrowest; amplitude /= 2) {
    const found = freeSwing(landscape, surface, body, lean, lean + amplitude);
    if (!isMissing(found)) return found;
    why = found.missing;
  }
  return why;
}

/** A swing narrower than this, radians, the facets would be felt in. */
const narrowest = Math.PI / 180;

/**
 * The rest and the period by a free swing. The middle of a swing lies off the rest where the radii of the runner are
 * unlike, by what equal heights at its ends say: what is compared is where the middle lies.
 */
function swingSeen(released: Released, step: number): Part {
  const { rest, swing: asked } = released.atRest;
  const what = 'rest and period';
  if (rest.flat > 0) return notCovered(what, 'it settles on a flat, so no swing has it in its middle');
  const exact = swingWithRoom(released);
  if (typeof exact === 'string') return notCovered(what, exact);
  if (exact.impacts.length > 0)
    return notCovered(what, 'flats take the swing’s energy, so its middle wanders');
  const other = exact.turns[0];
  const seen = freeSwingSeen(
    alone(released, { until: 0 }),
    { lean: exact.release, other, period: exact.period },
    step,
  );
  if (seen === null) return notCovered(what, 'it does not swing on as it should');
  const amplitude = Math.abs(exact.release - rest.lean);
  const passed = passedBy(released.profile, exact);
  const offRest = (exact.release + other) / 2 - rest.lean;
  const middle: Compared = {
    measure: 'restAngleDeg',
    second: seen.middle - offRest,
    exact: rest.lean,
    tolerance: restTolerance[passed] * widthFactor(amplitude),
  };
  if (isMissing(asked) || asked.release !== exact.release) {
    const why = isMissing(asked) ? asked.missing : 'the swing asked for has no room';
    return { compared: [middle], notCovered: [`period: ${why}`] };
  }
  const { share, swing, power } = periodTolerance;
  const narrow = Math.max(1, (swing / amplitude) ** power) * (1 + (amplitude / swing) ** 2);
  const period: Compared = {
    measure: 'periodAtSwingS',
    second: seen.period,
    exact: exact.period,
    tolerance: share * narrow * exact.period * (passed === 'corners' ? cornerFactor : 1),
  };
  return { compared: [middle, period], notCovered: [] };
}

/** What lies between the ends of a swing. */
function passedBy({ elements }: Profile, { release, turns }: Swing): keyof typeof restTolerance {
  const [from, to] = [Math.min(release, ...turns), Math.max(release, ...turns)];
  const within = elements.filter((element) => {
    const start = withinTurn(element.from, from - fullTurn / 2);
    return start < to && start + element.to - element.from > from;
  });
  if (within.some(isCorner)) return 'corners';
  return within.length > 1 ? 'joints' : 'alike';
}

/** Facets on all that the contact passes from rest to a crest, and a little more. */
const facetsTo = ({ atRest: { rest } }: Released, crest: number, step: number): Facets => ({
  from: rest.lean - margin,
  to: crest + margin,
  share: coarseShare,
  step,
});
const margin = Math.PI / 180;

/** Seconds: a start just at the limit hangs about the crest for two. */
const tipTime = 6;

/** G so much higher or lower, metres, is noise of the engine. */
const leastHeight = 2e-6;
/** Turning in one step, radians: a start faster than an ordinary chair’s is followed by shorter ones. */
const turnOfAStep = 0.006;

/** The energy to go over back, by the least starting speed that does. */
function tipSeen(released: Released, step: number): Part {
  const { atRest, profile, body } = released;
  const { rest, back } = atRest;
  const what = 'energy to go over back';
  if (isMissing(back.tip)) return notCovered(what, back.tip.missing);
  const { crest, energy } = back.tip;
  if (rest.flat > 0 || hasFlatBetween(profile, rest.lean, crest))
    return notCovered(what, 'flats on the way take some of it');
  // Energy at rest: ½ (I + m H²) θ̇²
  const arm = body.inertia + body.mass * rest.height ** 2;
  const course = alone(released, {
    until: tipTime,
    guards: [{ from: 0, back: crest, forward: -Infinity }],
    endsFalling: true,
  });
  const expected = Math.sqrt((2 * energy) / arm);
  const facets = facetsTo(released, crest, Math.min(step / 2, turnOfAStep / expected));
  const speed = tipSpeed(course, rest.lean, expected, facets);
  if (speed === null)
    return notCovered(what, 'no starting speed near the expected one is the least that does');
  return {
    compared: [
      {
        measure: 'tipBackEnergyJ',
        second: (arm * speed ** 2) / 2,
        exact: energy,
        tolerance: energyTolerance * energy + leastHeight * body.mass * g,
      },
    ],
    notCovered: [],
  };
}

/** One swing on the floor of the design. */
function floorSeen(released: Released, step: number): Pick<SecondOpinion, 'slide' | 'lifts'> {
  const { friction } = released;
  const swing = swingWithRoom(released);
  if (typeof swing === 'string') return { slide: null, lifts: null };
  const { release, turns, period } = swing;
  const facets: Facets = {
    from: Math.min(release, ...turns) - margin,
    to: Math.max(release, ...turns) + margin,
    share: coarseShare,
    step,
  };
  const { slide, lifts } = rollFreely(
    alone(released, { until: period }),
    { lean: release, rate: 0 },
    { facets, friction },
  );
  return { slide, lifts };
}
