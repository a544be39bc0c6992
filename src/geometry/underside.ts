/** How high the running surface of a body stands over the floor as drawn, plumb under a place. */
import { contactAt, type Profile } from './profile.js';
import type { RunningSurface } from './running-surface.js';

/** To 1e-7 rad: what that leaves out of an arc is of second order, 1e-14 of its radius. */
const halvings = 24;

/**
 * In the body's frame. The contact moves back as the body leans back; where it stands at (x_C, y_C), the edge slopes by -θ:
 *
 *     y = y_C - (x - x_C) tan θ
 *
 * on a flat, and to second order on an arc. Beyond the ends of the surface: of the nearer end.
 */
export function undersideAt(
  { profile, surface }: { readonly profile: Profile; readonly surface: RunningSurface },
  x: number,
): number {
  let [ahead, behind] = [surface.nose.lean, surface.tail.lean];
  const within = Math.min(Math.max(x, contactAt(profile, behind).x), contactAt(profile, ahead).x);
  for (let i = 0; i < halvings; i++) {
    const middle = (ahead + behind) / 2;
    if (contactAt(profile, middle).x > within) ahead = middle;
    else behind = middle;
  }
  const contact = contactAt(profile, behind);
  return contact.y - (within - contact.x) * Math.tan(behind);
}
