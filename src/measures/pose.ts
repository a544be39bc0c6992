/** How the chair stands at rest: its lean, seat and back, and where it touches the floor. */
import { slopeOf } from '../chair/chair.js';
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

/** Along the running surface from its tail end to the contact. */
export const touchFromTail = ofRest(({ rest }, { chair }) => chair.surface.tail.length - rest.contactLength);
