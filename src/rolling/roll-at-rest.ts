/** Everything the exact model says of one rigid body released on its running surface: rolled once, read often. */
import type { MassProperties } from '../mass.js';
import type { Point } from '../geometry/point.js';
import { withinTurn } from '../geometry/lean.js';
import type { Profile } from '../geometry/profile.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import { balancesOf, type Balance } from './balance.js';
import { landscapeOf, type Landscape } from './landscape.js';
import { onSurface, unfelt, restAt, settle, turnedWithin, type Rest } from './rest.js';
import { smallPeriod } from './small-period.js';
import { freeSwing, swingForces, type Swing, type SwingForces } from './swing.js';
import { tippingPush, tipOver, type Sense, type Tip } from './tip.js';

export interface TipRecord {
  readonly tip: OrMissing<Tip>;
  /** Steady level push that tips it, newton; missing without a point to push at. */
  readonly push: OrMissing<number>;
  /** From rest to the lean at which the contact reaches that end of the running surface, radians, positive. */
  readonly rockerEnd: number;
}

export interface RestRecord {
  readonly rest: Rest;
  readonly smallPeriod: OrMissing<number>;
  readonly swing: OrMissing<Swing>;
  readonly forces: OrMissing<SwingForces>;
  readonly back: TipRecord;
  readonly forward: TipRecord;
}

export interface RollRecord {
  /** The rest that counts; null when it does not come to rest on its running surface. */
  readonly atRest: RestRecord | null;
  /** Which way it rolls off when it does not; null on a crest at θ = 0 or when it does. */
  readonly rollsOff: Sense | null;
  /** Rests with the contact on the running surface. */
  readonly restsOnSurface: readonly Rest[];
  /** Leans of rests within 45° of the pose as drawn that are not on it: reported, not counted on. */
  readonly otherRests: readonly number[];
}

export interface RollSettings {
  /** How far back of its rest it is let go for the free swing, radians. */
  readonly swing: number;
  /** The point that is pushed back, or pulled forward. */
  readonly pushedAt: Point | null;
}

/** Other rests are looked for as far as this from the pose as drawn. */
const neighbourhood = Math.PI / 4;

export function rollAtRest(
  profile: Profile,
  surface: RunningSurface,
  body: MassProperties,
  settings: RollSettings,
): RollRecord {
  const landscape = landscapeOf(profile, body.centre);
  const balances = balancesOf(landscape);
  const settling = settle(landscape, balances, surface);
  return {
    atRest: settling.rest && atRest(landscape, balances, surface, body, settling.rest, settings),
    rollsOff: settling.rest ? null : settling.rolls,
    ...restsAround(landscape, balances, surface),
  };
}

function atRest(
  landscape: Landscape,
  balances: readonly Balance[],
  surface: RunningSurface,
  body: MassProperties,
  rest: Rest,
  { swing: amplitude, pushedAt }: RollSettings,
): RestRecord {
  const swing = freeSwing(landscape, surface, body, rest.lean, rest.lean + amplitude);
  const forces = isMissing(swing) ? swing : swingForces(swing);
  const lifts = !isMissing(forces) && forces.leastFloorForce <= 0 ? missing('leaves the floor') : null;
  const pushed = pushedAt && landscapeOf(landscape.profile, pushedAt);
  const side = (sense: Sense): TipRecord => {
    const tip = tipOver(landscape, balances, body, rest, sense);
    const end = sense === 'back' ? surface.tail.lean - rest.lean : rest.lean - surface.nose.lean;
    if (isMissing(tip)) return { tip, push: tip, rockerEnd: end };
    const push = pushed && tippingPush(landscape, body, rest, tip, pushed);
    return { tip, push: push ?? missing('no point to push at'), rockerEnd: end };
  };
  return {
    rest,
    smallPeriod: smallPeriod(body, rest),
    swing: lifts ?? swing,
    forces: lifts ?? forces,
    back: side('back'),
    forward: side('forward'),
  };
}

function restsAround(
  landscape: Landscape,
  balances: readonly Balance[],
  { nose, tail }: RunningSurface,
): Pick<RollRecord, 'restsOnSurface' | 'otherRests'> {
  const rests = balances
    .filter(({ kind }) => kind === 'rest')
    .map((balance) =>
      restAt(landscape, turnedWithin(landscape, balance, (nose.lean + tail.lean) / 2 - Math.PI)),
    );
  const runs = ({ contactLength }: Rest): boolean =>
    contactLength >= nose.length - onSurface && contactLength <= tail.length + onSurface;
  return {
    restsOnSurface: rests
      .filter(runs)
      .sort((a, b) => a.contactLength - b.contactLength)
      .filter(apart),
    otherRests: rests
      .filter((rest) => !runs(rest))
      .map(({ lean }) => withinTurn(lean, -Math.PI))
      .filter((lean) => Math.abs(lean) <= neighbourhood),
  };
}

/** Two rests too near along the runner to be told apart are one: a joint whose arcs meet but for rounding. */
const apart = (rest: Rest, i: number, rests: readonly Rest[]): boolean =>
  i === 0 || Math.abs(rest.contactLength - rests[i - 1]!.contactLength) > unfelt;
