/**
 * Weights that press on a chair without riding on it, and stay: V = m g H + Σ w Y. A press w at b is in all ways but
 * inertia a mass w/g there, so that rests and crests are those of the common centre
 *
 *     G* = (m G + Σ (w/g) b) / (m + Σ w/g)        V = (m + Σ w/g) g H*
 *
 * Put on at once, at a standstill, a press rolls the chair until V is what it was: the peak. It is borne while that is
 * reached at or before the crest of V.
 */
import type { Point } from '../geometry/point.js';
import type { Profile } from '../geometry/profile.js';
import { combineMasses, type MassProperties } from '../mass.js';
import { missing, type OrMissing } from '../numeric/missing.js';
import { rootBetween } from '../numeric/root.js';
import { fullTurn, withinTurn } from '../geometry/lean.js';
import { indexAt } from '../geometry/profile.js';
import { balancesOf } from './balance.js';
import { g } from './gravity.js';
import { landscapeOf, riseBetween, slopeOn, stretchAt, type Landscape } from './landscape.js';
import type { Sense } from './tip.js';

/** A weight on a place of the chair. */
export interface DeadLoad {
  readonly place: Point;
  /** Newton. */
  readonly force: number;
}

/** G*. */
export const loadedCentre = (body: MassProperties, loads: readonly DeadLoad[]): Point =>
  combineMasses([
    { ...body, inertia: 0 },
    ...loads
      .filter(({ force }) => force > 0)
      .map(({ place, force }) => ({ mass: force / g, centre: place, inertia: 0 })),
  ]).centre;

export interface StepPeak {
  /** Lean at which V is regained. */
  readonly peak: number;
  /** Of V on that side, the lean of the crest. */
  readonly crest: number;
}

/**
 * What a press put on at once does to a chair that stands still at a lean, or which way it goes over.
 * @param stays which crest counts when it does not move: it is on a flat
 */
export function stepPeak(standing: Standing, load: DeadLoad, stays: Sense): StepPeak | Sense {
  const { landscape, rolls, sense, crest, spare } = steppedOn(standing, load, stays);
  const { rest } = standing;
  if (rolls === 0) return { peak: rest, crest };
  if (!(spare >= 0)) return sense > 0 ? 'back' : 'forward';
  const low = nearest(landscape, 'rest', rest, sense);
  if (sense * (crest - low) <= 0 || sense * (low - rest) < beside) return { peak: rest, crest };
  return { peak: rootBetween((lean) => riseBetween(landscape, rest, lean), low, crest), crest };
}

/** A loaded rest so near, radians, is the same: joints draw what is within a nanometre of them to themselves. */
const beside = 4e-9;

/** A crest is sought to a quarter turn: what has not come back by then lies on the floor. */
const farthest = Math.PI / 2;

/** `spare`: how much higher G* stands at the crest than at the start, metres; infinite where it does not move. */
function steppedOn({ profile, body, rest }: Standing, load: DeadLoad, stays: Sense) {
  const landscape = landscapeOf(profile, loadedCentre(body, [load]));
  const rolls = rollsTo(landscape, rest);
  const sense = rolls === 0 ? (stays === 'back' ? 1 : -1) : rolls;
  const crest = rest + sense * Math.min(sense * (nearest(landscape, 'crest', rest, sense) - rest), farthest);
  const spare = rolls === 0 ? Infinity : riseBetween(landscape, rest, crest);
  return { landscape, rolls, sense, crest, spare } as const;
}

/** A chair that stands still at a lean, radians. */
export interface Standing {
  readonly profile: Profile;
  readonly body: MassProperties;
  readonly rest: number;
}

/** Which way V falls from a lean; 0: neither, on a flat. */
function rollsTo(landscape: Landscape, lean: number): 1 | 0 | -1 {
  const index = indexAt(landscape.profile, lean);
  const after = stretchAt(landscape, index);
  const before = lean <= after.from ? stretchAt(landscape, index - 1) : after;
  if (slopeOn(after, lean) < 0) return 1;
  return slopeOn(before, lean) > 0 ? -1 : 0;
}

/** The nearest balance of a kind on one side of a lean. */
function nearest(landscape: Landscape, kind: 'rest' | 'crest', lean: number, sense: 1 | -1): number {
  const away = balancesOf(landscape)
    .filter((balance) => balance.kind === kind)
    .map((balance) => sense * (withinTurn(sense * (balance.lean - lean), 0) || fullTurn));
  return lean + away.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a), sense * fullTurn);
}

/**
 * The largest press, newton, that may be put at once on a place of a chair that stands still at a lean.
 * Missing: any is borne.
 */
export function largestStep(standing: Standing, place: Point, stays: Sense): OrMissing<number> {
  const weight = standing.body.mass * g;
  const forceOf = (share: number): number => (weight * share) / (1 - share);
  // Of any size where nothing moves: only the sign counts.
  const spare = (share: number): number =>
    Math.min(steppedOn(standing, { place, force: forceOf(share) }, stays).spare, 1);
  if (spare(heaviest) >= 0) return missing('bears any load put there at once');
  return forceOf(rootBetween(spare, lightest, heaviest));
}

/** Shares w/(w + m g): a load of a million chairs, what bears it bears any; and a millionth of one, which any bears. */
const heaviest = 1 - 1e-6;
const lightest = 1e-6;
