/**
 * Where the rockers crush fingers: behind the place where the chair touches, the gap over the floor opens slowly,
 *
 *     x² / (2 R)      at a distance x on an arc of radius R, while x is small against R
 *
 * and closes as it rocks back.
 */
import { ahead, upward } from '../geometry/lean.js';
import { minus } from '../geometry/point.js';
import { contactAt } from '../geometry/profile.js';
import type { Chair } from '../chair/chair.js';
import { rootBetween } from '../numeric/root.js';

/** Moving parts that come to between these crush and shear, metres (published: EN 581-1, read second-hand). */
export const fingerGaps = { least: 0.007, most: 0.018 } as const;

/** Level distances behind the contact at a lean where the gap is a finger's, metres; null: the tails end before. */
export function pinchWedge(
  { profile, surface: { tail } }: Chair,
  lean: number,
): { from: number; to: number } | null {
  const over = (at: number) => minus(contactAt(profile, at), contactAt(profile, lean));
  const gap = (at: number): number => upward(over(at), lean);
  const behind = (at: number): number => -ahead(over(at), lean);
  if (!(tail.lean > lean) || gap(tail.lean) <= fingerGaps.least) return null;
  const reached = (size: number): number =>
    gap(tail.lean) <= size ? tail.lean : rootBetween((at) => gap(at) - size, lean, tail.lean);
  return { from: behind(reached(fingerGaps.least)), to: behind(reached(fingerGaps.most)) };
}
