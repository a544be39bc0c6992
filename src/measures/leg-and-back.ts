/** How legs and back lie in the chair: the knee's angle through a rock, and how high the back reaches. */
import type { Chair } from '../chair/chair.js';
import { distance, dot, minus } from '../geometry/point.js';
import type { Person } from '../loads/people.js';
import { floorPlace } from '../rolling/floor-place.js';
import { bodyLengths } from '../sitter/body-lengths.js';
import { directionOf } from '../sitter/support-lines.js';

/**
 * The angle between thigh and shank with the ankle where it stood at rest, plumb under the knee, radians; π: straight,
 * or out of reach.
 *
 *     d² = thigh² + shank² - 2 thigh shank cos κ,      d from hip to ankle
 */
export function kneeAngle(
  { profile }: Chair,
  { pose: { joints }, size }: Person,
  rest: number,
  lean: number,
): number {
  const { thigh, shank, ankleHeight } = bodyLengths(size.stature);
  const ankle = { x: floorPlace(profile, joints.knee, rest).x, y: ankleHeight };
  const apart = distance(floorPlace(profile, joints.hip, lean), ankle);
  const cosine = (thigh * thigh + shank * shank - apart * apart) / (2 * thigh * shank);
  return Math.acos(Math.min(Math.max(cosine, -1), 1));
}

/** Top of the back line over the shoulder joint, along the back line, metres; null without a back line. */
export function backOverShoulder({ back }: Chair, { pose: { joints } }: Person): number | null {
  return back && dot(minus(back.top, joints.shoulder), directionOf(back.foot, back.top));
}
