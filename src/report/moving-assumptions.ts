/** What was assumed of how people lean back and rise, and how much it matters. */
import type { CheckResult } from '../check-design.js';
import { tailsDefaults } from '../loads/child-on-the-tails.js';
import { gettingUpDefaults, gettingUpFixed } from '../loads/getting-up.js';
import { leaningDefaults } from '../loads/leaning-back-hard.js';
import { lengthAt } from '../geometry/profile.js';
import type { LoadRecord } from '../measures/record.js';
import { isMissing } from '../numeric/missing.js';
import { sensitivitiesOf, type Change, type Sensitivity } from '../measures/sensitivities.js';
import type { LoadId } from '../names.js';
import { formatDegrees, formatKilograms, formatLength, formatNumber } from '../quantity/print.js';
import type { LengthUnit } from '../quantity/units.js';
import { loadWords, whoOf } from './measure-words.js';
import type { Assumption } from './schema.js';

export function movingAssumptions(result: CheckResult): Assumption[] {
  const records = result.loads.map(({ record }) => record);
  const ids = [...new Set(records.map(({ load }) => load.id))];
  return [
    ...ids.flatMap((id) =>
      scriptOf(
        id,
        records.find(({ load }) => load.id === id)!,
        result.design.units,
      ),
    ),
    ...records.flatMap((record) => [
      ...begunInARock(record, result.design.units),
      ...mattering(record, result.design.units),
    ]),
  ];
}

const ours = 'assumption of this project';
const published = {
  armShare: 'published: 20 to 30 % of body weight through each arm, measured on fixed chairs',
  leaveTime: `${ours}; published: rising takes 1.6 ± 0.3 s from beginning to standing, measured on fixed chairs`,
} as const;

function scriptOf(id: LoadId, { load: { script } }: LoadRecord, units: LengthUnit): Assumption[] {
  const line = (
    what: string,
    value: string,
    used: number,
    standard: number,
    basis: string = ours,
  ): Assumption => ({
    what: `${loadWords[id]}: ${what}`,
    value,
    basis: used === standard ? basis : 'the design’s own',
  });
  const fixed = (what: string, value: string): Assumption => line(what, value, 0, 0);
  const seconds = (time: number): string => `${formatNumber(time)} s`;
  const share = (of: number): string => `${formatNumber(100 * of, 1)} % of body weight`;
  switch (script?.kind) {
    case 'leaning-back-hard': {
      const { trunkAhead, throwTime, shove, shoveTime } = script.settings;
      const usual = leaningDefaults;
      return [
        line(
          'trunk, head and arms forward at first',
          formatDegrees(trunkAhead),
          trunkAhead,
          usual.trunkAhead,
        ),
        line('thrown onto the back within', seconds(throwTime), throwTime, usual.throwTime),
        line('shove of the feet on the floor', share(shove), shove, usual.shove),
        line('for', seconds(shoveTime), shoveTime, usual.shoveTime),
        fixed('feet stand', 'plumb under the knees at rest, and do not ride'),
      ];
    }
    case 'getting-up': {
      const { leaveTime, slideTime, armShare, seatPush } = script.settings;
      const usual = gettingUpDefaults;
      const { handsFrom, handsFor, handsAt, leavesSeatAt } = gettingUpFixed;
      return [
        line('has left the chair after', seconds(leaveTime), leaveTime, usual.leaveTime, published.leaveTime),
        line('slides to the front within', seconds(slideTime), slideTime, usual.slideTime),
        fixed('leaves the seat', `${formatLength(leavesSeatAt, units)} behind its front`),
        line('each hand on the arms, at most', share(armShare), armShare, usual.armShare, published.armShare),
        fixed(
          'hands press',
          `${formatLength(handsAt, units)} behind the front of the arms, from ${seconds(handsFrom)} to ${seconds(handsFrom + handsFor)}`,
        ),
        line('pushes the seat back with, at most', share(seatPush), seatPush, usual.seatPush),
      ];
    }
    case 'child-on-the-tails': {
      const { force } = script.load;
      const mass = force / 9.80665;
      return [
        line('steps on the ends of both', formatKilograms(mass), Number(mass.toFixed(9)), tailsDefaults.mass),
      ];
    }
    default:
      return [];
  }
}

/** The hard lean begun in the middle of an everyday rock, at its worst moment. */
function begunInARock(record: LoadRecord, units: LengthUnit): Assumption[] {
  const { load, motion, chair, worst } = record;
  if (load.script?.kind !== 'leaning-back-hard' || motion === null) return [];
  const found = worst();
  return [
    {
      what: `${whoOf(load.id, load.sitter)}, begun at the worst moment of a rock of ${formatDegrees(load.swing)}`,
      value: isMissing(found) ? found.missing : sayWorst(found.farthest),
      basis: 'the same script begun at every phase of that rock',
    },
  ];
  function sayWorst(farthest: number): string {
    if (farthest === Infinity) return 'goes over backwards';
    const rockerLeft = Math.max(0, chair.surface.tail.length - lengthAt(chair.profile, farthest));
    return sayEffect({ farther: farthest - motion!.farthest.back, rockerLeft }, load.id, units);
  }
}

/** A line for each thing changed: less of it, and more. */
function mattering(record: LoadRecord, units: LengthUnit): Assumption[] {
  const { id, sitter } = record.load;
  const found = sensitivitiesOf(record);
  const less = found.filter(({ by }) => by < 0);
  return less.map((one) => {
    const more = found.find(({ of, by }) => of === one.of && by > 0)!;
    return {
      what: `${whoOf(id, sitter)}, with ${sayChange(one, units)}`,
      value: `${sayEffect(one, id, units)}; or ${sayEffect(more, id, units)}`,
      basis: 'calculated again with that alone changed',
    };
  });
}

function sayChange({ of, by }: Change, units: LengthUnit): string {
  const [length, time] = [formatLength(Math.abs(by), units), `${formatNumber(Math.abs(by))} s`];
  switch (of) {
    case 'feet':
      return `the feet ${length} farther back, or forward`;
    case 'trunk':
      return `the trunk ${formatDegrees(Math.abs(by))} less far forward at first, or farther`;
    case 'shove':
      return `a shove ${time} shorter, or longer`;
    case 'leaving place':
      return `the seat left ${length} nearer to its front, or farther from it`;
    case 'leaving time':
      return `${time} less to get up in, or more`;
  }
}

function sayEffect(
  { farther, rockerLeft }: Pick<Sensitivity, 'farther' | 'rockerLeft'>,
  id: LoadId,
  units: LengthUnit,
): string {
  if (farther === null || rockerLeft === null) return 'it goes over, or does not settle first';
  const way = id.startsWith('getting-up') ? 'forward' : 'back';
  const tenths = formatNumber(Math.abs(farther) * (180 / Math.PI), 1);
  return `${tenths}° ${farther < 0 ? 'less far' : 'farther'} ${way}, rocker left ${formatLength(rockerLeft, units)}`;
}
