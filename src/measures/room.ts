/** How far the chair reaches behind itself as it rocks, and what that leaves to the wall. */
import { missing, isMissing } from '../numeric/missing.js';
import { rearmost } from '../rolling/floor-place.js';
import { ofGiven, ofRest } from './record.js';

/** How far any part goes behind the rearmost point of the empty chair at rest, in a free swing; never less than 0. */
export const sweptBack = ofRest(({ rest, swing }, { chair: { profile }, emptyRest }) => {
  if (emptyRest === null) return missing('the empty chair does not come to rest on its rockers');
  if (isMissing(swing)) return swing;
  const farthest = Math.min(
    ...[rest.lean, ...swing.turns, swing.release].map((lean) => rearmost(profile, lean)),
  );
  return Math.max(0, rearmost(profile, emptyRest) - farthest);
});

/** What is left of the free space behind the empty chair. */
export const wallClearance = ofGiven('wall', (wall, _, record) => {
  const swept = sweptBack(record);
  return isMissing(swept) ? swept : wall - swept;
});
