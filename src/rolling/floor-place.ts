/**
 * Where a point of a body that rolls without slip is on the floor. Rolling from θ = 0 on, the contact is at
 * X_C = -(length run along the profile), a flat by its length at once, and a point q at
 *
 *     X_q = X_C + H_q',   Y_q = H_q
 *
 * X is counted from the profile's own zero of length (`lengthAt`): only differences mean something.
 */
import { ahead, upward } from '../geometry/lean.js';
import { minus, type Point } from '../geometry/point.js';
import { contactAt, lengthAt, supportAt, supportSlopeAt, type Profile } from '../geometry/profile.js';

export function floorPlace(profile: Profile, q: Point, lean: number): Point {
  const over = minus(q, contactAt(profile, lean));
  return { x: ahead(over, lean) - lengthAt(profile, lean), y: upward(over, lean) };
}

/**
 * X of the rearmost point of a body, which rolls on a profile and reaches as far as a hull: the frame's origin, at S'(θ)
 * from the contact, less the hull's reach towards -X, which is its support with that direction down: S(θ + π/2).
 */
export function rearmost(profile: Profile, lean: number, hull: Profile = profile): number {
  return supportSlopeAt(profile, lean) - lengthAt(profile, lean) - supportAt(hull, lean + Math.PI / 2);
}
