/** How the chair stands at rest: its lean, seat and back, and where it touches the floor. */
import { slopeOf } from '../chair/chair.js';
import type { Side } from '../geometry/mean-surface.js';
import { lengthAt } from '../geometry/profile.js';
import { ofGiven, ofRest } from './record.js';

/** Lean from the pose as drawn. */
export const restAngle = ofRest(({ rest }) => rest.lean);

/** Seat line over the level, front higher positive: leaning back by θ lifts its front by θ. */
export const seatSlope = ofGiven('seat', (seat, { rest }) => slopeOf(seat.rear, seat.front) + rest.lean);

/** Back line off plumb, leaning back positive. */
export const backAngle = ofGiven(
  'back',
  (back, { rest }) => slopeOf(back.foot, back.top) - Math.PI / 2 + rest.lean,
);

/** x of the contact in the chair's frame; on a flat the point plumb under G. */
export const contactAtRest = ofRest(({ rest }) => rest.contact.x);

/**
 * Along the running surface from its tail end to the contact, as a tape reads it; where the sides are unlike, the mean of
 * both rockers, each from its own end to its own contact (the mean of what both have run is what the mean profile has).
 */
export const touchFromTail = ofRest(({ rest: { contactLength } }, { chair: { profile, surface, sides } }) => {
  const toEnds = (sides ? [sides.left, sides.right] : [{ profile, surface }]).map(fromDrawn);
  const run = contactLength - lengthAt(profile, 0);
  return toEnds.reduce((sum, length) => sum + length, 0) / toEnds.length - run;
});

/** From the contact as drawn to the tail end. */
const fromDrawn = ({ profile, surface: { tail } }: Side): number => tail.length - lengthAt(profile, 0);
