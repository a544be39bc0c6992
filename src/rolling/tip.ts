/**
 * How far, with what energy and with what steady push a body at rest goes over: past the crest, the nearest maximum
 * of H on that side.
 *
 *     energy   m g (H_crest - H_rest)
 *     push     the largest value of m g H' / Y_b between rest and crest, Y_b the height of the pushed point b
 *
 * On one element, with D = G - c and E = b - c, the derivative of H'/Y_b vanishes where
 * H'' Y_b - H' Y_b' = -R D·s - D·E = 0, s = (sin θ, cos θ), that is d cos ψ = D·E / R: closed form; on a corner nowhere; on a curve it is sought.
 */
import type { MassProperties } from '../mass.js';
import { withinTurn } from '../geometry/lean.js';
import { indexAt } from '../geometry/profile.js';
import { maximum } from '../numeric/maximum.js';
import { missing, type OrMissing } from '../numeric/missing.js';
import type { Balance } from './balance.js';
import { g } from './gravity.js';
import { heightOn, riseBetween, slopeOn, stretchAt, type Landscape, type Stretch } from './landscape.js';
import type { Rest } from './rest.js';

export type Sense = 'back' | 'forward';

export interface Tip {
  /** Lean of the crest, radians. */
  readonly crest: number;
  /** From rest to crest, radians, positive. */
  readonly angle: number;
  /** Joule. */
  readonly energy: number;
}

/** The crest is sought to a quarter turn from rest. */
const farthest = Math.PI / 2;

export function tipOver(
  landscape: Landscape,
  balances: readonly Balance[],
  { mass }: MassProperties,
  rest: Rest,
  sense: Sense,
): OrMissing<Tip> {
  const sign = sense === 'back' ? 1 : -1;
  let angle = Infinity;
  for (const balance of balances) {
    if (balance.kind !== 'crest') continue;
    const away = sign * (withinTurn(balance.lean, rest.lean - Math.PI) - rest.lean);
    if (away > 0) angle = Math.min(angle, away);
  }
  if (angle > farthest) return missing('no point of no return within 90° of rest');
  const crest = rest.lean + sign * angle;
  return { crest, angle, energy: mass * g * riseBetween(landscape, rest.lean, crest) };
}

/**
 * The steady level push that tips it, newton: towards -x to go over back, +x to go over forward.
 * @param pushed the pushed point b on the same profile (`landscapeOf`)
 */
export function tippingPush(
  landscape: Landscape,
  { mass }: MassProperties,
  rest: Rest,
  tip: Tip,
  pushed: Landscape,
): OrMissing<number> {
  const { profile } = landscape;
  const sign = Math.sign(tip.crest - rest.lean);
  const [from, to] = [Math.min(rest.lean, tip.crest), Math.max(rest.lean, tip.crest)];
  let largest = 0;
  for (let index = indexAt(profile, from), past = from; past < to; index++) {
    const own = stretchAt(landscape, index);
    const end = Math.min(own.to, to);
    const lever = largestLever(own, stretchAt(pushed, index), past, end, sign);
    if (lever === null) return missing('the pushed point reaches the floor before the point of no return');
    largest = Math.max(largest, mass * g * lever);
    past = end;
  }
  return largest;
}

/** The largest of ±H'/Y_b on part of one stretch; null where Y_b is not positive. */
function largestLever(own: Stretch, pushed: Stretch, from: number, to: number, sign: number): number | null {
  if (!(heightOn(pushed, from) > 0 && heightOn(pushed, to) > 0)) return null;
  const lever = (lean: number): number => (sign * slopeOn(own, lean)) / heightOn(pushed, lean);
  if (own.kind === 'curve' || pushed.kind === 'curve') return maximum(lever, from, to, samples);
  // Leans of the arc come round again after a turn.
  const low = withinTurn(pushed.low, from);
  if (low < to && heightOn(pushed, low) <= 0) return null;
  let largest = Math.max(lever(from), lever(to));
  const turn = Math.acos((pushed.arm * Math.cos(pushed.low - own.low)) / own.radius);
  const [before, after] = [withinTurn(own.low - turn, from), withinTurn(own.low + turn, from)];
  if (before < to) largest = Math.max(largest, lever(before));
  if (after < to) largest = Math.max(largest, lever(after));
  return largest;
}

/** Enough to find the one hill that a curve of at most 90° has. */
const samples = 4;
