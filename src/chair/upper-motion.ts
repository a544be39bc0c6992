/**
 * How the upper chair, which is everything but what the chair rolls on, moves as one body when it is altered:
 *
 *     both-legs               up
 *     front-legs, back-legs   turned about the joint of the other legs by change / (level distance of the joints)
 *     upper-chair             turned about the centre of curvature of the rockers where they touch, by change / radius
 *
 * one after the other. What front and back legs are changed by alike only moves it up, as both legs do.
 */
import type { DesignInSI } from '../design/design.js';
import { plus, type Point } from '../geometry/point.js';
import { contactAt, radiusAt, type Profile } from '../geometry/profile.js';
import {
  atRest,
  followedBy,
  movedPoint,
  shifted,
  turnedAbout,
  type RigidMotion,
} from '../geometry/rigid-motion.js';
import type { Joints, Standing } from './standing.js';

export type Alterations = DesignInSI['alterations'];

/** The circle along which the upper chair is slid. */
export interface Slideway {
  readonly centre: Point;
  readonly radius: number;
}

export function slidewayOf(profile: Profile): Slideway {
  const radius = radiusAt(profile, 0);
  return { centre: plus(contactAt(profile, 0), { x: 0, y: radius }), radius };
}

export interface LegChanges {
  readonly up: number;
  readonly front: number;
  readonly back: number;
}

/** Of front and back legs what is left of each beside what they have in common. */
export function legChanges(alterations: Alterations): LegChanges {
  const [front, back] = [alterations['front-legs'], alterations['back-legs']];
  const least = Math.min(Math.abs(front), Math.abs(back));
  const alike = front * back > 0 ? Math.sign(front) * least : 0;
  return { up: alterations['both-legs'] + alike, front: front - alike, back: back - alike };
}

/** Level, metres. */
export const apart = ({ front, back }: Joints): number => front.x - back.x;

/** Of the legs alone. */
export function motionOfLegs(alterations: Alterations, { joints }: Pick<Standing, 'joints'>): RigidMotion {
  const { up, front, back } = legChanges(alterations);
  let motion = up === 0 ? atRest : shifted({ x: 0, y: up });
  if (front === 0 && back === 0) return motion;
  if (joints === null) throw new RangeError('motionOfLegs: a chair without two pairs of legs');
  if (front !== 0)
    motion = followedBy(motion, turnedAbout(movedPoint(joints.back, motion), front / apart(joints)));
  if (back !== 0)
    motion = followedBy(motion, turnedAbout(movedPoint(joints.front, motion), -back / apart(joints)));
  return motion;
}

/** @param profile of the rockers as they are altered */
export function upperMotion(alterations: Alterations, standing: Standing, profile: Profile): RigidMotion {
  const motion = motionOfLegs(alterations, standing);
  const along = alterations['upper-chair'];
  if (along === 0) return motion;
  const { centre, radius } = slidewayOf(profile);
  return followedBy(motion, turnedAbout(centre, along / radius));
}
