/** What of a chair may still be changed, and how far, when it is on paper, cut, or glued up. */
import type { Design } from '../design/read-design.js';
import type { LengthUnit } from '../quantity/units.js';
import { dimensionOf, sameDimension, isPure } from '../quantity/dimension.js';
import { makersStep } from './makers-step.js';
import { variablesOf, type Variable } from './variables.js';

export const stages = ['drawing', 'cut', 'glued'] as const;
export type Stage = (typeof stages)[number];

/** A dimension with the whole maker's steps that it may be changed by. */
export interface Changeable {
  readonly variable: Variable;
  /** SI. */
  readonly step: number;
  /** A whole step nearest to what the design states: changes are counted from there. */
  readonly from: number;
  readonly least: number;
  readonly greatest: number;
}

/** Of what a drawing states, half as much and as much again: a tail may be twice as long, a leg not less than half. */
const shares = { less: 0.5, more: 1 };
/** Of a length or an angle that is stated as nothing, SI. */
const fromNothing = { length: 0.1, angle: (15 * Math.PI) / 180 };

/** All that a maker may change at a stage, but for what the design keeps. */
export function changeableIn(design: Design, stage: Stage): Changeable[] {
  const kept = new Set(design.written.keep ?? []);
  const units = design.written.units ?? 'in';
  return variablesOf(design)
    .filter(({ name, of }) => of === null && stage === 'drawing' && !kept.has(name))
    .flatMap((variable) => changeableOf(variable, units) ?? []);
}

/** How far a named dimension may be changed while it is only drawn, whole steps; null: it is none to change. */
export function changeableOf(variable: Variable, units: LengthUnit): Changeable | null {
  const { dimension, stated } = variable;
  const is = (kind: keyof typeof dimensionOf): boolean => sameDimension(dimension, dimensionOf[kind]);
  if (!is('length') && !is('angle') && !isPure(dimension) && !is('mass')) return null;
  const step = makersStep(variable, units);
  const from = Math.round(stated / step);
  const nothing = is('angle') ? fromNothing.angle : fromNothing.length;
  const reach = (part: number): number =>
    Math.floor((Math.abs(stated) > 0 ? part * Math.abs(stated) : nothing) / step);
  const [inward, outward] = [reach(shares.less), reach(shares.more)];
  if (outward === 0) return null;
  return stated < 0
    ? { variable, step, from, least: -outward, greatest: inward }
    : { variable, step, from, least: -inward, greatest: outward };
}

export const valueAfter = ({ from, step }: Changeable, steps: number): number => (from + steps) * step;
