/** Every measure by its name in the contract. A line here and its file make a measure (names.ts says what it is). */
import { measuresOf, type MeasureKey } from '../names.js';
import { isMissing, type OrMissing } from '../numeric/missing.js';
import * as gettingUp from './getting-up.js';
import * as leaningBack from './leaning-back.js';
import * as pose from './pose.js';
import type { LoadRecord, Measure } from './record.js';
import * as rocking from './rocking.js';
import * as room from './room.js';
import * as runners from './runners.js';
import * as seatFit from './seat-fit.js';
import * as tipOver from './tip-over.js';

export const catalogue = {
  restAngleDeg: pose.restAngle,
  seatSlopeDeg: pose.seatSlope,
  backAngleDeg: pose.backAngle,
  contactAtRestM: pose.contactAtRest,
  touchFromTailM: pose.touchFromTail,
  periodS: rocking.period,
  periodAtSwingS: rocking.periodAtSwing,
  swingDeg: rocking.swing,
  tipBackDeg: tipOver.tipBack,
  tipBackEnergyJ: tipOver.tipBackEnergy,
  tipBackPushN: tipOver.tipBackPush,
  tipForwardDeg: tipOver.tipForward,
  tipForwardEnergyJ: tipOver.tipForwardEnergy,
  tipForwardPushN: tipOver.tipForwardPush,
  rockerEndBackDeg: tipOver.rockerEndBack,
  rockerEndForwardDeg: tipOver.rockerEndForward,
  tipSidewaysDeg: tipOver.tipSideways,
  frictionDemand: rocking.frictionDemand,
  restCount: runners.restCount,
  flatLongestM: runners.flatLongest,
  sharpestCornerDeg: runners.sharpestCorner,
  radiusJump: runners.radiusJump,
  seatFrontHeightM: seatFit.seatFrontHeight,
  kneeHollowGapM: seatFit.kneeHollowGap,
  seatDepthGapM: seatFit.seatDepthGap,
  armHeightGapM: seatFit.armHeightGap,
  footReach: seatFit.footReach,
  sweptBackM: room.sweptBack,
  wallClearanceM: room.wallClearance,
  peakBackDeg: leaningBack.peakBack,
  leftToTipBackDeg: leaningBack.leftToTipBack,
  rockerLeftBackM: leaningBack.rockerLeftBack,
  tailLoadBorneKg: leaningBack.tailLoadBorne,
  peakForwardDeg: gettingUp.peakForward,
  rockerLeftForwardM: gettingUp.rockerLeftForward,
  leftToTipForwardDeg: gettingUp.leftToTipForward,
  kickBackDeg: gettingUp.kickBack,
  edgeLoadBorneN: gettingUp.edgeLoadBorne,
  restUnderEdgeLoadDeg: gettingUp.restUnderEdgeLoad,
  minFloorForceRatio: rocking.minFloorForce,
} satisfies Record<MeasureKey, Measure>;

/** The measures of one load, in SI, in the order of the contract. */
export type Measured = ReadonlyMap<MeasureKey, OrMissing<number>>;

export function measureLoad(record: LoadRecord): Measured {
  return new Map(measuresOf(record.load.id).map((key) => [key, measureNow(record, key)]));
}

/** One of them. */
export const measureNow = (record: LoadRecord, key: MeasureKey): OrMissing<number> =>
  finite(catalogue[key](record), key);

/** A number that is none is a broken promise of the mechanics, never an answer. */
function finite(value: OrMissing<number>, key: MeasureKey): OrMissing<number> {
  if (!isMissing(value) && !Number.isFinite(value)) throw new RangeError(`measureLoad: ${key} is ${value}`);
  return value;
}
