/** How it rocks: period of a small swing and of a stated one, and what that swing asks of the floor. */
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import type { Motion } from './motion.js';
import { leavesFloor, ofRest, type Measure } from './record.js';
import { restsNowhere } from './no-rest.js';

export const period = ofRest(({ smallPeriod }) => smallPeriod);

export const periodAtSwing = ofRest(({ swing }) => (isMissing(swing) ? swing : swing.period));

/** The swing that `periodAtSwing` is for. */
export const swing: Measure = ({ load }) => load.swing;

const demandOfSwing = ofRest(({ forces }) => (isMissing(forces) ? forces : forces.frictionDemand));

/** Of a moving load over its script, until it goes over if it does. */
const ofRun =
  (read: (motion: Motion) => OrMissing<number>): Measure =>
  ({ motion }) =>
    motion === null ? missing(restsNowhere) : read(motion);

const demandOfScript = ofRun(({ run, forces }) =>
  run.leavesFloor ? missing(leavesFloor) : forces.frictionDemand,
);

export const frictionDemand: Measure = (record) =>
  record.load.script === null ? demandOfSwing(record) : demandOfScript(record);

/** Least floor force over the weight of what rolls; 0 where it leaves the floor. */
export const minFloorForce = ofRun(({ forces }) => forces.leastFloorForce);
