/** How long the chair rocks by itself: a free swing against the floor's rolling resistance. */
import { missing, isMissing, type OrMissing } from '../numeric/missing.js';
import { decay } from '../rolling/decay.js';
import { landscapeOf } from '../rolling/landscape.js';
import type { RestRecord } from '../rolling/roll-at-rest.js';
import { type LoadRecord } from './record.js';
import { restsNowhere } from './no-rest.js';

/** A smaller rock is hardly one (common practice, no source), radians. */
export const leastRock = Math.PI / 180;

/**
 * Rocks, there and back, of a chair let go at the load's swing, until one is below 1°. While no flat is in the swing a
 * half swing loses 2c/(ρ - H): small swings, a few hundredths less than at 6°. Over flats it is followed step by step.
 */
export function rocksByItself(record: LoadRecord): OrMissing<number> {
  const { load, roll, resistance } = record;
  if (roll.atRest === null) return missing(restsNowhere);
  const { rest, swing } = roll.atRest;
  if (isMissing(swing)) return swing;
  if (swing.impacts.length > 0) return rocksOverFlats(record, roll.atRest);
  const lossOfRock = (2 * resistance) / rest.hang[0] + (2 * resistance) / rest.hang[1];
  return Math.max(0, load.swing - leastRock) / lossOfRock;
}

function rocksOverFlats({ chair, load, resistance }: LoadRecord, { rest }: RestRecord): OrMissing<number> {
  const landscape = landscapeOf(chair.profile, load.body.centre);
  const settings = { resistance, leastAmplitude: leastRock };
  const dying = decay(landscape, chair.surface, load.body, rest.lean, rest.lean + load.swing, settings);
  return isMissing(dying) ? dying : (dying.turns.length - 1) / 2;
}
