/** What is left when somebody gets up, and what the front edge of the seat bears. */
import { lengthAt } from '../geometry/profile.js';
import type { GettingUp } from '../loads/getting-up.js';
import { missing, type OrMissing } from '../numeric/missing.js';
import { largestStep, loadedCentre } from '../rolling/dead-loads.js';
import { restLean } from '../rolling/rest.js';
import { ofMotion, type LoadRecord, type Measure } from './record.js';
import { restsNowhere } from './no-rest.js';

/** From the seated rest to the least lean. */
export const peakForward = ofMotion(({ farthest }, { roll }) => roll.atRest!.rest.lean - farthest.forward);

/** From there to the point of no return of the chair alone. */
export const leftToTipForward = ofMotion(({ farthest, crests }) => farthest.forward - crests.forward);

/** Running surface from the contact at the least lean to its nose end; 0 once the contact is on the end. */
export const rockerLeftForward = ofMotion(({ farthest }, { chair: { profile, surface } }) =>
  Math.max(0, lengthAt(profile, farthest.forward) - surface.nose.length),
);

/** How far back the chair alone swings, from the seated rest. */
export const kickBack = ofMotion(({ kick }, { roll }) =>
  kick === null ? missing('nobody leaves') : kick - roll.atRest!.rest.lean,
);

const ofEdge =
  (read: (up: GettingUp, record: LoadRecord) => OrMissing<number>): Measure =>
  (record) => {
    const { script } = record.load;
    return script?.kind === 'getting-up' ? read(script, record) : missing('nobody gets up');
  };

/** The largest load that may be put on the front of the seat at once, the chair at rest. */
export const edgeLoadBorne = ofEdge(({ chair: body, edge }, { chair: { profile }, emptyRest }) =>
  emptyRest === null
    ? missing('the empty chair does not come to rest on its rockers')
    : largestStep({ profile, body, rest: emptyRest }, edge, 'forward'),
);

/** Lean from the pose as drawn at which the chair rests with all that rode on the front of the seat. */
export const restUnderEdgeLoad = ofEdge(({ chair: body, edge, weight }, { chair: { profile, surface } }) => {
  const centre = loadedCentre(body, [{ place: edge, force: weight }]);
  return restLean(profile, surface, centre) ?? missing(`so loaded it ${restsNowhere}`);
});
