/** What is left until it goes over: from rest to the point of no return, and to the ends of the rockers. */
import { isMissing } from '../numeric/missing.js';
import type { TipRecord } from '../rolling/roll-at-rest.js';
import { tipSideways as tipSidewaysAt } from '../rolling/sideways.js';
import { ofGiven, ofRest, type Measure } from './record.js';

type Side = 'back' | 'forward';
const ofSide = (side: Side, read: (record: TipRecord) => ReturnType<Measure>): Measure =>
  ofRest((atRest) => read(atRest[side]));

const angle = ({ tip }: TipRecord): ReturnType<Measure> => (isMissing(tip) ? tip : tip.angle);
const energy = ({ tip }: TipRecord): ReturnType<Measure> => (isMissing(tip) ? tip : tip.energy);

export const tipBack = ofSide('back', angle);
export const tipBackEnergy = ofSide('back', energy);
export const tipForward = ofSide('forward', angle);
export const tipForwardEnergy = ofSide('forward', energy);

const push = (side: Side): Measure => ofGiven('back', (_, atRest) => atRest[side].push);

/** Steady, level, at the top of the back line; forward: pulling there. */
export const tipBackPush = push('back');
export const tipForwardPush = push('forward');

/** From rest to the lean at which the contact reaches that end of the running surface. */
export const rockerEndBack = ofSide('back', ({ rockerEnd }) => rockerEnd);
export const rockerEndForward = ofSide('forward', ({ rockerEnd }) => rockerEnd);

/** An estimate, about one rocker; the riders sit in the middle plane. */
export const tipSideways = ofGiven('spacing', (spacing, { rest }, { chair: { offset, body }, load }) =>
  tipSidewaysAt(spacing, rest.height, (offset * body.mass) / load.body.mass),
);
