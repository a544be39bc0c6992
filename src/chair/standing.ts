/** How a chair stands: which parts are its rockers, and where the legs of the upper chair stand on them. */
import { gapBetween, silhouetteOf, type Silhouette } from '../geometry/gap.js';
import { withinTurn } from '../geometry/lean.js';
import { pointOn, type Outline } from '../geometry/piece.js';
import { plus, times, type Point } from '../geometry/point.js';
import { undersideAt } from '../geometry/underside.js';
import type { Chair } from './chair.js';

export interface Joints {
  readonly front: Point;
  readonly back: Point;
}

/** Where a part of the upper chair stands. */
export interface Foot {
  readonly place: Point;
  /** Its lowest corners, each with how far it may come down, metres: then it is through the rockers. */
  readonly corners: readonly { readonly corner: Point; readonly mayDrop: number }[];
}

export interface Standing {
  /** Indices of the parts it rolls on: what is drawn as low as they are belongs to them. */
  readonly rockers: ReadonlySet<number>;
  /** Of the parts that stand on the rockers; of an upper chair of which none does, those of its lowest. */
  readonly feet: readonly Foot[];
  /** Where the foremost and the rearmost leg stand; null: they are not two pairs. */
  readonly joints: Joints | null;
}

/** What is drawn no more than this over the floor is drawn on it, metres. */
const onFloor = 0.001;
/** Nearer than this to what the chair rolls on, metres, a part stands on it (a shop’s fit, and a drawing’s). */
const fit = 0.005;
/** Legs nearer together than this, level, are one pair, metres. */
const onePair = 0.1;

export function standingOf(chair: Chair): Standing {
  const { parts, surface, sides } = chair;
  const owners = sides ? [sides.left.surface.owner, sides.right.surface.owner] : [surface.owner];
  const silhouettes = parts.map(({ outline }) => silhouetteOf(outline));
  const floor = Math.min(...silhouettes.map(({ box }) => box.foot));
  const low = silhouettes.flatMap(({ box }, i) => (box.foot < floor + onFloor ? [i] : []));
  const rockers = new Set([...owners, ...low]);
  const upper = silhouettes.flatMap((_, i) => (rockers.has(i) ? [] : [i]));
  const footAt = (i: number): Foot => footOf(parts[i]!.outline, chair);
  const feet = upper
    .filter((i) => [...rockers].some((rocker) => isOn(silhouettes[i]!, silhouettes[rocker]!)))
    .map(footAt);
  if (feet.length > 0) return { rockers, feet, joints: jointsAmong(feet) };
  const lowest = upper.sort((a, b) => silhouettes[a]!.box.foot - silhouettes[b]!.box.foot);
  return { rockers, feet: lowest.slice(0, 1).map(footAt), joints: null };
}

function jointsAmong(feet: readonly Foot[]): Joints | null {
  const places = feet.map(({ place }) => place);
  const front = places.reduce((a, b) => (b.x > a.x ? b : a));
  const back = places.reduce((a, b) => (b.x < a.x ? b : a));
  return front.x - back.x > onePair ? { front, back } : null;
}

const isOn = (part: Silhouette, rocker: Silhouette): boolean => gapBetween(part, rocker, fit) < fit;

/** At the lowest of the ends of its pieces; of several as low, but for a cut that is not square, the middle. */
function footOf(outline: Outline, chair: Chair): Foot {
  const corners = outline.flatMap(({ boundary }) => boundary.map((piece) => pointOn(piece, 0)));
  const least = Math.min(...corners.map(({ y }) => y));
  const lowest = corners.filter(({ y }) => y < least + fit);
  return {
    place: times(lowest.reduce(plus), 1 / lowest.length),
    corners: lowest.map((corner) => ({
      corner,
      mayDrop: Math.max(0, corner.y - undersideAt(chair, corner.x)),
    })),
  };
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
