/** What of a chair may still be changed, and how far, when it is on paper, cut, or glued up. */
import { alterationsOf } from '../chair/alteration-faults.js';
import type { Design } from '../design/read-design.js';
import { namesWithin, type Value } from '../design/value.js';
import type { AlterationName } from '../names.js';
import type { BuiltDesign } from './design-function.js';
import type { LengthUnit } from '../quantity/units.js';
import { kindOfDimension } from '../quantity/dimension.js';
import { makersStep, wholeSteps } from './makers-step.js';
import { reachOf, type Reach, type Stage } from './reaches.js';
import { usedNames } from './used-names.js';
import { variablesOf, type Variable } from './variables.js';

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
/**
 * Either way of what is stated as nothing, metres, kilograms, radians: a hand’s breadth, a pair of shoes, half the range of a
 * back. Judgement of this project. Other kinds are no sizes of a chair.
 */
const fromNothing = { length: 0.1, number: 0.1, mass: 1, angle: (15 * Math.PI) / 180 };

/**
 * All that a maker may change at a stage, but for what the design keeps: on paper the named dimensions and, where none of
 * them does it, the chair’s own sizes; of cut parts and of a chair that is glued up what the saw and glue still allow.
 */
export function changeableIn(design: Design, built: BuiltDesign, stage: Stage): Changeable[] {
  const kept = new Set([...(design.written.keep ?? []), ...notOfTheChair(design)]);
  const { units } = built.design;
  const used = usedNames(design);
  const possible = alterationsOf(built.design, built.drawn);
  return variablesOf(design)
    .filter(({ name }) => !kept.has(name))
    .flatMap((variable): Changeable[] => {
      const { of } = variable;
      if (of === null)
        return stage === 'drawing' && used.has(variable.name) ? asList(changeableOf(variable, units)) : [];
      if (!('alteration' in of) || !possible.includes(of.alteration)) return [];
      if (stage === 'drawing' && isDrawnByName(of.alteration, design)) return [];
      const reach = reachOf(of.alteration, stage);
      return reach === null ? [] : asList(changesWithin(variable, asCut(reach, variable), units));
    });
}

/** Who sits in it, how, where, and what is asked for are given: dimensions that those are made of are not changed to fit. */
function notOfTheChair({ written, dimensions }: Design): string[] {
  const { sitters, child, floor, room, loads, limits } = written;
  const used = new Set(namesWithin([sitters, child, floor, room, loads, limits]));
  // Each stands after those it is made of.
  for (const { name, expression } of dimensions.toReversed())
    if (used.has(name)) for (const other of expression.names) used.add(other);
  return [...used];
}

const asList = <T>(one: T | null): T[] => (one === null ? [] : [one]);

/** Whether a named dimension already stands for it: then that is what a maker changes. */
function isDrawnByName(name: AlterationName, { written }: Design): boolean {
  const words = written.parts.flatMap(({ outline }) =>
    [outline].flat().flatMap(({ rocker }) => rocker ?? []),
  );
  const values = words.flatMap(({ radius, tail, nose }): readonly Value[] => {
    if (name === 'tail-end') return [tail];
    if (name === 'nose-end') return [nose];
    return name === 'rocker-radius' ? [radius].flat().map((one) => ('radius' in one ? one.radius : one)) : [];
  });
  return values.some(({ quantity }) => quantity.names.length > 0);
}

/** Counted from what the design states; null: not one whole step either way. */
function changesWithin(variable: Variable, [least, greatest]: Reach, units: LengthUnit): Changeable | null {
  const step = makersStep(variable, units);
  const from = Math.round(variable.stated / step);
  const [first, last] = wholeSteps(least, greatest, step);
  const [down, up] = [Math.min(0, first - from), Math.max(0, last - from)];
  return down === 0 && up === 0 ? null : { variable, step, from, least: down, greatest: up };
}

/** What is only shortened, once it is cut, is never less short than it already is. */
const asCut = ([least, greatest]: Reach, { stated }: Variable): Reach => [
  least,
  greatest === 0 ? Math.min(stated, greatest) : greatest,
];

/** How far a named dimension may be changed while it is only drawn, whole steps; null: it is none to change. */
function changeableOf(variable: Variable, units: LengthUnit): Changeable | null {
  const kind = kindOfDimension(variable.dimension);
  if (kind === null || !(kind in fromNothing)) return null;
  const { stated } = variable;
  const nothing = fromNothing[kind as keyof typeof fromNothing];
  const [less, more] =
    stated === 0 ? [nothing, nothing] : [shares.less * Math.abs(stated), shares.more * Math.abs(stated)];
  return changesWithin(
    variable,
    stated < 0 ? [stated - more, stated + less] : [stated - less, stated + more],
    units,
  );
}

export const valueAfter = ({ from, step }: Changeable, steps: number): number => (from + steps) * step;
