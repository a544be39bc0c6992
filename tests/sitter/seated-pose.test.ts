import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross, distance, minus, plus, times, unitAt, type Point } from '../../src/geometry/point.js';
import { combineMasses } from '../../src/mass.js';
import { seatedPose, type Joints } from '../../src/sitter/seated-pose.js';
import { angles, chairs, degrees, linesOf, people, poseIn, uprightChair } from './people-seated.js';
import { ansur2012 } from './published/ansur2012.js';

const unitMan = { body: 'male', stature: 1, mass: 1 } as const;

const expectAt = (point: Point, x: number, y: number) => {
  expect(point.x).toBeCloseTo(x, 12);
  expect(point.y).toBeCloseTo(y, 12);
};

const turned = ({ x, y }: Point, angle: number): Point =>
  plus(times(unitAt(angle), x), times(unitAt(angle + Math.PI / 2), y));

describe('a man of stature 1 on a level seat, back plumb', () => {
  const { joints, segments } = poseIn(unitMan, uprightChair);

  // Drillis and Contini 1966, fractions added up by hand.
  it.each<[keyof Joints, number, number]>([
    ['hip', 0.072, 0.05],
    ['shoulder', 0.072, 0.338],
    ['neck', 0.072, 0.38],
    ['vertex', 0.072, 0.52],
    ['elbow', 0.072, 0.152],
    ['wrist', 0.218, 0.152],
    ['fingertip', 0.326, 0.152],
    ['knee', 0.317, 0.05],
    ['ankle', 0.317, -0.196],
    ['heel', 0.279, -0.196],
    ['toe', 0.431, -0.196],
  ])('has the %s at (%f, %f)', (joint, x, y) => {
    expectAt(joints[joint], x, y);
  });

  // de Leva 1996, men: mass of one, centre and radius along the segment; worked out by hand.
  it.each([
    ['trunk', 1, 0.4346, 0.072, 0.338 - 0.431 * 0.288, 0.358 * 0.288],
    ['head', 1, 0.0694, 0.072, 0.52 - 0.5002 * 0.14, 0.315 * 0.14],
    ['upper arms', 2, 0.0271, 0.072, 0.338 - 0.5772 * 0.186, 0.269 * 0.186],
    ['forearms', 2, 0.0162, 0.072 + 0.4574 * 0.146, 0.152, 0.265 * 0.146],
    ['hands', 2, 0.0061, 0.218 + 0.79 * 0.108, 0.152, 0.513 * 0.108],
    ['thighs', 2, 0.1416, 0.072 + 0.4095 * 0.245, 0.05, 0.329 * 0.245],
    ['shanks', 2, 0.0433, 0.317, 0.05 - 0.4395 * 0.246, 0.246 * 0.246],
    ['feet', 2, 0.0137, 0.279 + 0.4415 * 0.152, -0.196, 0.245 * 0.152],
  ] as const)('has %s where the table puts them', (name, number, mass, x, y, gyration) => {
    const segment = segments.find((one) => one.name === name)!;
    expect(segment.number).toBe(number);
    expect(segment.mass).toBeCloseTo(number * mass, 12);
    expectAt(segment.centre, x, y);
    expect(segment.inertia).toBeCloseTo(number * mass * gyration ** 2, 12);
  });

  it('has all its segments', () => {
    expect(segments.map(({ group }) => group).join(' ')).toBe(
      'trunk trunk trunk trunk trunk thigh shank foot',
    );
  });
});

describe('seated people of the survey', () => {
  // ANSUR II 2012, means over mean stature: measured on living people, not used to place these joints.
  it.each(['female', 'male'] as const)('have joints where %s bodies have them', (body) => {
    const { joints } = poseIn({ ...unitMan, body }, uprightChair);
    const ratio = (name: keyof (typeof ansur2012)['male']) =>
      ansur2012[body][name].mean / ansur2012[body].stature.mean;
    // 15 mm of 1.7 m, 0.009: people differ from one another by more (sd 0.013 to 0.02).
    const close = 0.009;
    expect(Math.abs(joints.vertex.y - ratio('sittingHeight'))).toBeLessThan(close);
    // The shoulder joint lies a little below the tip of the shoulder.
    expect(Math.abs(joints.shoulder.y - ratio('shoulderHeightSitting'))).toBeLessThan(close);
    // The knee joint lies between its hollow and its front; the elbow joint above the point it rests on.
    expect(joints.knee.x).toBeGreaterThan(ratio('buttockToKneeHollow'));
    expect(joints.knee.x).toBeLessThan(ratio('buttockToKnee'));
    expect(joints.elbow.y).toBeGreaterThan(ratio('elbowAboveSeat'));
    expect(joints.elbow.y - ratio('elbowAboveSeat')).toBeLessThan(0.02);
  });
});

