/**
 * The running surface: the stretch of the hull around the contact at θ = 0 that belongs to the body touching
 * there, up to the first corner of more than 20° or another body. Where the drawing states its ends, the
 * corners do not count.
 */
import { contactOn, isCorner, type HullElement } from './hull-element.js';
import { signChanges } from '../numeric/root.js';
import { ahead, fullTurn } from './lean.js';
import { distance, dot, minus, plus, times, type Point } from './point.js';
import { elementAt, elementOf, indexAt, lengthAt, lengthOn, perimeter, type Profile } from './profile.js';

export interface SurfaceEnd {
  /** Lean at which the contact reaches this end, radians. */
  readonly lean: number;
  /** Place along the hull, metres, as `lengthAt` counts; it grows towards the tail. */
  readonly length: number;
}

export interface RunningSurface {
  /** Which body of the profile it belongs to. */
  readonly owner: number;
  /** The nose end: the least lean. */
  readonly nose: SurfaceEnd;
  /** The tail end: the greatest lean. */
  readonly tail: SurfaceEnd;
}

/** The contract's figure: a sharper corner is an end, a duller one is rolled over. */
const sharpest = (20 * Math.PI) / 180;

/** Two places are told apart only by more than a nanometre: a corner and the end of its arc are one. */
const nearer = 1e-9;

/**
 * @param statedEnds where the drawing of a body says that its bottom edge ends (two points near the hull), or null.
 */
export function runningSurface(
  profile: Profile,
  statedEnds: (owner: number) => readonly [Point, Point] | null = () => null,
): RunningSurface {
  const { owner } = elementAt(profile, level);
  const stated = statedEnds(owner);
  const nose = walk(profile, owner, -1, stated === null);
  const tail = walk(profile, owner, 1, stated === null);
  if (stated === null) return { owner, nose, tail };
  const statedNose = first(stated.map((end) => placeNearest(profile, owner, end, -1)));
  const statedTail = last(stated.map((end) => placeNearest(profile, owner, end, 1)));
  return {
    owner,
    nose: statedNose.length >= nose.length - nearer ? statedNose : nose,
    tail: statedTail.length <= tail.length + nearer ? statedTail : tail,
  };
}

/** Metres of running surface between its ends. */
export const surfaceLength = ({ nose, tail }: RunningSurface): number => tail.length - nose.length;

interface Running {
  readonly profile: Profile;
  readonly surface: RunningSurface;
}

/** The tail end as a place of the body; of a mean surface, of the plane half-way between the rockers. */
export const tailPlace = ({ profile, surface: { tail } }: Running): Point => placeOf(profile, tail);

/** The nose end alike. */
export const nosePlace = ({ profile, surface: { nose } }: Running): Point => placeOf(profile, nose);

function placeOf(profile: Profile, end: SurfaceEnd): Point {
  const index = indexAt(profile, end.lean - level);
  const touch = contactOn(elementOf(profile, index).element, end.lean);
  const onFlat = end.length - lengthOn(profile, index, end.lean);
  const next = contactOn(elementOf(profile, index + 1).element, end.lean);
  const flat = distance(touch, next);
  if (onFlat < nearer || flat < nearer) return touch;
  return plus(touch, times(minus(next, touch), Math.min(1, onFlat / flat)));
}

const first = (ends: SurfaceEnd[]): SurfaceEnd => ends.reduce((a, b) => (b.length < a.length ? b : a));
const last = (ends: SurfaceEnd[]): SurfaceEnd => ends.reduce((a, b) => (b.length > a.length ? b : a));

/** Goes along the hull from the contact at θ = 0, in the sense of growing (1) or falling (-1) lean. */
function walk(profile: Profile, owner: number, sense: 1 | -1, cornersEnd: boolean): SurfaceEnd {
  const count = profile.elements.length;
  const start = startIndex(profile, owner, sense);
  for (let index = start; ; index += sense) {
    const { element, turns } = elementOf(profile, index);
    const [from, to] = [element.from + turns * fullTurn, element.to + turns * fullTurn];
    const blunt = cornersEnd && isCorner(element) && to - from > sharpest;
    if (blunt && index === start) return placeOn(profile, index, Math.min(Math.max(0, from), to));
    if (blunt) return placeOn(profile, index, sense > 0 ? from : to);
    const another = elementOf(profile, index + sense).element.owner !== owner;
    const allRound = Math.abs(index + sense - start) === count;
    if (another || allRound) return placeOn(profile, index, sense > 0 ? to : from);
  }
}

