/** How far each measure moved between two designs, load by load and sitter by sitter. */
import { measures, type LoadId, type MeasureKey } from '../names.js';
import { isMissing, type OrMissing } from '../numeric/missing.js';
import { printedStep } from '../quantity/printed-step.js';
import type { LengthUnit } from '../quantity/units.js';
import { wayOver, type Way } from './goes-over.js';
import type { MeasuredLoad } from './judge-loads.js';
import { pairsOf, type Pair } from './pairs.js';

export interface MeasureChange {
  readonly measure: MeasureKey;
  readonly old: OrMissing<number>;
  readonly new: OrMissing<number>;
  /** By as much as a maker could read, or from or to having no value. */
  readonly moved: boolean;
}

export interface LoadChange {
  readonly load: LoadId;
  readonly sitter: string | null;
  /** Which of the two designs have this load. */
  readonly in: 'both' | 'old' | 'new';
  /** Which way each takes the chair over; null: neither does, or there is no such load. */
  readonly goesOver: { readonly old: Way | null; readonly new: Way | null };
  /** Every measure of both; none where only one design has the load. */
  readonly measures: readonly MeasureChange[];
}

export function compareLoads(
  old: readonly MeasuredLoad[],
  now: readonly MeasuredLoad[],
  units: LengthUnit,
): LoadChange[] {
  return pairsOf(old, now, nameOf).map((pair) => {
    const { id: load, sitter } = (pair.new ?? pair.old).record.load;
    const goesOver = { old: pair.old && wayOver(pair.old), new: pair.new && wayOver(pair.new) };
    return { load, sitter, in: whichOf(pair), goesOver, measures: changesOf(pair, units) };
  });
}

/** It does now, and did not before, or the other way; also what only the new design has. */
export const isNewlyOver = ({ goesOver }: Pick<LoadChange, 'goesOver'>): boolean =>
  goesOver.new !== null && goesOver.new !== goesOver.old;

/** No load has a space in its name. */
const nameOf = ({ record: { load } }: MeasuredLoad): string =>
  load.sitter === null ? load.id : `${load.id} ${load.sitter}`;

function whichOf<T>(pair: Pair<T>): LoadChange['in'] {
  if (pair.old === null) return 'new';
  return pair.new === null ? 'old' : 'both';
}

function changesOf(pair: Pair<MeasuredLoad>, units: LengthUnit): MeasureChange[] {
  if (pair.old === null || pair.new === null) return [];
  const before = pair.old.measured;
  return [...pair.new.measured].flatMap(([measure, now]) => {
    const old = before.get(measure);
    return old === undefined ? [] : [{ measure, old, new: now, moved: hasMoved(measure, old, now, units) }];
  });
}

function hasMoved(
  measure: MeasureKey,
  old: OrMissing<number>,
  now: OrMissing<number>,
  units: LengthUnit,
): boolean {
  if (isMissing(old) || isMissing(now)) return isMissing(old) !== isMissing(now);
  return isReadable(now - old, printedStep(measures[measure].kind, units));
}

/** Half a step comes back from metres or radians with its last digits rounded. */
const rounding = 1e-9;

/** Less than half of the step in which it is printed reads as no difference at all. NaN never counts as none. */
export const isReadable = (difference: number, step: number): boolean =>
  !(Math.abs(difference) < (step / 2) * (1 - rounding));
