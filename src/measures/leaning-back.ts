/** What is left when somebody leans back hard, or a child steps on the tails. */
import { lengthAt } from '../geometry/profile.js';
import { missing } from '../numeric/missing.js';
import { largestStep } from '../rolling/dead-loads.js';
import { g } from '../rolling/gravity.js';
import { isMissing } from '../numeric/missing.js';
import { ofMotion, ofRest, type Measure } from './record.js';

/** From the rest of the same sitter, or of the empty chair. */
export const peakBack = ofMotion(({ farthest }, { roll }) => farthest.back - roll.atRest!.rest.lean);

/** From there to the point of no return of the pose at the end. */
export const leftToTipBack = ofMotion(({ farthest, crests }) => crests.back - farthest.back);

/** Running surface from the contact at the peak to its tail end; 0 once the contact is on the end. */
export const rockerLeftBack = ofMotion(({ farthest }, { chair: { profile, surface } }) =>
  Math.max(0, surface.tail.length - lengthAt(profile, farthest.back)),
);

/** The heaviest child that may step on the tails at once. */
export const tailLoadBorne: Measure = ofRest(({ rest }, { chair, load: { script } }) => {
  if (script?.kind !== 'child-on-the-tails') return missing('nobody steps on the tails');
  const standing = { profile: chair.profile, body: script.chair, rest: rest.lean };
  const largest = largestStep(standing, script.load.place, 'back');
  return isMissing(largest) ? largest : largest / g;
});
