/** What of the sitter rides on the chair. */
import { distance, plus, times } from '../geometry/point.js';
import type { SeatedPose } from './seated-pose.js';
import type { Segment } from './segments.js';
import type { Source } from './source.js';
import { directionOf, rightOf } from './support-lines.js';

export interface Riding {
  /** On the floor shanks and feet rest on it, not on the chair. */
  readonly feet: 'floor' | 'up';
  /** In arms; null: none. */
  readonly child: { readonly mass: number } | null;
}

export function riding(pose: SeatedPose, { feet, child }: Riding): readonly Segment[] {
  const own = pose.segments.filter(({ group }) => feet === 'up' || group === 'trunk' || group === 'thigh');
  return child ? [...own, childInArms(pose, child.mass)] : own;
}

export const childInArmsSource: Source = {
  publication: 'a point mass before the chest: where, no publication says',
  mark: 'assumption of this project',
};

/** Up the trunk from the hip, as a fraction of its length; ahead of the trunk line, metres. */
const childUp = 0.6;
const childAhead = 0.15;

/** Turns with the trunk. */
function childInArms({ joints: { hip, shoulder } }: SeatedPose, mass: number): Segment {
  if (!(mass > 0 && mass < Infinity)) throw new RangeError(`childInArms: mass ${mass} kg`);
  const alongTrunk = directionOf(hip, shoulder);
  const onTrunk = plus(hip, times(alongTrunk, childUp * distance(hip, shoulder)));
  const centre = plus(onTrunk, times(rightOf(alongTrunk), childAhead));
  return { name: 'child', number: 1, group: 'trunk', mass, centre, inertia: 0 };
}
