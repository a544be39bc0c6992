/** How it rocks: period of a small swing and of a stated one, and what that swing asks of the floor. */
import { isMissing } from '../numeric/missing.js';
import { ofRest, type Measure } from './record.js';

export const period = ofRest(({ smallPeriod }) => smallPeriod);

export const periodAtSwing = ofRest(({ swing }) => (isMissing(swing) ? swing : swing.period));

/** The swing that `periodAtSwing` is for. */
export const swing: Measure = ({ load }) => load.swing;

export const frictionDemand = ofRest(({ forces }) => (isMissing(forces) ? forces : forces.frictionDemand));
