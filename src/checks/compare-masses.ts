/** What two chairs weigh, whole and in parts, and where. */
import type { Chair, Weighed } from '../chair/chair.js';
import type { MassProperties } from '../mass.js';
import { printedStep } from '../quantity/printed-step.js';
import { isReadable } from './compare-loads.js';
import { pairsOf, type Pair } from './pairs.js';

/** A part or an extra; the mass is that of all its pieces. */
export interface WeighedPart {
  readonly name: string;
  readonly count: number;
  readonly mass: number;
}

export interface MassChange {
  readonly old: MassProperties;
  readonly new: MassProperties;
  /** Parts and extras, those only that appeared, went, changed in number or whose mass moved. */
  readonly parts: readonly Pair<Weighed>[];
}

export function compareMasses(old: Chair, now: Chair): MassChange {
  const parts = pairsOf(weighed(old), weighed(now), ({ name }) => name);
  return { old: old.body, new: now.body, parts: parts.filter(hasChanged) };
}

const weighed = ({ parts, extras }: Chair): Weighed[] => [...parts, ...extras];

/** Masses are printed alike whatever the unit of length. */
const massStep = printedStep('mass', 'm');

const hasChanged = (pair: Pair<Weighed>): boolean =>
  pair.old === null ||
  pair.new === null ||
  pair.old.count !== pair.new.count ||
  isReadable(pair.new.mass - pair.old.mass, massStep);
