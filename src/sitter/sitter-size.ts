/** The size of a sitter: what the design says, and what tables say where it does not. */
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import { massAtPercentile, percentileSource, printedStatures, statureAtPercentile } from './percentiles.js';
import type { Body } from './segment-table.js';
import { measured, stated, type Basis, type Source } from './source.js';

/** A sitter as a design states him or her; null: not stated. */
export interface Sitter {
  readonly body: Body;
  readonly stature: number | null;
  readonly mass: number | null;
  readonly percentile: number | null;
  readonly measured: Readonly<Record<BodyMeasure, number | null>>;
}

export type BodyMeasure = 'kneeHollow' | 'buttockToKneeHollow' | 'elbowAboveSeat';

/** Bare body: no shoes. */
export interface SitterSize extends Readonly<Record<'stature' | 'mass' | BodyMeasure, number>> {
  readonly body: Body;
  readonly basis: Readonly<Record<'stature' | 'mass' | BodyMeasure, Basis>>;
}

export const ratioSource: Source = {
  publication:
    'ANSUR II 2012: means of popliteal height, buttock-popliteal length, elbow rest height over mean stature',
  mark: 'worked out here',
};

const ratioToStature = {
  female: { kneeHollow: 0.2384, buttockToKneeHollow: 0.2979, elbowAboveSeat: 0.1427 },
  male: { kneeHollow: 0.2447, buttockToKneeHollow: 0.2864, elbowAboveSeat: 0.1395 },
} as const;

interface Sized {
  readonly value: number;
  readonly basis: Basis;
}

/** @throws RangeError when a stated size is not a positive number */
export function sitterSize(sitter: Sitter): OrMissing<SitterSize> {
  const stature = statureOrMass(sitter, 'stature');
  if (isMissing(stature)) return stature;
  const mass = statureOrMass(sitter, 'mass');
  if (isMissing(mass)) return mass;
  const lengthOf = (name: BodyMeasure) => bodyMeasure(sitter, name, stature.value);
  const sized = {
    stature,
    mass,
    kneeHollow: lengthOf('kneeHollow'),
    buttockToKneeHollow: lengthOf('buttockToKneeHollow'),
    elbowAboveSeat: lengthOf('elbowAboveSeat'),
  };
  return {
    body: sitter.body,
    ...eachOf(sized, ({ value }) => value),
    basis: eachOf(sized, ({ basis }) => basis),
  };
}

function eachOf<Name extends string, T>(
  sized: Readonly<Record<Name, Sized>>,
  read: (size: Sized) => T,
): Record<Name, T> {
  const entries = Object.entries<Sized>(sized).map(([name, size]) => [name, read(size)]);
  return Object.fromEntries(entries) as Record<Name, T>;
}

/** A percentile gives each of the two that is not stated its own. */
function statureOrMass({ body, percentile, ...sitter }: Sitter, name: 'stature' | 'mass'): OrMissing<Sized> {
  const own = sitter[name];
  if (own !== null) return { value: positive(name, own), basis: stated };
  if (percentile === null) return missing(`the sitter’s ${name} is not stated, nor a percentile`);
  const value = (name === 'stature' ? statureAtPercentile : massAtPercentile)(body, percentile);
  if (isMissing(value)) return value;
  const says = `percentile ${percentile} of ${body} ${name}: ${percentileSource.publication}`;
  return { value, basis: { from: 'percentile', says } };
}

function bodyMeasure({ body, measured: tape }: Sitter, name: BodyMeasure, stature: number): Sized {
  const own = tape[name];
  if (own !== null) return { value: positive(name, own), basis: measured };
  const ratio = ratioToStature[body][name];
  const says = `stature × ${ratio}, ${body}: ${ratioSource.publication}${stretchOf(body, stature)}`;
  return { value: ratio * stature, basis: { from: 'ratio', says } };
}

/** Children above all: they are given the proportions of grown people. */
function stretchOf(body: Body, stature: number): string {
  const { least, greatest } = printedStatures(body);
  if (stature >= least && stature <= greatest) return '';
  return `; a stretch: proportions of grown people of ${least} to ${greatest} m`;
}

function positive(name: string, value: number): number {
  if (value > 0 && value < Infinity) return value;
  throw new RangeError(`sitterSize: ${name} ${value}`);
}
