/** What a maker calls each measure, and its value in the units of the workshop. */
import type { Over } from '../checks/goes-over.js';
import { goesOver } from '../measures/record.js';
import { measures, type LoadId, type MeasureKey } from '../names.js';
import type { LengthUnit } from '../quantity/units.js';
import { sayOfKind } from './kind-words.js';

export const measureWords: Readonly<Record<MeasureKey, string>> = {
  restAngleDeg: 'settles at, back of the drawing',
  seatSlopeDeg: 'seat slope, front higher',
  backAngleDeg: 'back off plumb',
  contactAtRestM: 'touches the floor at x',
  touchFromTailM: 'touches the floor, from the tail end',
  periodS: 'one full rock, small',
  periodAtSwingS: 'one full rock at its swing',
  swingDeg: 'that swing, each way',
  tipBackDeg: 'to the point of no return, back',
  tipBackEnergyJ: 'energy to go over back',
  tipBackPushN: 'push at the top of the back to go over',
  tipForwardDeg: 'to the point of no return, forward',
  tipForwardEnergyJ: 'energy to go over forward',
  tipForwardPushN: 'pull at the top of the back to go over',
  rockerEndBackDeg: 'to the tail end of the rockers',
  rockerEndForwardDeg: 'to the nose end of the rockers',
  tipSidewaysDeg: 'goes over sideways at, about',
  frictionDemand: 'friction that it asks of the floor',
  restCount: 'places where it settles',
  flatLongestM: 'longest flat of the rockers',
  sharpestCornerDeg: 'sharpest corner of the rockers',
  radiusJump: 'bump in the radius',
  seatFrontHeightM: 'front edge of the seat over the floor',
  kneeHollowGapM: 'knee hollow over the front edge',
  seatDepthGapM: 'knee hollow clear of the front edge',
  armHeightGapM: 'arms over the elbow',
  footReach: 'reach of the foot at the back of a rock',
  sweptBackM: 'goes back behind the empty chair',
  wallClearanceM: 'to the wall behind',
  peakBackDeg: 'goes back as far as',
  leftToTipBackDeg: 'left to the point of no return, back',
  rockerLeftBackM: 'rocker left behind the touch',
  tailLoadBorneKg: 'child that the tails bear',
  peakForwardDeg: 'goes forward as far as',
  rockerLeftForwardM: 'rocker left ahead of the touch',
  leftToTipForwardDeg: 'left to the point of no return, forward',
  kickBackDeg: 'kicks back as far as',
  edgeLoadBorneN: 'load that the edge of the seat bears',
  restUnderEdgeLoadDeg: 'settles at, a sitter on the edge of the seat',
  minFloorForceRatio: 'least force on the floor, over the weight',
};

/** What a limit is about; null: that the chair comes to rest at all. */
export const limitedWords = (measure: MeasureKey | null): string =>
  measure === null ? 'comes to rest on its rockers' : measureWords[measure];

/** What a load is called, after the sitter's name if it has one. */
export const loadWords: Readonly<Record<LoadId, string>> = {
  empty: 'empty',
  seated: 'seated',
  'seated-feet-up': 'feet up',
  'leaning-back-hard': 'leaning back hard',
  'getting-up': 'getting up',
  'with-a-child': 'with the child',
  'leaning-back-hard-with-a-child': 'leaning back hard with the child',
  'getting-up-with-a-child': 'getting up with the child',
  'child-on-the-tails': 'a child on the tails',
};

/** Who or what a limit is about: "shortest", "shortest, feet up", "empty chair". */
export function whoOf(load: LoadId, sitter: string | null): string {
  if (sitter === null) return load === 'empty' ? 'empty chair' : loadWords[load];
  return load === 'seated' ? sitter : `${sitter}, ${loadWords[load]}`;
}

/** 'shortest, getting up: goes over forwards' */
export const sayOver = ({ load, sitter, way }: Over): string => `${whoOf(load, sitter)}: ${goesOver(way)}`;

/** A value of a measure, SI, as a maker reads it. */
export function sayValue(key: MeasureKey, value: number, units: LengthUnit): string {
  const { kind } = measures[key];
  const said = sayOfKind(kind, value, units);
  if (said === null) throw new RangeError(`sayValue: ${key} is a ${kind}`);
  return said;
}
