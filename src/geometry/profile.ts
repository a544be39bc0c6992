/**
 * What of a body touches a flat floor: its convex hull as a function of lean.
 *
 *     S(θ) = max p·d(θ)     height of the frame's origin over the floor
 *     p(θ)                  contact point
 *     ρ(θ) = S + S''        radius of curvature there: of the arc; 0 on a corner; a spike on a flat, at one θ
 *
 * A look-up is a binary search among the elements: O(log n).
 */
import { convexHull, hullMaker } from './convex-hull.js';
import { contactOn, lengthTo, radiusOn, supportOn, type HullElement } from './hull-element.js';
import { ahead, fullTurn } from './lean.js';
import { keptWhileSame } from '../kept.js';
import type { Loop } from './piece.js';
import { distance, type Point } from './point.js';

export interface Profile {
  /** In order of lean; the last ends one turn after the first begins. */
  readonly elements: readonly HullElement[];
  /** Where each element begins, for the search. */
  readonly starts: Float64Array;
  /** Length of the flat between each element and the next, metres; 0 where they meet. */
  readonly flatAfter: Float64Array;
  /** Length along the hull, in the sense of growing lean, from the first element's beginning to each one's. */
  readonly lengthBefore: Float64Array;
}

/** A flat shorter than a nanometre is a rounding of two contacts that are one. */
const shortestFlat = 1e-9;

export const profileOf = (bodies: readonly (readonly Loop[])[]): Profile => profileFrom(convexHull(bodies));

/** Profile after profile of bodies that are mostly the same, like `hullMaker`; of the same bodies the same profile. */
export function profileMaker(): typeof profileOf {
  const hullOf = hullMaker();
  const kept = keptWhileSame<Profile>();
  return (bodies) => kept(bodies, () => profileFrom(hullOf(bodies)));
}

/** @param elements in order of lean, each beginning where the one before ends, over one turn */
export function profileFrom(elements: readonly HullElement[]): Profile {
  const count = elements.length;
  const flatAfter = new Float64Array(count);
  const lengthBefore = new Float64Array(count);
  elements.forEach((element, i) => {
    const next = elements[(i + 1) % count]!;
    const gap = distance(contactOn(element, element.to), contactOn(next, next.from));
    flatAfter[i] = gap < shortestFlat ? 0 : gap;
    const length = lengthTo(element, element.to) + flatAfter[i];
    if (i + 1 < count) lengthBefore[i + 1] = lengthBefore[i]! + length;
  });
  return { elements, starts: Float64Array.from(elements, ({ from }) => from), flatAfter, lengthBefore };
}

/**
 * Which element carries the body leaned by θ; at a joint the one after it (larger lean). Counted on past whole turns:
 * one turn further is `elements.length` more.
 */
export function indexAt({ starts }: Profile, lean: number): number {
  const turns = Math.floor((lean - starts[0]!) / fullTurn);
  const wanted = lean - turns * fullTurn;
  let low = 0;
  let high = starts.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (starts[middle]! <= wanted) low = middle;
    else high = middle;
  }
  return low + turns * starts.length;
}

/** The element of an index counted on past whole turns, with how many turns that is. Its leans are not counted on. */
export function elementOf({ elements }: Profile, index: number): { element: HullElement; turns: number } {
  const turns = Math.floor(index / elements.length);
  return { element: elements[index - turns * elements.length]!, turns };
}

/** Length of the flat after the element of an index counted on past whole turns, metres; 0: none. */
export function flatAfterOf({ elements, flatAfter }: Profile, index: number): number {
  const turns = Math.floor(index / elements.length);
  return flatAfter[index - turns * elements.length]!;
}

/** Whether the contact passes a flat between two leans, the first the smaller. */
export function hasFlatBetween(profile: Profile, from: number, to: number): boolean {
  for (let index = indexAt(profile, from); index < indexAt(profile, to); index++)
    if (flatAfterOf(profile, index) > 0) return true;
  return false;
}

/** What the contact passes between two leans, the first the smaller. */
export function elementsBetween(profile: Profile, from: number, to: number): HullElement[] {
  const first = indexAt(profile, from);
  return Array.from(
    { length: indexAt(profile, to) - first + 1 },
    (_, i) => elementOf(profile, first + i).element,
  );
}

export const elementAt = (profile: Profile, lean: number): HullElement =>
  elementOf(profile, indexAt(profile, lean)).element;

/** S(θ), metres. */
export const supportAt = (profile: Profile, lean: number): number =>
  supportOn(elementAt(profile, lean), lean);

/** S'(θ), metres a radian; at a flat its value on the side of larger lean. */
export const supportSlopeAt = (profile: Profile, lean: number): number =>
  -ahead(contactAt(profile, lean), lean);

/** p(θ) in the body's frame; at a flat its end on the side of larger lean. */
export const contactAt = (profile: Profile, lean: number): Point => contactOn(elementAt(profile, lean), lean);

/** ρ(θ), metres; 0 on a corner. */
export const radiusAt = (profile: Profile, lean: number): number => radiusOn(elementAt(profile, lean), lean);

/** Length along the hull to the contact at θ, metres, from the first element's beginning; it grows with lean. */
export const lengthAt = (profile: Profile, lean: number): number =>
  lengthOn(profile, indexAt(profile, lean), lean);

/** The same with the element named by its index, counted on past whole turns like the lean. */
export function lengthOn(profile: Profile, index: number, lean: number): number {
  const { element, turns } = elementOf(profile, index);
  const into = lengthTo(element, lean - turns * fullTurn);
  return profile.lengthBefore[index - turns * profile.elements.length]! + into + turns * perimeter(profile);
}

/** Length of the whole hull, metres. */
export function perimeter({ elements, flatAfter, lengthBefore }: Profile): number {
  const last = elements.length - 1;
  const element = elements[last]!;
  return lengthBefore[last]! + lengthTo(element, element.to) + flatAfter[last]!;
}
