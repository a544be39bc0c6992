/** Each load is rolled once into a record; a measure is a plain reading of it. */
import type { Chair } from '../chair/chair.js';
import { standardSwing, type Load } from '../loads/load.js';
import { missing, type OrMissing } from '../numeric/missing.js';
import { rollAtRest, type RestRecord, type RollRecord } from '../rolling/roll-at-rest.js';
import { whyNoRest, type NoRest } from './no-rest.js';

export interface LoadRecord {
  readonly chair: Chair;
  readonly load: Load;
  readonly roll: RollRecord;
  /** Why it does not come to rest on its rockers; null when it does. */
  readonly noRest: NoRest | null;
  /** Rolling arm of the floor, metres. */
  readonly resistance: number;
  /** Lean of the empty chair at rest; null where it has none. */
  readonly emptyRest: number | null;
}

/**
 * Every load rolled, each once.
 * @param resistance rolling arm of the floor, metres
 */
export function rollLoads(chair: Chair, loads: readonly Load[], resistance: number): LoadRecord[] {
  const rolled = loads.map((load) => ({ load, roll: rollOne(chair, load) }));
  const empty = rolled.find(({ load }) => load.id === 'empty')?.roll;
  const emptyRest = (empty ?? rollEmpty(chair)).atRest?.rest.lean ?? null;
  return rolled.map(({ load, roll }) => ({
    chair,
    load,
    roll,
    noRest: roll.atRest ? null : whyNoRest(chair, load.body, roll),
    resistance,
    emptyRest,
  }));
}

const rollOne = (chair: Chair, { body, swing }: Pick<Load, 'body' | 'swing'>): RollRecord =>
  rollAtRest(chair.profile, chair.surface, body, { swing, pushedAt: chair.back?.top ?? null });

const rollEmpty = (chair: Chair): RollRecord => rollOne(chair, { body: chair.body, swing: standardSwing });

/** A number read off the record, in SI, or why there is none. */
export type Measure = (record: LoadRecord) => OrMissing<number>;

/** Why nothing is said of a rest that there is none of. */
export const restsNowhere = 'does not come to rest on its rockers';

/** A measure of the rest: missing where there is no rest. */
export const ofRest =
  (read: (atRest: RestRecord, record: LoadRecord) => OrMissing<number>): Measure =>
  (record) =>
    record.roll.atRest ? read(record.roll.atRest, record) : missing(restsNowhere);

/** What a design may leave unsaid of its chair, and how that is told. */
const notGiven = {
  seat: 'the design has no seat line',
  back: 'the design has no back line',
  arms: 'the design has no arms line',
  spacing: 'the design does not say how far apart the rockers are (`spacing`)',
  wall: 'the design does not say how much room is behind the chair (`room.wall`)',
} as const;
type Given = keyof typeof notGiven;

/** A measure of the rest that needs something of the design; what is not given is told first, rest or none. */
export const ofGiven =
  <Needed extends Given>(
    needed: Needed,
    read: (given: NonNullable<Chair[Needed]>, atRest: RestRecord, record: LoadRecord) => OrMissing<number>,
  ): Measure =>
  (record) => {
    const given = record.chair[needed];
    if (given === null) return missing(notGiven[needed]);
    return ofRest((atRest) => read(given, atRest, record))(record);
  };
