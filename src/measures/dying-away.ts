/** How long the chair rocks by itself: a free swing against the floor's rolling resistance. */
import { missing, isMissing, type OrMissing } from '../numeric/missing.js';
import { decay, type Decay } from '../rolling/decay.js';
import { landscapeOf } from '../rolling/landscape.js';
import type { LoadRecord } from './record.js';

/** A smaller rock is hardly one (common practice, no source), radians. */
export const leastRock = Math.PI / 180;

/** Let go at the load's swing, until it is below 1°. */
export function dyingAway({ chair, load, roll, resistance }: LoadRecord): OrMissing<Decay> {
  if (roll.atRest === null) return missing('does not come to rest on its rockers');
  const { rest, swing } = roll.atRest;
  if (isMissing(swing)) return swing;
  const landscape = landscapeOf(chair.profile, load.body.centre);
  const settings = { resistance, leastAmplitude: leastRock };
  return decay(landscape, chair.surface, load.body, rest.lean, rest.lean + load.swing, settings);
}
