/** How the chair fits its sitter at rest: knees, thighs, forearms and feet. */
import type { Chair } from '../chair/chair.js';
import { distance, dot, minus } from '../geometry/point.js';
import type { Person } from '../loads/people.js';
import { isMissing, missingBeside, type OrMissing } from '../numeric/missing.js';
import { floorPlace } from '../rolling/floor-place.js';
import type { Rest } from '../rolling/rest.js';
import { directionOf, leftOf, meetingOf } from '../sitter/support-lines.js';
import { ofGiven, type Measure } from './record.js';

/** Front edge of the seat over the floor as settled. */
export const seatFrontHeight = ofGiven(
  'seat',
  (seat, { rest }, { chair }) => floorPlace(chair.profile, seat.front, rest.lean).y,
);

/** Of a shoe, metres (common practice, no source). */
export const shoe = 0.025;

type Line = 'seat' | 'arms';

interface Sitting<Needed extends Line> {
  readonly line: NonNullable<Chair[Needed]>;
  readonly person: Person;
  readonly chair: Chair;
  readonly rest: Rest;
  /** How far the chair is let back from it, radians. */
  readonly swing: number;
}

const ofPerson = <Needed extends Line>(
  needed: Needed,
  read: (sitting: Sitting<Needed>) => OrMissing<number>,
): Measure =>
  ofGiven(needed, (line, { rest }, { chair, load: { person, swing } }) =>
    person ? read({ line, person, chair, rest, swing }) : missingBeside('nobody sits in it'),
  );

/** Knee hollow in a shoe over the front edge as settled: positive when the edge is below it. */
export const kneeHollowGap = ofPerson(
  'seat',
  ({ line: seat, person: { size }, chair: { profile }, rest }) =>
    size.kneeHollow + shoe - floorPlace(profile, seat.front, rest.lean).y,
);

/** Buttock to knee hollow over the seat's depth along its line, from where it meets the back line to its front. */
export const seatDepthGap = ofPerson('seat', ({ line: seat, person: { size }, chair: { back } }) => {
  if (!back) return missingBeside('the design has no back line');
  const meeting = meetingOf(seat, back);
  if (isMissing(meeting)) return meeting;
  return size.buttockToKneeHollow - dot(minus(seat.front, meeting), directionOf(seat.rear, seat.front));
});

/** The arms line, plumb over the hip as drawn, square to the seat line over it, over the elbow above the seat. */
export const armHeightGap = ofPerson('arms', ({ line: arms, person: { size, pose }, chair: { seat } }) => {
  if (!seat) return missingBeside('the design has no seat line');
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
export const footReach = ofPerson('seat', ({ person, chair: { profile }, rest, swing }) => {
  const { joints, lengths } = person.pose;
  const { thigh, shank, ankleHeight } = lengths;
  const ankle = { x: floorPlace(profile, joints.knee, rest.lean).x, y: ankleHeight };
  const hip = floorPlace(profile, joints.hip, rest.lean + swing);
  return distance(hip, ankle) / (thigh + shank);
});
