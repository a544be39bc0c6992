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

/** A measure of the rest: missing where there is no rest. */
export const ofRest =
  (read: (atRest: RestRecord, record: LoadRecord) => OrMissing<number>): Measure =>
  (record) =>
    record.roll.atRest ? read(record.roll.atRest, record) : missing('does not come to rest on its rockers');
