/**
 * How the sitter sits in the chair as drawn. Trunk and thighs lie along back and seat and turn with them; upper arms
 * and shanks hang plumb and feet are level however the chair is drawn.
 */
import { minus, plus, times, unitAt, type Point } from '../geometry/point.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import { bodyLengths, type BodyLengths } from './body-lengths.js';
import type { Joint } from './segment-table.js';
import { segmentsOf, type Segment } from './segments.js';
import type { SitterSize } from './sitter-size.js';
import { above, aheadOf, directionOf, meetingOf, whyNobodySits, type SupportLines } from './support-lines.js';

/** In the chair's frame as drawn. */
export type Joints = Readonly<Record<Joint, Point>>;

export interface SeatedPose {
  readonly joints: Joints;
  readonly lengths: BodyLengths;
  /** Of the whole body, feet up; what rides with the feet on the floor is for `riding` to say. */
  readonly segments: readonly Segment[];
}

/** How much of the trunk's lean the head takes: assumption of this project, eyes kept near the level. */
const headLean = 0.3;

const forward: Point = { x: 1, y: 0 };
const up: Point = { x: 0, y: 1 };

export function seatedPose(
  { body, stature, mass }: Pick<SitterSize, 'body' | 'stature' | 'mass'>,
  lines: SupportLines,
): OrMissing<SeatedPose> {
  const wrong = whyNobodySits(lines);
  if (wrong !== null) return missing(wrong);
  const lengths = bodyLengths(stature);
  const hip = meetingOf(above(lines.seat, lengths.hipOverSeat), aheadOf(lines.back, lengths.hipAheadOfBack));
  if (isMissing(hip)) return hip;
  const joints = { hip, ...upperJoints(hip, lines, lengths), ...lowerJoints(hip, lines, lengths) };
  return { joints, lengths, segments: segmentsOf(joints, body, mass) };
}

function upperJoints(hip: Point, { back, arms }: SupportLines, lengths: BodyLengths) {
  const alongTrunk = directionOf(back.foot, back.top);
  const alongArms = arms ? directionOf(arms.rear, arms.front) : forward;
  const lean = Math.atan2(-alongTrunk.x, alongTrunk.y);
  const shoulder = plus(hip, times(alongTrunk, lengths.trunk));
  const neck = plus(shoulder, times(alongTrunk, lengths.shoulderToHead));
  const vertex = plus(neck, times(unitAt(Math.PI / 2 + headLean * lean), lengths.head));
  const elbow = minus(shoulder, times(up, lengths.upperArm));
  const wrist = plus(elbow, times(alongArms, lengths.forearm));
  const fingertip = plus(wrist, times(alongArms, lengths.hand));
  return { shoulder, neck, vertex, elbow, wrist, fingertip };
}

function lowerJoints(hip: Point, { seat }: SupportLines, lengths: BodyLengths) {
  const knee = plus(hip, times(directionOf(seat.rear, seat.front), lengths.thigh));
  const ankle = minus(knee, times(up, lengths.shank));
  const heel = minus(ankle, times(forward, lengths.heelBehindAnkle));
  const toe = plus(heel, times(forward, lengths.foot));
  return { knee, ankle, heel, toe };
}
