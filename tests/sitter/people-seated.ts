/** Chairs and people for the tests of this room, at hand and at random. SI, radians. */
import fc from 'fast-check';
import { plus, times, unitAt, type Point } from '../../src/geometry/point.js';
import { isMissing, type OrMissing } from '../../src/numeric/missing.js';
import { seatedPose } from '../../src/sitter/seated-pose.js';
import type { Sitter, SitterSize } from '../../src/sitter/sitter-size.js';
import type { SupportLines } from '../../src/sitter/support-lines.js';

export const degrees = (angle: number): number => (angle * Math.PI) / 180;

/** The value, or a failing test that says what is missing. */
export function present<T>(value: OrMissing<T>): T {
  if (isMissing(value)) throw new Error(value.missing);
  return value;
}

export const sitterOf = (said: Partial<Sitter>): Sitter => ({
  body: 'male',
  stature: null,
  mass: null,
  percentile: null,
  ...said,
  measured: { kneeHollow: null, buttockToKneeHollow: null, elbowAboveSeat: null, ...said.measured },
});

/** A chair whose seat and back lines meet at `corner`; slopes over the level, back lean off plumb. */
export interface ChairLines {
  readonly corner: Point;
  readonly seatSlope: number;
  readonly backLean: number;
  readonly armSlope: number | null;
}

export function linesOf({ corner, seatSlope, backLean, armSlope }: ChairLines): SupportLines {
  const from = (start: Point, angle: number, length: number) => plus(start, times(unitAt(angle), length));
  const armRear = plus(corner, { x: 0, y: 0.22 });
  return {
    seat: { rear: corner, front: from(corner, seatSlope, 0.45) },
    back: { foot: corner, top: from(corner, Math.PI / 2 + backLean, 0.7) },
    arms: armSlope === null ? null : { rear: armRear, front: from(armRear, armSlope, 0.4) },
  };
}

type Person = Pick<SitterSize, 'body' | 'stature' | 'mass'>;

export const poseIn = (person: Person, chair: ChairLines) => present(seatedPose(person, linesOf(chair)));

/** Level seat at the origin, back plumb at x = 0: the plane of the back of the buttocks. */
export const uprightChair: ChairLines = {
  corner: { x: 0, y: 0 },
  seatSlope: 0,
  backLean: 0,
  armSlope: null,
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const people: fc.Arbitrary<Person> = fc.record({
  body: fc.constantFrom('female', 'male'),
  stature: between(0.9, 2.1),
  mass: between(10, 200),
});

/** From a kitchen chair to a deck chair. */
export const chairs: fc.Arbitrary<ChairLines> = fc.record({
  corner: fc.record({ x: between(-1, 1), y: between(0, 1) }),
  seatSlope: between(-0.2, 0.5),
  backLean: between(-0.1, 0.9),
  armSlope: fc.option(between(-0.3, 0.3)),
});

export const angles = between(-0.5, 0.5);
