/** Changes of radius that are undone again soon after: high spots and low spots of a runner. */
import type { Run } from './surface-runs.js';

/** An arc of a running surface, or a slice of a curve: where it lies along it, metres from its nose end. */
export interface SurfaceArc {
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  /**
   * By what share of what lies at most 50 mm before and behind it the radius differs here, to the same side of both:
   * positive is flatter. 0: it does not.
   */
  readonly jump: number;
}

/** A change of radius that is undone farther off than this is the shape of the runner, not a bump (the contract's figure). */
const feltWithin = 0.05;

/**
 * For every arc k with arcs i before and j after it, i's end and j's beginning at most 50 mm apart, and both radii
 * on the same side of k's: the smaller of |R_k - R_i|/R_i and |R_k - R_j|/R_j. Flats and corners have measures of
 * their own; a bump is a change among the arcs.
 */
export function arcsWithJumps(runs: readonly Run[]): SurfaceArc[] {
  let place = 0;
  const arcs = runs
    .map(({ radius, length, flatAfter }) => {
      const from = place;
      const to = from + length;
      place = to + flatAfter;
      return { radius, from, to, jump: 0 };
    })
    .filter(({ radius }) => radius > 0);
  for (let i = 0; i + 2 < arcs.length; i++) {
    // Of all arcs between two, the flattest and the tightest stand out most.
    let [tightest, flattest] = [i + 1, i + 1];
    for (let j = i + 2; j < arcs.length && arcs[j]!.from - arcs[i]!.to <= feltWithin; j++) {
      if (arcs[j - 1]!.radius < arcs[tightest]!.radius) tightest = j - 1;
      if (arcs[j - 1]!.radius > arcs[flattest]!.radius) flattest = j - 1;
      for (const k of [tightest, flattest]) {
        const jump = undone(arcs[i]!.radius, arcs[k]!.radius, arcs[j]!.radius);
        if (Math.abs(jump) > Math.abs(arcs[k]!.jump)) arcs[k]!.jump = jump;
      }
    }
  }
  return arcs;
}

function undone(before: number, here: number, after: number): number {
  const [rise, fall] = [(here - before) / before, (here - after) / after];
  if (rise * fall <= 0) return 0;
  return Math.abs(rise) < Math.abs(fall) ? rise : fall;
}
