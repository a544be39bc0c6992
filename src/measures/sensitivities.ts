/**
 * How much the assumptions of a moving load matter: the load run again with one of them changed. What no publication
 * says of how people lean back and rise decides as much as the chair does.
 */
import { lengthAt } from '../geometry/profile.js';
import { gettingUpFixed, type GettingUp } from '../loads/getting-up.js';
import { bodyAtStart, type LeaningBackHard } from '../loads/leaning-back-hard.js';
import { minus, times } from '../geometry/point.js';
import { directionOf } from '../sitter/support-lines.js';
import { restLean } from '../rolling/rest.js';
import { rollThrough, turningLeans } from '../rolling/scripted-roll.js';
import type { Course } from '../rolling/scripted-place.js';
import type { Sense } from '../rolling/tip.js';
import { gettingUpCourse, leaningCourse } from './motion.js';
import type { LoadRecord } from './record.js';

/** What is changed, and by how much; metres, radians or seconds. */
export interface Change {
  readonly of: 'feet' | 'trunk' | 'shove' | 'leaving place' | 'leaving time';
  readonly by: number;
}

export interface Sensitivity extends Change {
  /** How much farther it goes than unchanged, in its own direction, radians; null: it goes over or does not settle. */
  readonly farther: number | null;
  /** Rocker left on that side then, metres. */
  readonly rockerLeft: number | null;
}

const degrees = Math.PI / 180;
const eachWay = (of: Change['of'], by: number): Change[] => [-by, by].map((change) => ({ of, by: change }));

const leaningChanges = [...eachWay('feet', 0.1), ...eachWay('trunk', 5 * degrees), ...eachWay('shove', 0.1)];
const gettingUpChanges = [...eachWay('leaving place', 0.05), ...eachWay('leaving time', 0.3)];

/** A thousandth of a degree is more than is known of people. */
const roughly = 1e-7;

/** Of a hard lean or of getting up that does not go over; else none. */
export function sensitivitiesOf(record: LoadRecord): Sensitivity[] {
  const { motion, roll, load } = record;
  if (motion === null || motion.goesOver !== null || roll.atRest === null) return [];
  const settled = roll.atRest.rest.lean;
  switch (load.script?.kind) {
    case 'leaning-back-hard': {
      const { script } = load;
      return leaningChanges.map((change) => leanedAgain(record, script, settled, change));
    }
    case 'getting-up': {
      const { script } = load;
      return gettingUpChanges.map((change) => risenAgain(record, script, settled, change));
    }
    default:
      return [];
  }
}

function leanedAgain(
  record: LoadRecord,
  lean: LeaningBackHard,
  settled: number,
  change: Change,
): Sensitivity {
  const { chair } = record;
  const { trunkAhead, shoveTime } = lean.settings;
  const settings = {
    ...lean.settings,
    trunkAhead: Math.max(0, trunkAhead + (change.of === 'trunk' ? change.by : 0)),
    shoveTime: Math.max(0, shoveTime + (change.of === 'shove' ? change.by : 0)),
  };
  const changed = { ...lean, settings };
  const start = restLean(chair.profile, chair.surface, bodyAtStart(changed).centre);
  const course = leaningCourse(chair, changed, settled, change.of === 'feet' ? change.by : 0);
  return again(record, course, start, change, 'back');
}

function risenAgain(record: LoadRecord, up: GettingUp, settled: number, change: Change): Sensitivity {
  const { chair, emptyRest } = record;
  const { seat } = chair;
  if (seat === null) throw new RangeError('risenAgain: nobody sits without a seat line');
  const along = directionOf(seat.rear, seat.front);
  const behind = gettingUpFixed.leavesSeatAt + (change.of === 'leaving place' ? change.by : 0);
  const leaveTime = up.settings.leaveTime + (change.of === 'leaving time' ? change.by : 0);
  const changed = {
    ...up,
    leaving: minus(seat.front, times(along, behind)),
    settings: { ...up.settings, leaveTime: Math.max(shortest, leaveTime) },
  };
  return again(record, gettingUpCourse(chair, changed, settled, emptyRest), settled, change, 'forward');
}

/** Nobody gets up sooner, seconds. */
const shortest = 0.1;

function again(
  { chair: { profile, surface }, motion }: LoadRecord,
  course: Course,
  start: number | null,
  change: Change,
  sense: Sense,
): Sensitivity {
  const run =
    start === null ? null : rollThrough({ ...course, closeness: roughly }, { lean: start, rate: 0 });
  if (run === null || run.goesOver !== null || run.leavesFloor)
    return { ...change, farther: null, rockerLeft: null };
  const leans = turningLeans(run);
  const before = motion!.farthest[sense];
  if (sense === 'back') {
    const peak = Math.max(...leans);
    const left = surface.tail.length - lengthAt(profile, peak);
    return { ...change, farther: peak - before, rockerLeft: Math.max(0, left) };
  }
  const peak = Math.min(...leans);
  const left = lengthAt(profile, peak) - surface.nose.length;
  return { ...change, farther: before - peak, rockerLeft: Math.max(0, left) };
}
