/** Lengths of the body as fractions of stature. */
import type { Source } from './source.js';

export const lengthSource: Source = {
  publication: 'Drillis and Contini 1966, Body Segment Parameters, TR 1166.03, New York University',
  mark: 'read second-hand',
};

/** The hip joint: half a thigh over the seat; ahead of the back by buttock to knee less thigh and knee. */
export const hipSource: Source = {
  publication: 'ANSUR II 2012: medians of thigh clearance, buttock-knee length and thigh length',
  mark: 'worked out here',
};

/**
 * Shoulder to head and head make up the stature that ankle, shank, thigh and trunk leave (their sum is 1): worked out
 * here. A quarter of the foot behind the ankle: assumption of this project.
 */
const fractionOfStature = {
  trunk: 0.288,
  shoulderToHead: 0.042,
  head: 0.14,
  upperArm: 0.186,
  forearm: 0.146,
  hand: 0.108,
  thigh: 0.245,
  shank: 0.246,
  ankleHeight: 0.039,
  foot: 0.152,
  heelBehindAnkle: 0.152 / 4,
  hipOverSeat: 0.05,
  hipAheadOfBack: 0.072,
} as const;

export type BodyLengths = Readonly<Record<keyof typeof fractionOfStature, number>>;

/** @throws RangeError when the stature is not a positive number */
export function bodyLengths(stature: number): BodyLengths {
  if (!(stature > 0 && stature < Infinity)) throw new RangeError(`bodyLengths: stature ${stature} m`);
  const scaled = Object.entries(fractionOfStature).map(([name, fraction]) => [name, fraction * stature]);
  return Object.fromEntries(scaled) as BodyLengths;
}
