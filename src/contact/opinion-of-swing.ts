/** Period and middle of the swings of a free body beside those of the exact model. */
import { isCorner } from '../geometry/hull-element.js';
import { elementsBetween, type Profile } from '../geometry/profile.js';
import { isMissing } from '../numeric/missing.js';
import { topOf } from '../numeric/maximum.js';
import { floorPlace } from '../rolling/floor-place.js';
import { landscapeOf } from '../rolling/landscape.js';
import { freeSwing, type Swing } from '../rolling/swing.js';
import { freeSwingSeen } from './free-swing.js';
import type { Released } from './opinion-at-rest.js';
import { courseAlone, notCovered, withoutStep, type Compared, type Part } from './second-opinion.js';

/**
 * Of the middle, radians: on one arc or curve; where the swing passes from one to another, which the engine’s noise feels
 * on one side more than on the other; where it pivots on a corner, a single vertex.
 */
const middleTolerance = {
  alike: (0.002 * Math.PI) / 180,
  joints: (0.006 * Math.PI) / 180,
  corners: (0.02 * Math.PI) / 180,
};
/** Of the period, at 8° and above. Facets weigh more in a small swing: 0.3 % at 2°, between by a power; the middle alike. */
const periodTolerance = { share: 1e-3, swing: (8 * Math.PI) / 180, power: Math.log(3) / Math.log(4) };
/** Below this, radians, the middle feels facets as the period does. */
const narrowForMiddle = (4 * Math.PI) / 180;

/**
 * By a free swing. Its middle lies off the rest where the radii of the runner are unlike, as does that of an exact swing. The
 * engine’s narrows a little: it is held against an exact one of its own mean width.
 */
export function opinionOfSwing(released: Released, step: number): Part {
  const { rest, swing: asked } = released.atRest;
  const what = 'period';
  if (rest.flat > 0) return notCovered(what, 'it settles on a flat');
  const exact = swingWithRoom(released);
  if (typeof exact === 'string') return notCovered(what, exact);
  if (exact.impacts.length > 0) return notCovered(what, 'flats take the swing’s energy');
  if (endsOnBrink(exact, released)) return notCovered(what, 'the swing ends next to the point of no return');
  const passed = passedBy(released.profile, exact);
  const seen = besideExact(released, exact, step, passed);
  if (seen === null) return { compared: neverBack(exact, released), notCovered: [] };
  const width = Math.abs(exact.release - rest.lean);
  const middle: Compared = {
    measure: 'restAngleDeg',
    second: lowestWithin(released, exact) + seen.aside,
    exact: rest.lean,
    tolerance: middleTolerance[passed] * Math.max(1, narrowForMiddle / width),
  };
  if (isMissing(asked)) return { compared: [middle], notCovered: [`${what}: ${asked.missing}`] };
  const { share, swing, power } = periodTolerance;
  const period: Compared = {
    measure: 'periodAtSwingS',
    second: seen.period,
    exact: exact.period,
    tolerance: share * Math.max(1, (swing / width) ** power) * exact.period,
  };
  return { compared: [middle, period], notCovered: [] };
}

/** What is seen of a swing of the free body. */
interface BesideExact {
  /** How far its middle lies off that of an exact one of its own mean width, radians. */
  readonly aside: number;
  /** As long as one as wide as was asked for would take, seconds: its own times what width does to an exact one. */
  readonly period: number;
}

/** @returns null: it does not come back */
function besideExact(released: Released, exact: Swing, step: number, passed: Passed): BesideExact | null {
  const release = { lean: exact.release, other: exact.turns[0], period: exact.period };
  const exactFrom = (lean: number): Swing => {
    const found = swingFrom(released, lean);
    return typeof found === 'string' ? exact : found;
  };
  const asked = exactFrom(exact.release);
  const at = (one: number): BesideExact | null => {
    const seen = freeSwingSeen(courseAlone(released, { until: 0 }), release, one);
    if (seen === null) return null;
    const same = exactFrom(seen.turn);
    return { aside: seen.middle - middleOf(same), period: (seen.period * asked.period) / same.period };
  };
  if (passed !== 'corners') return at(step);
  // On a corner it sinks to another depth than beside it.
  const [fine, coarse] = [at(step / 2), at(step)];
  if (fine === null || coarse === null) return fine;
  return {
    aside: withoutStep(fine.aside, coarse.aside),
    period: withoutStep(fine.period, coarse.period),
  };
}

/** Where G is lowest within a swing. */
const lowestWithin = ({ profile, body }: Released, { release, turns }: Swing): number =>
  topOf((lean) => -floorPlace(profile, body.centre, lean).y, turns[0], release).x;

const middleOf = ({ release, turns }: Swing): number => (release + turns[0]) / 2;

/** It was watched four times as long as it should have taken: that is no period, and no rest to swing about. */
function neverBack(exact: Swing, { atRest: { rest } }: Released): readonly Compared[] {
  const period: Compared = {
    measure: 'periodAtSwingS',
    second: 4 * exact.period,
    exact: exact.period,
    tolerance: periodTolerance.share * exact.period,
  };
  const away: Compared = {
    measure: 'restAngleDeg',
    second: exact.release,
    exact: rest.lean,
    tolerance: middleTolerance.corners,
  };
  return [away, period];
}

/** A swing of the exact model, let go at a lean; or why there is none. */
export function swingFrom({ profile, surface, body, atRest }: Released, release: number): Swing | string {
  const landscape = landscapeOf(profile, body.centre);
  const found = freeSwing(landscape, surface, body, atRest.rest.lean, release);
  return isMissing(found) ? found.missing : found;
}

/** The swing of the exact model, or one as wide as the runner has room for, by halves; or why it has none. */
export function swingWithRoom(released: Released): Swing | string {
  const { atRest, swing } = released;
  if (!isMissing(atRest.swing)) return atRest.swing;
  let why = atRest.swing.missing;
  for (let width = swing / 2; width >= narrowest; width /= 2) {
    const found = swingFrom(released, atRest.rest.lean + width);
    if (typeof found !== 'string') return found;
    why = found;
  }
  return why;
}

/** A swing narrower than this, radians, the facets would be felt in. */
const narrowest = Math.PI / 180;

/** Nearer to a crest than this, of the way there, it hangs about: the least error of its width is one of its period. */
const brink = 0.1;

function endsOnBrink({ release, turns }: Swing, { atRest: { rest, back, forward } }: Released): boolean {
  const ends = [release, ...turns];
  return [back, forward].some(({ tip }) => {
    if (isMissing(tip)) return false;
    const way = tip.crest - rest.lean;
    return ends.some((lean) => (lean - rest.lean) / way > 1 - brink);
  });
}

/** What lies between the ends of a swing. */
type Passed = 'alike' | 'joints' | 'corners';

function passedBy(profile: Profile, { release, turns }: Swing): Passed {
  const passed = elementsBetween(profile, Math.min(release, ...turns), Math.max(release, ...turns));
  if (passed.some(isCorner)) return 'corners';
  return passed.length > 1 ? 'joints' : 'alike';
}
