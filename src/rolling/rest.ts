/**
 * Where a body released at θ = 0 comes to rest: the first minimum of H met downhill, with the contact on the running
 * surface. Physics: V = m g H.
 */
import { contactOn } from '../geometry/hull-element.js';
import { elementOf, indexAt, lengthOn, type Profile } from '../geometry/profile.js';
import { fullTurn, withinTurn } from '../geometry/lean.js';
import { plus, minus, times, type Point } from '../geometry/point.js';
import type { RunningSurface } from '../geometry/running-surface.js';
import { atJoint, balancesOf, type Balance } from './balance.js';
import { hangOn, heightOn, landscapeOf, slopeOn, stretchAt, type Landscape } from './landscape.js';

export interface Rest {
  /** Radians from the pose as drawn. */
  readonly lean: number;
  readonly place: Balance['place'];
  /** H, height of G over the floor, metres. */
  readonly height: number;
  /** ρ - H = H'' for a smaller and for a larger lean, metres; how far G hangs below the centre of the arc. */
  readonly hang: readonly [number, number];
  /** Length of the flat it rests on, metres; 0 elsewhere. */
  readonly flat: number;
  /** The point plumb under G, in the body's frame. */
  readonly contact: Point;
  /** That point's place along the hull, metres (`lengthAt`). */
  readonly contactLength: number;
}

/** What becomes of a body released at θ = 0. */
export type Settling =
  | { readonly rest: Rest }
  /** It rolls off its running surface, or balances on a crest at θ = 0. */
  | { readonly rest: null; readonly rolls: 'back' | 'forward' | null };

export function settle(
  landscape: Landscape,
  balances: readonly Balance[],
  surface: RunningSurface,
): Settling {
  const first = firstDownhill(landscape, balances);
  if (first === null) return { rest: null, rolls: null };
  const rest = restAt(landscape, first);
  const { nose, tail } = surface;
  if (rest.contactLength > tail.length + onSurface) return { rest: null, rolls: 'back' };
  if (rest.contactLength < nose.length - onSurface) return { rest: null, rolls: 'forward' };
  return { rest };
}

/** Lean of the rest of a body with this centre of gravity, radians; null where it has none on its running surface. */
export function restLean(profile: Profile, surface: RunningSurface, centre: Point): number | null {
  const landscape = landscapeOf(profile, centre);
  return settle(landscape, balancesOf(landscape), surface).rest?.lean ?? null;
}

/**
 * Shorter than this along the runner, metres, a flat or a way between two rests is nothing that a chair could show: it
 * is rolled over within a tenth of a degree. Arcs drawn to two decimals of an inch meet within it.
 */
export const unfelt = 5e-4;

/** A contact within a nanometre of the surface's end is on it: rounding. */
export const onSurface = 1e-9;

/** The first rest that H falls to from θ = 0; on a crest there neither side is downhill. */
function firstDownhill(landscape: Landscape, balances: readonly Balance[]): Balance | null {
  const rests = balances.filter(({ kind }) => kind === 'rest');
  const here = balances
    .map((balance) => turnedWithin(landscape, balance, -Math.PI))
    .filter(({ lean }) => Math.abs(lean) <= atJoint);
  const restHere = here.find(({ kind }) => kind === 'rest');
  if (restHere !== undefined || rests.length === 0) return restHere ?? null;
  const towards = (from: number): Balance =>
    rests.map((rest) => turnedWithin(landscape, rest, from)).reduce(nearer);
  if (here.length > 0) return besideCrest(landscape, towards(0), towards(-fullTurn));
  const slope = slopeOn(stretchAt(landscape, indexAt(landscape.profile, 0)), 0);
  return slope === 0 ? null : towards(slope < 0 ? 0 : -fullTurn);
}

const nearer = (a: Balance, b: Balance): Balance => (Math.abs(b.lean) < Math.abs(a.lean) ? b : a);

/** Arcs that meet but for rounding have a crest at their joint, and a rest so near on either side that they are one. */
function besideCrest(landscape: Landscape, back: Balance, forward: Balance): Balance | null {
  const [one, other] = [restAt(landscape, back), restAt(landscape, forward)];
  return Math.abs(one.contactLength - other.contactLength) <= unfelt ? nearer(back, forward) : null;
}

/** The same balance with its lean moved by whole turns into [from, from + 2π), its index counted on alike. */
export function turnedWithin({ stretches }: Landscape, balance: Balance, from: number): Balance {
  const lean = withinTurn(balance.lean, from);
  const turns = Math.round((lean - balance.lean) / fullTurn);
  return { ...balance, lean, index: balance.index + turns * stretches.length };
}

/** Everything there is to say about one rest. */
export function restAt(landscape: Landscape, { lean, place, index }: Balance): Rest {
  const before = stretchAt(landscape, index);
  const after = place === 'stretch' ? before : stretchAt(landscape, index + 1);
  const flat = place === 'flat' ? before.flatAfter : 0;
  // Over a flat H' = X_G - X_C jumps from minus the way that G is behind the flat's front end to a positive value.
  const behindFront = flat > 0 ? -slopeOn(before, lean) : 0;
  return {
    lean,
    place,
    height: heightOn(before, lean),
    hang: [hangOn(before, lean), hangOn(after, lean)],
    flat,
    contact: contactAlong(landscape.profile, index, lean, flat > 0 ? behindFront / flat : 0),
    contactLength: lengthOn(landscape.profile, index, lean) + behindFront,
  };
}

/** The point a share of the way from the end of one element to the beginning of the next. */
function contactAlong(profile: Profile, index: number, lean: number, share: number): Point {
  const from = contactOn(elementOf(profile, index).element, lean);
  if (share === 0) return from;
  const to = contactOn(elementOf(profile, index + 1).element, lean);
  return plus(from, times(minus(to, from), share));
}
