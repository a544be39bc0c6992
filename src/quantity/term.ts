/** A part of an expression with its dimension, and what +, -, *, /, ^ and the functions make of such parts. */
import {
  describeAll,
  dimensionOf,
  isPure,
  powerOfDimension,
  sameDimension,
  timesDimension,
  type Dimension,
} from './dimension.js';
import { functions } from './functions.js';
import { refuse } from './reading.js';
import { shown } from './source-text.js';

export type Values = ReadonlyMap<string, number>;

export interface Term {
  /** Where it begins and ends in the source text. */
  readonly at: number;
  readonly end: number;
  readonly dimension: Dimension;
  /** No name in it: its value is computed once. */
  readonly constant: boolean;
  readonly valueIn: (values: Values) => number;
}
export type Place = Pick<Term, 'at' | 'end'>;

export function constantTerm({ at, end }: Place, value: number, dimension: Dimension): Term {
  return { at, end, dimension, constant: true, valueIn: () => value };
}

export function nameTerm({ at, end }: Place, name: string, dimension: Dimension): Term {
  const valueIn = (values: Values): number => {
    const value = values.get(name);
    if (value === undefined) throw new RangeError(`valueIn: no value for ${name}`);
    return value;
  };
  return { at, end, dimension, constant: false, valueIn };
}

const noValues: Values = new Map();

/** The term made of parts; computed now when every part is constant. */
function combined(parts: readonly Term[], dimension: Dimension, valueIn: Term['valueIn']): Term {
  const place = { at: Math.min(...parts.map(({ at }) => at)), end: Math.max(...parts.map(({ end }) => end)) };
  if (parts.every(({ constant }) => constant)) return constantTerm(place, valueIn(noValues), dimension);
  return { ...place, dimension, constant: false, valueIn };
}

/** The term of a and b, whose values `compute` joins. */
function joined(a: Term, b: Term, dimension: Dimension, compute: (a: number, b: number) => number): Term {
  const [first, second] = [a.valueIn, b.valueIn];
  return combined([a, b], dimension, (values) => compute(first(values), second(values)));
}

export function negative(a: Term): Term {
  const of = a.valueIn;
  return combined([a], a.dimension, (values) => -of(values));
}

export function sum(source: string, a: Term, b: Term): Term {
  requireAlike(source, a, b);
  return joined(a, b, a.dimension, (x, y) => x + y);
}

export function difference(source: string, a: Term, b: Term): Term {
  requireAlike(source, a, b);
  return joined(a, b, a.dimension, (x, y) => x - y);
}

export function product(a: Term, b: Term): Term {
  return joined(a, b, timesDimension(a.dimension, b.dimension), (x, y) => x * y);
}

export function quotient(a: Term, b: Term): Term {
  const dimension = timesDimension(a.dimension, powerOfDimension(b.dimension, -1));
  return joined(a, b, dimension, (x, y) => x / y);
}

/** Volumes and inertias need powers up to 4; a higher one is a slip. */
const highestPower = 4;

export function power(source: string, a: Term, b: Term): Term {
  const written = shown(source.slice(a.at, b.end));
  if (!isPure(b.dimension)) {
    refuse(b.at, 'a pure number as the power', `${describeAll([b.dimension])} in ${written}`);
  }
  const raise = (x: number, y: number): number => x ** y;
  if (isPure(a.dimension)) return joined(a, b, dimensionOf.number, raise);
  const exponent = b.constant ? b.valueIn(noValues) : NaN;
  if (!(Math.abs(exponent) <= highestPower)) {
    refuse(b.at, `a power from -${highestPower} to ${highestPower}, without names`, written);
  }
  return joined(a, b, powerOfDimension(a.dimension, exponent), raise);
}

export function applied(name: string, args: readonly Term[], place: Place): Term {
  const { least, most, takes, dimension, value } = functions.get(name)!;
  if (args.length < least || args.length > most) {
    const wanted = least === most ? `${least}` : `${least} to ${most}`;
    refuse(place.at, `${wanted} ${most === 1 ? 'value' : 'values'} for ${shown(name)}`, `${args.length}`);
  }
  const dimensions = args.map((arg) => arg.dimension);
  const made = dimension(dimensions);
  if (!made) refuse(args[0]!.at, `${takes} for ${shown(name)}`, describeAll(dimensions));
  const of = args.map((arg) => arg.valueIn);
  return { ...combined(args, made, (values) => value(...of.map((valueIn) => valueIn(values)))), ...place };
}

function requireAlike(source: string, a: Term, b: Term): void {
  if (sameDimension(a.dimension, b.dimension)) return;
  const pure = [a, b].find(({ dimension }) => isPure(dimension));
  const hint = pure && `give ${shown(source.slice(pure.at, pure.end))} its unit`;
  const found = `${describeAll([a.dimension, b.dimension])} in ${shown(source.slice(a.at, b.end))}`;
  refuse((pure ?? b).at, 'quantities of one kind on both sides of + or -', found, hint);
}
