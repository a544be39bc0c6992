/** Places in a row told apart: those on one circle, those on one line, and others. */
import { fittedCircle, type FittedCircle } from '../../../geometry/fitted-circle.js';
import { cross, distance, minus, type Point } from '../../../geometry/point.js';
import { lengthAlong } from '../../../geometry/way-along.js';
import { fewestFacets } from './facets.js';
import { slackOverRoughness } from './roughness.js';

/** The places from the first to the last lie on one circle, or in one line. */
export interface Round {
  readonly first: number;
  readonly last: number;
  /** null: a line. */
  readonly circle: FittedCircle | null;
}

/** What a smoothed radius may be off what is drawn. */
export const radiusWithin = 1e-3;
/** Of a curvature less than this, 1/m, nothing is told by its share: nobody rocks on a radius of 3 m. */
export const leastCurvature = 0.3;

/** A place of the next circle may by chance lie on this one too: so many at the end are tried without. */
const mostDropped = 3;

/**
 * From the first place on, each as long as it goes.
 * @param slack what a place may be off, metres
 */
export function roundsOf(places: readonly Point[], slack: number): Round[] {
  const found: Round[] = [];
  let [free, first] = [0, 0];
  while (first + fewestFacets < places.length) {
    const { round, tried } = roundFrom(places, first, slack);
    if (round === null) first += Math.max(1, Math.floor(skipped * (tried - first)));
    else {
      found.push(begunBefore(places, round, free, slack));
      free = first = round.last;
    }
  }
  return found;
}

/** Places that look like a circle for so long and are none: a circle that begins among them is found by a later one. */
const skipped = 1 / 4;

/** The same from the first place on that lies on it too. */
function begunBefore(places: readonly Point[], round: Round, free: number, slack: number): Round {
  const { last, circle } = round;
  if (circle === null) return round;
  let [earlier, best] = [free - 1, round];
  while (best.first - earlier > 1) {
    const first = (earlier + best.first) >> 1;
    const longer = toldOn(places, first, last, slack);
    if (longer !== null) best = { first, last, circle: longer };
    else earlier = first;
  }
  return best;
}

/** The round that begins at a place, or null and up to where it might have gone. */
function roundFrom(
  places: readonly Point[],
  first: number,
  slack: number,
): { readonly round: Round | null; readonly tried: number } {
  const straight = straightOn(places, first, slack);
  const last = longest(
    places,
    first,
    (until) => straight(until) || roundOn(places, first, until, slack) !== null,
  );
  if (last === null) return { round: null, tried: first };
  if (straight(last))
    return {
      round: isLong(distance(places[first]!, places[last]!), slack) ? { first, last, circle: null } : null,
      tried: last,
    };
  for (let until = last; until >= Math.max(last - mostDropped, first + fewestFacets); until--) {
    const circle = toldOn(places, first, until, slack);
    if (circle !== null) return { round: { first, last: until, circle }, tried: last };
  }
  return { round: null, tried: last };
}

/** The last place up to which all is well, by strides twice as long each and then halved; null: not even the fewest. */
function longest(places: readonly Point[], first: number, isWell: (until: number) => boolean): number | null {
  const end = places.length - 1;
  let well = first + fewestFacets;
  if (well > end || !isWell(well)) return null;
  let stride = fewestFacets;
  while (well < end && isWell(Math.min(well + stride, end))) {
    well = Math.min(well + stride, end);
    stride *= 2;
  }
  let beyond = Math.min(well + stride, end + 1);
  while (beyond - well > 1) {
    const middle = (well + beyond) >> 1;
    if (isWell(middle)) well = middle;
    else beyond = middle;
  }
  return well;
}

function roundOn(places: readonly Point[], first: number, last: number, slack: number): FittedCircle | null {
  const circle = fittedCircle(places.slice(first, last + 1));
  return circle !== null && circle.off <= slack ? circle : null;
}

/**
 * Of n places rough by σ along a length c the curvature is known to σ √(720/n)/c² (R. L. Gluckstern 1963, Nuclear Instruments
 * and Methods 24, 381-389, for many places; from memory): three times that. A change can be small by chance, where so few are
 * tried so often.
 */
const curvatureRoughness = 3 * Math.sqrt(720);

function toldOn(places: readonly Point[], first: number, last: number, slack: number): FittedCircle | null {
  const circle = roundOn(places, first, last, slack);
  if (circle === null) return null;
  const share = circle.radius * curvatureUnsure(places.slice(first, last + 1), slack, 2 * circle.radius);
  const change = Math.max(circle.change, share);
  return change <= radiusWithin ? { ...circle, change } : null;
}

/** What the curvature of places in a row may be off at the least, 1/m. @param most length that tells it, metres */
export function curvatureUnsure(places: readonly Point[], slack: number, most = Infinity): number {
  const roughness = slack / slackOverRoughness;
  const length = Math.min(lengthAlong(places), most);
  return (curvatureRoughness * roughness) / (Math.sqrt(places.length) * length ** 2);
}

/** So long a line is told from an arc of the largest radius that counts, which would rise over it by twice the slack. */
const isLong = (length: number, slack: number): boolean => (length ** 2 * leastCurvature) / 8 >= 2 * slack;

const straightOn =
  (places: readonly Point[], first: number, slack: number) =>
  (last: number): boolean => {
    const way = minus(places[last]!, places[first]!);
    const length = Math.hypot(way.x, way.y);
    if (length === 0) return false;
    for (let i = first + 1; i < last; i++)
      if (Math.abs(cross(way, minus(places[i]!, places[first]!))) > slack * length) return false;
    return true;
  };

/** Whether going from place to place on it one turns left. */
export function turnsLeft(places: readonly Point[], { first, circle }: Round): boolean {
  const [a, b] = [places[first]!, places[first + 1]!];
  return circle !== null && cross(minus(b, a), minus(circle.centre, a)) > 0;
}

/**
 * Where two circles that touch go over into each other: the place on the line through their centres that is nearest to the
 * line between the last place of the one and the first of the other; null where they do not touch there.
 */
export function touchOf(
  a: FittedCircle,
  b: FittedCircle,
  from: Point,
  to: Point,
  slack: number,
): Point | null {
  const apart = distance(a.centre, b.centre);
  const inside = Math.abs(a.radius - b.radius);
  const sameSide = Math.abs(apart - inside) <= touchSlack * slack;
  const otherSide = Math.abs(apart - a.radius - b.radius) <= touchSlack * slack;
  if (!sameSide && !otherSide) return null;
  const sign = otherSide || a.radius > b.radius ? 1 : -1;
  const out = minus(b.centre, a.centre);
  const place = {
    x: a.centre.x + (sign * a.radius * out.x) / apart,
    y: a.centre.y + (sign * a.radius * out.y) / apart,
  };
  return distance(place, from) + distance(place, to) <= distance(from, to) * aroundLine ? place : null;
}

/** Two circles known to so much each may miss each other by a few times that. */
const touchSlack = 8;
/** A place on an arc over a line is a little longer round. */
const aroundLine = 1.05;
