/** The second calculation of a body released on its running surface. */
import type { MassProperties } from '../mass.js';
import type { Profile } from '../geometry/profile.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import { isMissing } from '../numeric/missing.js';
import type { RestRecord } from '../rolling/roll-at-rest.js';
import type { Facets } from './faceted-hull.js';
import { rollFreely } from './free-roll.js';
import { opinionOfRest } from './opinion-of-rest.js';
import { swingWithRoom } from './opinion-of-swing.js';
import { opinionOfTip } from './opinion-of-tip.js';
import { courseAlone, stepFor, surely, type SecondOpinion } from './second-opinion.js';

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

/** Never calculated a second time. */
const never = [
  'the small swing',
  'the friction asked for',
  'going over forward and sideways',
  'steady pushes',
];

export function opinionAtRest(released: Released): SecondOpinion {
  const { smallPeriod, rest } = released.atRest;
  const step = stepFor(isMissing(smallPeriod) ? null : smallPeriod, rest.height);
  return surely((finer) => opinionBy(released, step / finer));
}

function opinionBy(released: Released, step: number): SecondOpinion {
  const [rested, tipped] = [opinionOfRest(released, step), opinionOfTip(released, step)];
  return {
    compared: [...rested.compared, ...tipped.compared],
    ...floorSeen(released, step),
    notCovered: [...rested.notCovered, ...tipped.notCovered, ...never],
  };
}

/** The facets go on for so far beyond the ends of a swing, radians. */
const margin = Math.PI / 180;
/** Of those facets: a slide is wanted to a part in two hundred. */
const share = 0.05;

/** One swing on the floor of the design. */
function floorSeen(released: Released, step: number): Pick<SecondOpinion, 'slide' | 'lifts'> {
  const { friction } = released;
  const swing = swingWithRoom(released);
  if (typeof swing === 'string') return { slide: null, lifts: null };
  const { release, turns, period } = swing;
  const [from, to] = [Math.min(release, ...turns) - margin, Math.max(release, ...turns) + margin];
  const facets: Facets = { from, to, share, step };
  const course = courseAlone(released, { until: period });
  const { slide, lifts } = rollFreely(course, { lean: release, rate: 0 }, { facets, friction });
  return { slide, lifts };
}
