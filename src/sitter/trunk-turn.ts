/** Trunk, head, arms and a child in them turned about the hip as one body: the hard lean. */
import { minus, type Point } from '../geometry/point.js';
import { combineMasses, type MassProperties } from '../mass.js';
import type { Joint } from './segment-table.js';
import type { SeatedPose } from './seated-pose.js';
import type { Segment } from './segments.js';

const turning: readonly Joint[] = ['shoulder', 'neck', 'vertex', 'elbow', 'wrist', 'fingertip'];

/** The pose with the trunk turned, angle positive forward: from up towards +x. */
export function trunkTurned({ joints, lengths, segments }: SeatedPose, angle: number): SeatedPose {
  const { hip } = joints;
  const turned = turning.map((joint) => [joint, turnedForward(joints[joint], hip, angle)]);
  return {
    lengths,
    joints: { ...joints, ...(Object.fromEntries(turned) as Partial<Record<Joint, Point>>) },
    segments: segments.map((segment) =>
      segment.group === 'trunk' ? massTurnedForward(segment, hip, angle) : segment,
    ),
  };
}

/** All that turns with the trunk as one body: combined once, then turned by any angle with `massTurnedForward`. */
export const trunkGroup = (riders: readonly Segment[]): MassProperties =>
  combineMasses(riders.filter(({ group }) => group === 'trunk'));

/** The same mass and inertia, its centre turned about a place. */
export const massTurnedForward = <M extends MassProperties>(body: M, about: Point, angle: number): M => ({
  ...body,
  centre: turnedForward(body.centre, about, angle),
});

/** x' = x cos φ + y sin φ, y' = y cos φ - x sin φ, from the place it turns about. */
function turnedForward(point: Point, about: Point, angle: number): Point {
  const { x, y } = minus(point, about);
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: about.x + x * cos + y * sin, y: about.y + y * cos - x * sin };
}
