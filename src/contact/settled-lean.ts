/** Where a free body comes to a standstill. */
import type { Course } from '../rolling/scripted-place.js';
import { facetOn } from './faceted-hull.js';
import { rollFreely } from './free-roll.js';

export interface Settling {
  /** About where it will settle, radians. */
  readonly lean: number;
  /** I + m H² there, kg m². */
  readonly arm: number;
  /** About how fast it swings so wide, radians a second. */
  readonly frequency: number;
  /** H there, and how far G hangs below the centre of curvature, metres; null: it stands on a flat. */
  readonly height: number;
  readonly hang: number | null;
  /** Let go so far beside, radians. */
  readonly beside: number;
}

/** Half of what is critical, for a rest that is much flatter to one side than to the other: it must not creep there. */
const damped = 0.5;
/** In 1/ω: e^(-ωt/2), a three-thousandth is left. */
const settlingTime = 16;
/** The facets go on for so far beyond, radians. */
const margin = Math.PI / 180;
/** Of the facets, the ordinary and the finest. */
const share = { ordinary: 0.01, finest: 0.002 };
/** What it may settle beside the rest of the smooth runner, radians: less than an ordinary chair does. */
const fine = (0.015 * Math.PI) / 180;

/**
 * Radians. It stands still on a facet φ anywhere where G is over it: its lean is that of the smooth runner’s rest but
 * for half a facet, and as far again as G, hanging d below the centre of curvature, turns while its foot crosses half a
 * facet’s length R φ:
 *
 *     (1 + R / d) φ / 2        R = H + d
 */
export function settledLean(course: Course, settling: Settling, step: number): number {
  const { lean, arm, frequency, height, hang, beside } = settling;
  const off =
    hang === null
      ? 0
      : ((1 + (height + hang) / hang) / 2) * facetOn(height + hang, { share: share.ordinary, step });
  const facets = {
    from: lean - margin,
    to: lean + margin + beside,
    share: Math.max(share.finest, share.ordinary * Math.min(1, fine / off)),
    step,
  };
  const floor = { facets, friction: Infinity, damping: 2 * damped * arm * frequency };
  const until = settlingTime / frequency;
  return rollFreely({ ...course, until }, { lean: lean + beside, rate: 0 }, floor).passed.at(-1)!.lean;
}