describe('the pose in any chair', () => {
  it('is that of the lines', () => {
    fc.assert(
      fc.property(people, chairs, (person, chair) => {
        const { joints } = poseIn(person, chair);
        const { stature } = person;
        const { hip, shoulder, neck, vertex, elbow, wrist, fingertip, knee, ankle, heel, toe } = joints;
        const fromCorner = minus(hip, chair.corner);
        expect(cross(unitAt(chair.seatSlope), fromCorner)).toBeCloseTo(0.05 * stature, 12);
        expect(cross(unitAt(Math.PI / 2 + chair.backLean), fromCorner)).toBeCloseTo(-0.072 * stature, 12);
        const lies = (from: Point, to: Point, angle: number, fraction: number) => {
          const end = plus(from, times(unitAt(angle), fraction * stature));
          expectAt(to, end.x, end.y);
        };
        const plumb = Math.PI / 2;
        lies(hip, shoulder, plumb + chair.backLean, 0.288);
        lies(shoulder, neck, plumb + chair.backLean, 0.042);
        lies(neck, vertex, plumb + 0.3 * chair.backLean, 0.14);
        lies(shoulder, elbow, -plumb, 0.186);
        lies(elbow, wrist, chair.armSlope ?? 0, 0.146);
        lies(wrist, fingertip, chair.armSlope ?? 0, 0.108);
        lies(hip, knee, chair.seatSlope, 0.245);
        lies(knee, ankle, -plumb, 0.246);
        lies(heel, ankle, 0, 0.038);
        lies(heel, toe, 0, 0.152);
      }),
    );
  });

  it('scales with stature about where seat and back meet; inertia with its square', () => {
    fc.assert(
      fc.property(people, chairs, fc.double({ min: 0.5, max: 2, noNaN: true }), (person, chair, k) => {
        const pose = poseIn(person, chair);
        const scaled = poseIn({ ...person, stature: k * person.stature }, chair);
        for (const joint of Object.keys(pose.joints) as (keyof Joints)[]) {
          const { x, y } = plus(chair.corner, times(minus(pose.joints[joint], chair.corner), k));
          expectAt(scaled.joints[joint], x, y);
        }
        const [one, other] = [combineMasses(pose.segments), combineMasses(scaled.segments)];
        expect(one.inertia).toBeGreaterThan(0);
        expect(other.inertia / (k * k * one.inertia)).toBeCloseTo(1, 9);
        expect(other.mass).toBeCloseTo(person.mass, 9);
      }),
    );
  });

  it('turns with seat and back, but for what hangs plumb or stays level', () => {
    fc.assert(
      fc.property(people, chairs, angles, (person, chair, angle) => {
        const turnedChair = {
          ...chair,
          corner: turned(chair.corner, angle),
          seatSlope: chair.seatSlope + angle,
          backLean: chair.backLean + angle,
        };
        // Short of where seat or back line would stand the wrong way round.
        fc.pre(Math.abs(turnedChair.seatSlope) < 1.2 && Math.abs(turnedChair.backLean) < 1.2);
        const before = poseIn(person, chair);
        const after = poseIn(person, turnedChair);
        for (const joint of ['hip', 'shoulder', 'neck', 'knee'] as const) {
          const { x, y } = turned(before.joints[joint], angle);
          expectAt(after.joints[joint], x, y);
        }
        // Upper arms, shanks and feet keep their direction; forearms and hands follow the arms line or the level;
        // the head takes 0.3 of the turn.
        const along = (joints: Joints, from: keyof Joints, to: keyof Joints) =>
          minus(joints[to], joints[from]);
        for (const [from, to] of [
          ['shoulder', 'elbow'],
          ['elbow', 'wrist'],
          ['wrist', 'fingertip'],
          ['knee', 'ankle'],
          ['heel', 'toe'],
        ] as const) {
          const { x, y } = along(before.joints, from, to);
          expectAt(along(after.joints, from, to), x, y);
        }
        const { x, y } = turned(along(before.joints, 'neck', 'vertex'), 0.3 * angle);
        expectAt(along(after.joints, 'neck', 'vertex'), x, y);
        // Segments that turn keep their inertia.
        for (const name of ['trunk', 'thighs']) {
          const inertia = (pose: typeof before) => pose.segments.find((one) => one.name === name)!.inertia;
          expect(inertia(after) / inertia(before)).toBeCloseTo(1, 12);
        }
      }),
    );
  });

  it('moves with the chair', () => {
    fc.assert(
      fc.property(people, chairs, angles, angles, (person, chair, x, y) => {
        const moved = poseIn(person, { ...chair, corner: plus(chair.corner, { x, y }) });
        const { joints } = poseIn(person, chair);
        for (const joint of Object.keys(joints) as (keyof Joints)[])
          expect(distance(moved.joints[joint], plus(joints[joint], { x, y }))).toBeLessThan(1e-12);
      }),
    );
  });

  it.each([0, -1, Number.NaN, Infinity])('refuses stature or mass %f', (wrong) => {
    expect(() => seatedPose({ ...unitMan, stature: wrong }, linesOf(uprightChair))).toThrow(/stature/);
    expect(() => seatedPose({ ...unitMan, mass: wrong }, linesOf(uprightChair))).toThrow(/mass/);
  });

  it('has nobody on a back that lies along the seat', () => {
    const flat = { ...uprightChair, seatSlope: degrees(50), backLean: degrees(-40) };
    expect(seatedPose(unitMan, linesOf(flat))).toEqual({
      missing: 'the seat line and the back line are parallel',
    });
  });
});
