/**
 * Leans at which a rolling body balances: rests, where H' changes sign from - to + with growing θ, and crests,
 * where it changes back. A rest lies on a stretch (G plumb below the centre of the arc), at a joint of two
 * stretches or on a flat; a corner is never a rest (there H'' = -H < 0).
 */
import { fullTurn, withinTurn } from '../geometry/lean.js';
import { signChanges } from '../numeric/root.js';
import {
  hangOn,
  shapeOn,
  slopeOn,
  type CurveStretch,
  type Landscape,
  type RoundStretch,
  type Shape,
  type Stretch,
} from './landscape.js';

export interface Balance {
  readonly kind: 'rest' | 'crest';
  readonly lean: number;
  readonly place: 'stretch' | 'joint' | 'flat';
  /** The stretch it lies on, or the one before the joint or flat. */
  readonly index: number;
}

/**
 * A balance nearer than this to a joint, radians, is at the joint: a maker who puts the joint plumb under G gets it
 * there but for rounding, and a nanometre of runner is beyond any shop.
 */
export const atJoint = 1e-9;

/** The nearest crest behind and ahead of a lean; none: infinitely far. */
export function crestsBeside(landscape: Landscape, lean: number): [back: number, forward: number] {
  const away = balancesOf(landscape)
    .filter(({ kind }) => kind === 'crest')
    .map((crest) => withinTurn(crest.lean, lean) - lean);
  return [lean + Math.min(...away), lean - Math.min(...away.map((angle) => fullTurn - angle))];
}

/** How near to its ends; on a sliver of a stretch less, so that each balance lies at one end, inside or at the other. */
const edgeOf = ({ from, to }: Stretch): number => Math.min(atJoint, (to - from) / 4);

/** All balances of one turn, in order of lean. */
export function balancesOf({ stretches }: Landscape): Balance[] {
  const found: Balance[] = [];
  let before = stretches.at(-1)!;
  let signBefore = signOf(before, shapeOn(before, before.to), -1);
  for (let index = 0; index < stretches.length; index++) {
    const stretch = stretches[index]!;
    const [first, last] = [shapeOn(stretch, stretch.from), shapeOn(stretch, stretch.to)];
    const between = balanceBetween(signBefore, signOf(stretch, first, 1), before, index - 1, stretch.from);
    if (between !== null) found.push(between);
    if (stretch.kind === 'round') addOnArc(found, stretch, index);
    else if (!keepsSign(first, last)) addOnCurve(found, stretch, index);
    signBefore = signOf(stretch, last, -1);
    before = stretch;
  }
  return found;
}

function addOnArc(found: Balance[], stretch: RoundStretch, index: number): void {
  const { from, to, arm, low } = stretch;
  const edge = edgeOf(stretch);
  if (arm === 0) return;
  for (const turn of [-Math.PI, 0, Math.PI]) {
    const lean = low + turn;
    if (lean > from + edge && lean < to - edge)
      found.push({ kind: turn === 0 ? 'rest' : 'crest', lean, place: 'stretch', index });
  }
}

function addOnCurve(found: Balance[], stretch: CurveStretch, index: number): void {
  const edge = edgeOf(stretch);
  const slope = (lean: number): number => slopeOn(stretch, lean);
  for (const lean of signChanges(slope, stretch.from + edge, stretch.to - edge, curveSteps))
    found.push({ kind: hangOn(stretch, lean) > 0 ? 'rest' : 'crest', lean, place: 'stretch', index });
}

/** H' of one sign at both ends and growing all the way (its slope ρ - H is positive at both) has no zero between. */
const keepsSign = (first: Shape, last: Shape): boolean =>
  first.slope * last.slope > 0 && first.radius > first.height && last.radius > last.height;

/** A curve's curvature only grows or only falls, so H'' = ρ - H changes sign once or twice and H' seldom more often. */
const curveSteps = 8;

function balanceBetween(
  left: number,
  right: number,
  before: Stretch,
  index: number,
  lean: number,
): Balance | null {
  if (left < 0 && right > 0)
    return { kind: 'rest', lean, place: before.flatAfter > 0 ? 'flat' : 'joint', index };
  if (left > 0 && right < 0) return { kind: 'crest', lean, place: 'joint', index };
  return null;
}

/** Sign of H' just beside an end of a stretch: where H' is nothing but rounding there, that of H'' decides. */
function signOf(stretch: Stretch, { height, slope, radius }: Shape, side: 1 | -1): number {
  const hang = radius - height;
  const size = stretch.kind === 'round' ? stretch.arm : Math.abs(hang);
  if (Math.abs(slope) > edgeOf(stretch) * size) return Math.sign(slope);
  return side * Math.sign(hang);
}
