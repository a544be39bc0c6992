/** What to change so that a limit is met: as data in the units of the design, and in a maker's words. */
import { sameRange } from '../checks/compare-limits.js';
import { limitId } from '../checks/limit.js';
import type { JudgedLimit } from '../checks/verdict.js';
import type { Remedy, RemedyChange } from '../explore/remedy.js';
import { jsonFactor, type MeasureKey } from '../names.js';
import type { LengthUnit } from '../quantity/units.js';
import { isAlteration, sayAlteration } from './alteration-words.js';
import { sayWanted } from './limit-words.js';
import { measureWords, sayValue } from './measure-words.js';
import { rounded } from './rounded.js';
import type { LimitObject } from './schema.js';
import { sayInUnit, unitOf } from './variable-words.js';

type RemedyObject = LimitObject['remedies'][number];

export function remedyObject(
  { stage, changes, value, breaks, moves }: Remedy,
  { measure }: JudgedLimit,
  units: LengthUnit,
): RemedyObject {
  const key: MeasureKey = measure ?? 'restAngleDeg';
  return {
    stage,
    changes: changes.map((change) => changeObject(change, units)),
    value: value === null ? null : rounded(value * jsonFactor(key)),
    breaks: [...breaks],
    moves: Object.fromEntries(
      moves.map(({ load, measure: moved, sitter, by }) => [
        limitId(load, moved, sitter),
        rounded(by * jsonFactor(moved)),
      ]),
    ),
  };
}

function changeObject(
  { change, from, to }: RemedyChange,
  units: LengthUnit,
): RemedyObject['changes'][number] {
  const { unit, factor } = unitOf(change.variable, units);
  return { dimension: change.variable.name, from: rounded(from / factor), to: rounded(to / factor), unit };
}

/** 'radius 39 in → 41 in and front legs 1/4 in shorter'. */
const sayChanges = ({ changes }: Pick<Remedy, 'changes'>, units: LengthUnit): string =>
  changes
    .map((change) => {
      const { dimension, from, to, unit } = changeObject(change, units);
      if (isAlteration(dimension)) return sayAlteration(dimension, to, unit, from);
      return `${dimension} ${sayInUnit(from, unit)} → ${sayInUnit(to, unit)}`;
    })
    .join(' and ');

/**
 * The same with what comes of it: 'tail 12 in → 18-5/16 in (then 2 in; all limits met)'.
 * @param stillOpen of several limits that it is told for those that it does not mend
 */
export function sayRemedy(
  remedy: Remedy,
  limit: JudgedLimit,
  units: LengthUnit,
  stillOpen: readonly string[] = [],
): string {
  const { changes, breaks, mendsAll } = remedy;
  const then = [
    ...sayThen(remedy, limit, units),
    ...(mendsAll ? ['all limits met'] : []),
    ...(stillOpen.length > 0 ? [`still not met: ${stillOpen.join(', ')}`] : []),
    ...changes.flatMap(({ neededFor }, i) =>
      neededFor.length === 0 || neededFor.includes(limit.id)
        ? []
        : [`the ${i === 0 ? 'first' : 'second'} so that ${neededFor.join(', ')} is met`],
    ),
    ...(breaks.length > 0 ? [`but no longer met: ${breaks.join(', ')}`] : []),
  ];
  return `${sayChanges(remedy, units)}${then.length === 0 ? '' : ` (${then.join('; ')})`}`;
}

/** The value by itself where it stood before; of what had none, as where the load goes over, what it is the value of. */
function sayThen({ value, range }: Remedy, limit: JudgedLimit, units: LengthUnit): string[] {
  const { measure } = limit;
  if (value === null || measure === null) return [];
  const what = limit.value === null ? `${measureWords[measure]} ` : '';
  const then = `then ${what}${sayValue(measure, value, units)}`;
  return [sameRange(range, limit.range) ? then : `${then}, wanted ${sayWanted(measure, range, units)} then`];
}
