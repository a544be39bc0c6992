/**
 * Rockers unlike on both sides, a small mismatch w apart: besides leaning, the chair goes sideways. Left and right are
 * the sitter's; the plane half-way between rolls on the mean profile (`geometry/mean-profile.ts`).
 *
 *     tilt                            (S₁ - S₂)/w          > 0: the left side higher, down to the right
 *     turn of the line of contacts    ∫ (ρ₁ - ρ₂) dθ / w   > 0: to the left, counter-clockwise seen from above
 *     turn of the chair               ∫ (S₁ - S₂) dθ / w   = turn of the line - [S₁' - S₂']/w
 *
 * (1 left, 2 right.) ∫ρ dθ is the length run, (R₁ - R₂) Δθ between arcs: leaning back, the line through both contacts
 * turns towards the side that runs farther, and all the way back again on the way forward.
 *
 * Without slip the chair turns about that line, which lies on the floor: it has no turning of its own about the plumb
 * line, and heads elsewhere only because it leans about an axis that is tilted. So a chair whose rockers are level at
 * θ = 0 hardly turns however unequal the radii are: (R₁ - R₂)(θ - sin θ)/w. First order in the tilt.
 */
import { lengthAt, supportAt, supportSlopeAt, type Profile } from '../geometry/profile.js';

export interface Rockers {
  readonly left: Profile;
  readonly right: Profile;
  /** w, centre line to centre line, metres */
  readonly spacing: number;
}

/** Radians, positive with the left side higher. */
export const tiltAt = ({ left, right, spacing }: Rockers, lean: number): number =>
  (supportAt(left, lean) - supportAt(right, lean)) / spacing;

/** Turn of the line through both contacts while it leans from one lean to another, radians, positive to the left. */
export const turnOfContacts = ({ left, right, spacing }: Rockers, from: number, to: number): number =>
  (lengthAt(left, to) - lengthAt(left, from) - (lengthAt(right, to) - lengthAt(right, from))) / spacing;

/** Turn of the chair itself, radians, positive to the left. */
export function turnOfChair(rockers: Rockers, from: number, to: number): number {
  const { left, right, spacing } = rockers;
  const apart = (lean: number): number => supportSlopeAt(left, lean) - supportSlopeAt(right, lean);
  return turnOfContacts(rockers, from, to) - (apart(to) - apart(from)) / spacing;
}
