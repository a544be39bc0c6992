/** Each load is rolled once into a record; a measure is a plain reading of it. */
import type { Chair } from '../chair/chair.js';
import { once } from '../kept.js';
import type { MassProperties } from '../mass.js';
import { standardSwing, type Load } from '../loads/load.js';
import { missing, missingBeside, type OrMissing } from '../numeric/missing.js';
import type { Sense } from '../rolling/tip.js';
import { rollAtRest, type RestRecord, type RollRecord } from '../rolling/roll-at-rest.js';
import { moveLoad, type Motion } from './motion.js';
import { restsNowhere, whyNoRest, type NoRest } from './no-rest.js';
import { worstMoment, type WorstMoment } from './worst-moment.js';

export interface LoadRecord {
  readonly chair: Chair;
  readonly load: Load;
  /** Of what stands still: of a moving load the rest that its peaks are counted from. */
  readonly roll: RollRecord;
  /** What moves, rolled through its script; null: nothing moves, or it has no rest to begin from. */
  readonly motion: Motion | null;
  /** Of a hard lean: begun in the middle of an everyday rock. Looked for when it is asked for. */
  readonly worst: () => OrMissing<WorstMoment>;
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
  const rolled = loads.map((load) => ({ load, roll: rollOne(chair, load.settled, load.swing) }));
  const empty = rolled.find(({ load }) => load.id === 'empty')?.roll;
  const emptyRest = (empty ?? rollOne(chair, chair.body, standardSwing)).atRest?.rest.lean ?? null;
  return rolled.map(({ load, roll }) => {
    const { motion, noRest } = motionOf(chair, load, roll, emptyRest);
    const worst = once(() => worstMoment(chair, load, roll.atRest?.rest.lean ?? null));
    return { chair, load, roll, motion, worst, noRest, resistance, emptyRest };
  });
}

const rollOne = (chair: Chair, body: MassProperties, swing: number): RollRecord =>
  rollAtRest(chair.profile, chair.surface, body, { swing, pushedAt: chair.back?.top ?? null });

/** It needs a rest to be counted from, and one to begin from. */
function motionOf(
  chair: Chair,
  load: Load,
  roll: RollRecord,
  emptyRest: number | null,
): Pick<LoadRecord, 'motion' | 'noRest'> {
  if (roll.atRest === null) return { motion: null, noRest: whyNoRest(chair, load.settled, roll) };
  if (load.script === null) return { motion: null, noRest: null };
  const motion = moveLoad(chair, load.script, load.body, roll.atRest.rest.lean, emptyRest);
  if (motion !== null) return { motion, noRest: null };
  return { motion, noRest: whyNoRest(chair, load.body, rollOne(chair, load.body, load.swing)) };
}

/** A number read off the record, in SI, or why there is none. */
export type Measure = (record: LoadRecord) => OrMissing<number>;

/** A measure of the rest: missing where there is no rest. */
export const ofRest =
  (read: (atRest: RestRecord, record: LoadRecord) => OrMissing<number>): Measure =>
  (record) =>
    record.roll.atRest ? read(record.roll.atRest, record) : missing(restsNowhere);

/** A measure of what moves: missing where it goes over, or leaves the floor. */
export const ofMotion =
  (read: (motion: Motion, record: LoadRecord) => OrMissing<number>): Measure =>
  (record) => {
    const { motion } = record;
    if (motion === null) return missing(restsNowhere);
    if (motion.goesOver !== null) return missing(goesOver(motion.goesOver));
    return motion.run.leavesFloor ? missing(leavesFloor) : read(motion, record);
  };

export const goesOver = (way: Sense): string => `goes over ${way === 'back' ? 'backwards' : 'forwards'}`;
export const leavesFloor = 'leaves the floor';

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
    if (given === null) return missingBeside(notGiven[needed]);
    return ofRest((atRest) => read(given, atRest, record))(record);
  };
