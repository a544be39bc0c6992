/** Why a chair does not come to rest on its rockers, and what would make it stand. SI; the words are the report's. */
import type { Chair } from '../chair/chair.js';
import { isCorner } from '../geometry/hull-element.js';
import { contactAt, elementAt, indexAt, radiusAt, supportAt } from '../geometry/profile.js';
import type { MassProperties } from '../mass.js';
import { landscapeOf, slopeOn, stretchAt } from '../rolling/landscape.js';
import { leastRadius } from '../rolling/least-radius.js';
import type { RollRecord } from '../rolling/roll-at-rest.js';

/** Why nothing is said of a rest that there is none of. */
export const restsNowhere = 'does not come to rest on its rockers';

export type NoRest =
  /** The radius where it touches is not greater than the height of its centre of gravity. */
  | {
      readonly cause: 'too-tight';
      readonly radius: number;
      readonly height: number;
      /** Of a single arc through the same place on the floor, mass held; infinite: none reaches far enough. */
      readonly leastRadius: number;
    }
  /** It rolls past an end of its running surface. */
  | {
      readonly cause: 'past-end';
      readonly end: 'nose' | 'tail';
      /** How far the centre of gravity is still beyond the contact when the end is reached. */
      readonly beyond: number;
      /** Level distance of that end from where it touches as drawn, and the least that would stand on the same arc. */
      readonly reach: number;
      readonly leastReach: number;
    }
  /** It stands on a corner or between parts, not on a curve. */
  | { readonly cause: 'no-curve' };

export function whyNoRest(chair: Chair, body: MassProperties, { rollsOff }: RollRecord): NoRest {
  const { profile, surface } = chair;
  if (isCorner(elementAt(profile, 0))) return { cause: 'no-curve' };
  const radius = radiusAt(profile, 0);
  const height = body.centre.y + supportAt(profile, 0);
  const touch = contactAt(profile, 0);
  const ahead = body.centre.x - touch.x;
  const end = (rollsOff ?? (ahead < 0 ? 'back' : 'forward')) === 'back' ? 'tail' : 'nose';
  const reach = Math.abs(contactAt(profile, surface[end].lean).x - touch.x);
  if (radius <= height)
    return { cause: 'too-tight', radius, height, leastRadius: leastRadius(height, Math.abs(ahead), reach) };
  return {
    cause: 'past-end',
    end,
    beyond: beyondEnd(chair, body, end),
    reach,
    // On one arc it rests where tan θ = e/(R - h); sin θ = reach/R.
    leastReach: (radius * Math.abs(ahead)) / Math.hypot(ahead, radius - height),
  };
}

/** |H'| on the running surface's side of its end. */
function beyondEnd({ profile, surface }: Chair, body: MassProperties, end: 'nose' | 'tail'): number {
  const landscape = landscapeOf(profile, body.centre);
  const { lean } = surface[end];
  const index = indexAt(profile, lean) - (end === 'tail' ? 1 : 0);
  return Math.abs(slopeOn(stretchAt(landscape, index), lean));
}
