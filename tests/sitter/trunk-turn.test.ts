import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance, plus } from '../../src/geometry/point.js';
import type { MassProperties } from '../../src/mass.js';
import { riding } from '../../src/sitter/riding.js';
import { massTurnedForward, trunkGroup, trunkTurned } from '../../src/sitter/trunk-turn.js';
import { angles, chairs, degrees, people, poseIn, uprightChair } from './people-seated.js';

const withChild = { feet: 'floor', child: { mass: 9 } } as const;

/** Same mass, centre and inertia, to the rounding of sums of eight. */
function expectSame(a: MassProperties, b: MassProperties) {
  expect(a.mass / b.mass).toBeCloseTo(1, 12);
  expect(distance(a.centre, b.centre)).toBeLessThan(1e-12);
  expect(a.inertia / b.inertia).toBeCloseTo(1, 9);
}

describe('the trunk turned about the hip', () => {
  it('goes forward for a positive angle', () => {
    const pose = poseIn({ body: 'male', stature: 1, mass: 1 }, uprightChair);
    const { joints } = trunkTurned(pose, degrees(15));
    // By hand: trunk 0.288 long, plumb before.
    expect(joints.shoulder.x).toBeCloseTo(0.072 + 0.288 * Math.sin(degrees(15)), 12);
    expect(joints.shoulder.y).toBeCloseTo(0.05 + 0.288 * Math.cos(degrees(15)), 12);
  });

  it('stands plumb when turned by the back’s lean', () => {
    fc.assert(
      fc.property(people, chairs, (person, chair) => {
        const { joints, segments } = trunkTurned(poseIn(person, chair), chair.backLean);
        expect(joints.shoulder.x).toBeCloseTo(joints.hip.x, 12);
        expect(segments.find(({ name }) => name === 'trunk')!.centre.x).toBeCloseTo(joints.hip.x, 12);
      }),
    );
  });

  it('is one body: joints and centres keep their distances, legs stay', () => {
    fc.assert(
      fc.property(people, chairs, angles, (person, chair, angle) => {
        const before = poseIn(person, chair);
        const after = trunkTurned(before, angle);
        const placed = ({ joints, segments }: typeof before) => [
          ...[joints.hip, joints.shoulder, joints.neck, joints.vertex],
          ...[joints.elbow, joints.wrist, joints.fingertip],
          ...segments.filter(({ group }) => group === 'trunk').map(({ centre }) => centre),
        ];
        const [then, now] = [placed(before), placed(after)];
        then.forEach((place, i) => {
          then.slice(i + 1).forEach((other, j) => {
            expect(distance(now[i]!, now[i + 1 + j]!)).toBeCloseTo(distance(place, other), 12);
          });
        });
        for (const joint of ['hip', 'knee', 'ankle', 'heel', 'toe'] as const)
          expect(after.joints[joint]).toEqual(before.joints[joint]);
        const legs = (pose: typeof before) => pose.segments.filter(({ group }) => group !== 'trunk');
        expect(legs(after)).toEqual(legs(before));
      }),
    );
  });

  it('combined once and turned is the same as turned and combined, child and all', () => {
    fc.assert(
      fc.property(people, chairs, angles, (person, chair, angle) => {
        const pose = poseIn(person, chair);
        const once = massTurnedForward(trunkGroup(riding(pose, withChild)), pose.joints.hip, angle);
        expectSame(once, trunkGroup(riding(trunkTurned(pose, angle), withChild)));
      }),
    );
  });

  it('turned there and back is where it was', () => {
    fc.assert(
      fc.property(people, chairs, angles, (person, chair, angle) => {
        const pose = poseIn(person, chair);
        const back = trunkTurned(trunkTurned(pose, angle), -angle);
        expectSame(trunkGroup(back.segments), trunkGroup(pose.segments));
        expect(distance(back.joints.fingertip, pose.joints.fingertip)).toBeLessThan(1e-12);
      }),
    );
  });

  // de Leva 1996, men: 0.4346 + 0.0694 + 2 (0.0271 + 0.0162 + 0.0061) of the body, by hand.
  it('weighs trunk, head, arms and hands', () => {
    const pose = poseIn({ body: 'male', stature: 1.75, mass: 100 }, uprightChair);
    expect(trunkGroup(riding(pose, { feet: 'up', child: null })).mass).toBeCloseTo(60.28, 9);
    expect(trunkGroup(riding(pose, withChild)).mass).toBeCloseTo(69.28, 9);
  });

  it('turns any mass about any place', () => {
    const body = { mass: 2, centre: { x: 1, y: 2 }, inertia: 3 };
    // A quarter turn forward: what is above goes ahead.
    const { centre, ...rest } = massTurnedForward(body, { x: 1, y: 1 }, Math.PI / 2);
    expect(distance(centre, plus({ x: 1, y: 1 }, { x: 1, y: 0 }))).toBeLessThan(1e-15);
    expect(rest).toEqual({ mass: 2, inertia: 3 });
  });
});
