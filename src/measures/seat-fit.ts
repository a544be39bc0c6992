/** How the chair fits its sitter at rest: knees, thighs, forearms and feet. */
import type { Chair } from '../chair/chair.js';
import { distance, dot, minus } from '../geometry/point.js';
import type { Person } from '../loads/people.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import { floorPlace } from '../rolling/floor-place.js';
import type { RestRecord } from '../rolling/roll-at-rest.js';
import { bodyLengths } from '../sitter/body-lengths.js';
import { directionOf, leftOf, meetingOf } from '../sitter/support-lines.js';
import { ofRest, type Measure } from './record.js';

/** Front edge of the seat over the floor as settled. */
export const seatFrontHeight = ofRest(({ rest }, { chair }) =>
  chair.seat ? floorPlace(chair.profile, chair.seat.front, rest.lean).y : missing(noSeat),
);

const noSeat = 'the design has no seat line';

/** Of a shoe, metres (common practice, no source). */
const shoe = 0.025;

type Sitting = (person: Person, chair: Chair, atRest: RestRecord, swing: number) => OrMissing<number>;

const ofPerson = (read: Sitting): Measure =>
  ofRest((atRest, { chair, load }) =>
    load.person ? read(load.person, chair, atRest, load.swing) : missing('nobody sits in it'),
  );

/** Knee hollow in a shoe over the front edge as settled: positive when the edge is below it. */
export const kneeHollowGap = ofPerson(({ size }, { seat, profile }, { rest }) =>
  seat ? size.kneeHollow + shoe - floorPlace(profile, seat.front, rest.lean).y : missing(noSeat),
);

/** Buttock to knee hollow over the seat's depth along its line, from where it meets the back line to its front. */
export const seatDepthGap = ofPerson(({ size }, { seat, back }) => {
  if (!seat || !back) return missing('the design has no seat line or no back line');
  const meeting = meetingOf(seat, back);
  if (isMissing(meeting)) return meeting;
  return size.buttockToKneeHollow - dot(minus(seat.front, meeting), directionOf(seat.rear, seat.front));
});

/** The arms line, plumb over the hip as drawn, square to the seat line over it, over the elbow above the seat. */
export const armHeightGap = ofPerson(({ size, pose }, { seat, arms }) => {
  if (!seat || !arms) return missing('the design has no arms line');
  const along = minus(arms.front, arms.rear);
  const share = (pose.joints.hip.x - arms.rear.x) / along.x;
  const overHip = { x: pose.joints.hip.x, y: arms.rear.y + share * along.y };
  const square = leftOf(directionOf(seat.rear, seat.front));
  return dot(minus(overHip, seat.rear), square) - size.elbowAboveSeat;
});

/**
 * Hip to ankle over thigh and shank with the chair let back by its swing, the ankle where it stood: plumb under the
 * knee at rest. Over 1 the foot no longer reaches the floor there.
 */
export const footReach = ofPerson(({ size, pose: { joints } }, { profile }, { rest }, swing) => {
  const { thigh, shank, ankleHeight } = bodyLengths(size.stature);
  const ankle = { x: floorPlace(profile, joints.knee, rest.lean).x, y: ankleHeight };
  const hip = floorPlace(profile, joints.hip, rest.lean + swing);
  return distance(hip, ankle) / (thigh + shank);
});