/** Drawn on a flat or a joint, the element on its own side; there a drawing turned by rounding still stands. */
function startIndex(profile: Profile, owner: number, sense: 1 | -1): number {
  const index = indexAt(profile, sense * level);
  return elementOf(profile, index).element.owner === owner ? index : indexAt(profile, level);
}

/** A lean below this, radians, is rounding: a nanometre over a metre. */
const level = 1e-9;

const placeOn = (profile: Profile, index: number, lean: number): SurfaceEnd => ({
  lean,
  length: lengthOn(profile, index, lean),
});

interface Candidate {
  readonly away: number;
  readonly end: SurfaceEnd;
}

/**
 * The place on this body's share of the hull that is nearest to a point, counted from the contact at θ = 0. Where it is
 * a corner, that is reached at the lean nearest to the other end's.
 */
function placeNearest(profile: Profile, owner: number, point: Point, sense: 1 | -1): SurfaceEnd {
  const candidates = candidatesFor(profile, owner, point, sense);
  const least = Math.min(...candidates.map(({ away }) => away));
  return candidates
    .filter(({ away }) => away < least + nearer)
    .map(({ end }) => nearStart(profile, end))
    .reduce((a, b) => (sense * b.lean < sense * a.lean ? b : a));
}

function candidatesFor(profile: Profile, owner: number, point: Point, sense: 1 | -1): Candidate[] {
  const candidates: Candidate[] = [];
  profile.elements.forEach((element, index) => {
    if (element.owner !== owner) return;
    const lean = leanTowards(element, point, sense);
    const away = distance(contactOn(element, lean), point);
    candidates.push({ away, end: placeOn(profile, index, lean) }, ...onFlat(profile, index, point));
  });
  return candidates;
}

/** How far a point lies from this body's share of the hull, metres; infinite where it has none. */
export const awayFromHull = (profile: Profile, owner: number, point: Point): number =>
  Math.min(...candidatesFor(profile, owner, point, 1).map(({ away }) => away));

/** The lean, within the element's, at which the contact is nearest to a point. */
function leanTowards(element: HullElement, point: Point, sense: 1 | -1): number {
  const { from, to } = element;
  if (isCorner(element)) return sense > 0 ? from : to;
  // Nearest where the way to the point is square to the surface, that is along d(θ).
  const off = (lean: number): number => ahead(minus(point, contactOn(element, lean)), lean);
  const feet = [from, ...signChanges(off, from, to, steps), to];
  const away = (lean: number): number => distance(contactOn(element, lean), point);
  return feet.reduce((best, lean) => (away(lean) < away(best) ? lean : best));
}

/** An arc or a curve has one foot of a point near it, rarely two. */
const steps = 8;

/** The place nearest to a point on the flat after an element, if there is one of the same body. */
function onFlat(profile: Profile, index: number, point: Point): Candidate[] {
  const flat = profile.flatAfter[index]!;
  const element = profile.elements[index]!;
  const next = elementOf(profile, index + 1).element;
  if (flat === 0 || next.owner !== element.owner) return [];
  const [from, to] = [contactOn(element, element.to), contactOn(next, next.from)];
  const along = times(minus(to, from), 1 / flat);
  const into = Math.min(Math.max(dot(minus(point, from), along), 0), flat);
  const { lean, length } = placeOn(profile, index, element.to);
  return [{ away: distance(plus(from, times(along, into)), point), end: { lean, length: length + into } }];
}

/** The same place counted within half a turn of the contact at θ = 0. */
function nearStart(profile: Profile, end: SurfaceEnd): SurfaceEnd {
  const round = perimeter(profile);
  const turns = Math.round((end.length - lengthAt(profile, 0)) / round);
  return { lean: end.lean - turns * fullTurn, length: end.length - turns * round };
}
