/** How a chair stands: which parts are its rockers, and where the legs of the upper chair stand on them. */
import { gapBetween, silhouetteOf, type Silhouette } from '../geometry/gap.js';
import { withinTurn } from '../geometry/lean.js';
import { pointOn, type Outline } from '../geometry/piece.js';
import { plus, times, type Point } from '../geometry/point.js';
import type { Chair } from './chair.js';

export interface Joints {
  readonly front: Point;
  readonly back: Point;
}

export interface Standing {
  /** Indices of the parts it rolls on: what is drawn as low as they are belongs to them. */
  readonly rockers: ReadonlySet<number>;
  /** Where the foremost and the rearmost leg stand; null: they are not two pairs. */
  readonly joints: Joints | null;
}

/** What is drawn no more than this over the floor is drawn on it, metres. */
const onFloor = 0.001;
/** Nearer than this to what the chair rolls on, metres, a part stands on it (a shop’s fit, and a drawing’s). */
const fit = 0.005;
/** Legs nearer together than this, level, are one pair, metres. */
const onePair = 0.1;

export function standingOf({ parts, surface, sides }: Chair): Standing {
  const owners = sides ? [sides.left.surface.owner, sides.right.surface.owner] : [surface.owner];
  const silhouettes = parts.map(({ outline }) => silhouetteOf(outline));
  const floor = Math.min(...silhouettes.map(({ box }) => box.foot));
  const low = silhouettes.flatMap(({ box }, i) => (box.foot < floor + onFloor ? [i] : []));
  const rockers = new Set([...owners, ...low]);
  return { rockers, joints: jointsOn(silhouettes, rockers, parts) };
}

function jointsOn(
  silhouettes: readonly Silhouette[],
  rockers: ReadonlySet<number>,
  parts: Chair['parts'],
): Joints | null {
  const feet = parts
    .filter(
      (_, i) => !rockers.has(i) && [...rockers].some((rocker) => isOn(silhouettes[i]!, silhouettes[rocker]!)),
    )
    .map(({ outline }) => lowestOf(outline));
  if (feet.length === 0) return null;
  const front = feet.reduce((a, b) => (b.x > a.x ? b : a));
  const back = feet.reduce((a, b) => (b.x < a.x ? b : a));
  return front.x - back.x > onePair ? { front, back } : null;
}

const isOn = (part: Silhouette, rocker: Silhouette): boolean => gapBetween(part, rocker, fit) < fit;

/** Of the ends of its pieces; of several as low, but for a cut that is not square, the middle. */
function lowestOf(outline: Outline): Point {
  const corners = outline.flatMap(({ boundary }) => boundary.map((piece) => pointOn(piece, 0)));
  const least = Math.min(...corners.map(({ y }) => y));
  const lowest = corners.filter(({ y }) => y < least + fit);
  return times(lowest.reduce(plus), 1 / lowest.length);
}

/** The part of the upper chair that touches the floor where the rockers should, between one end of them and the other; null: none. */
export function partThrough({ profile }: Chair, { rockers }: Standing): number | null {
  const below = profile.elements
    .map(({ from, to, owner }) => ({ owner, lean: withinTurn((from + to) / 2, -Math.PI) }))
    .filter(({ lean }) => Math.abs(lean) <= Math.PI / 2)
    .sort((a, b) => a.lean - b.lean)
    .map(({ owner }) => owner);
  const first = below.findIndex((owner) => rockers.has(owner));
  const last = below.findLastIndex((owner) => rockers.has(owner));
  if (first < 0) return below[0] ?? null;
  return below.slice(first, last).find((owner) => !rockers.has(owner)) ?? null;
}
