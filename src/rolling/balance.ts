/**
 * Leans at which a rolling body balances: rests, where H' changes sign from - to + with growing θ, and crests,
 * where it changes back. A rest lies on a stretch (G plumb below the centre of the arc), at a joint of two
 * stretches or on a flat; a corner is never a rest (there H'' = -H < 0).
 */
import { signChanges } from '../numeric/root.js';
import { hangOn, slopeOn, type Landscape, type Stretch } from './landscape.js';

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

/** All balances of one turn, in order of lean. */
export function balancesOf({ stretches }: Landscape): Balance[] {
  const found: Balance[] = [];
  let before = stretches.at(-1)!;
  let signBefore = signAt(before, before.to, -1);
  for (let index = 0; index < stretches.length; index++) {
    const stretch = stretches[index]!;
    const between = balanceBetween(
      signBefore,
      signAt(stretch, stretch.from, 1),
      before,
      index - 1,
      stretch.from,
    );
    if (between !== null) found.push(between);
    addInside(found, stretch, index);
    signBefore = signAt(stretch, stretch.to, -1);
    before = stretch;
  }
  return found;
}

function addInside(found: Balance[], stretch: Stretch, index: number): void {
  const [from, to] = [stretch.from + atJoint, stretch.to - atJoint];
  if (stretch.kind === 'curve') {
    if (keepsSign(stretch)) return;
    for (const lean of signChanges((each) => slopeOn(stretch, each), from, to, curveSteps))
      found.push({ kind: hangOn(stretch, lean) > 0 ? 'rest' : 'crest', lean, place: 'stretch', index });
    return;
  }
  if (stretch.arm === 0) return;
  for (const turn of [-Math.PI, 0, Math.PI]) {
    const lean = stretch.low + turn;
    if (lean > from && lean < to)
      found.push({ kind: turn === 0 ? 'rest' : 'crest', lean, place: 'stretch', index });
  }
}

/** H' of one sign at both ends and growing all the way (its slope ρ - H is positive at both) has no zero between. */
function keepsSign(stretch: Stretch): boolean {
  const { from, to } = stretch;
  if (slopeOn(stretch, from) * slopeOn(stretch, to) <= 0) return false;
  return hangOn(stretch, from) > 0 && hangOn(stretch, to) > 0;
}

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
function signAt(stretch: Stretch, lean: number, side: 1 | -1): number {
  const slope = slopeOn(stretch, lean);
  const hang = hangOn(stretch, lean);
  const size = stretch.kind === 'round' ? stretch.arm : Math.abs(hang);
  if (Math.abs(slope) > atJoint * size) return Math.sign(slope);
  return side * Math.sign(hang);
}
