/** How far the chair reaches behind itself as it rocks or is flung back, and what that leaves to the wall. */
import type { Chair } from '../chair/chair.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import { rearmost } from '../rolling/floor-place.js';
import { ofGiven, ofMotion, ofRest, type LoadRecord, type Measure } from './record.js';

/** How far any part goes behind the rearmost point of the empty chair at rest; never less than 0. */
export const sweptBack: Measure = (record) =>
  record.load.script === null ? sweptInSwing(record) : sweptInScript(record);

const sweptInSwing = ofRest(({ rest, swing }, record) =>
  isMissing(swing) ? swing : sweptTo(record, [rest.lean, ...swing.turns, swing.release]),
);

const sweptInScript = ofMotion(({ farthest }, record) => sweptTo(record, [farthest.back, farthest.forward]));

function sweptTo({ chair, emptyRest }: LoadRecord, leans: readonly number[]): OrMissing<number> {
  if (emptyRest === null) return missing('the empty chair does not come to rest on its rockers');
  const farthest = leans.map((lean) => Math.min(...rearsOf(chair, lean)));
  return Math.max(0, Math.min(...rearsOf(chair, emptyRest)) - Math.min(...farthest));
}

/** X of the rearmost point; where the sides are unlike, of what reaches farther back on either. */
const rearsOf = ({ profile, sides }: Chair, lean: number): number[] =>
  (sides ? [sides.left.profile, sides.right.profile] : [profile]).map((side) =>
    rearmost(profile, lean, side),
  );

/** What is left of the free space behind the empty chair. */
export const wallClearance = ofGiven('wall', (wall, _, record) => {
  const swept = sweptBack(record);
  return isMissing(swept) ? swept : wall - swept;
});
