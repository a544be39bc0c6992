/** A value of a wanted kind: a length, a mass, an angle … */
import type { Kind } from '../names.js';
import { describeDimension, dimensionOf, isPure, sameDimension, type Dimension } from './dimension.js';
import { compileExpression, type Expression, type NameScope } from './expression.js';
import { readingFrom, readingOf, refuse, type Reading } from './reading.js';
import { readSlope } from './slope.js';
import { refuseLong, shown, skipSpaces, vulgarFraction } from './source-text.js';
import { metresPer, type LengthUnit } from './units.js';

export interface Quantity {
  readonly kind: Kind;
  /** The names it uses; none: it is constant. */
  readonly names: readonly string[];
  /** SI of that kind; may be infinite or NaN. */
  readonly valueIn: (names: ReadonlyMap<string, number>) => number;
}

export interface Want {
  readonly kind: Kind;
  /** What a bare number means where a length is wanted. */
  readonly units: LengthUnit;
}

export function compileQuantity(source: string | number, want: Want, scope: NameScope): Reading<Quantity> {
  return readingOf(() => {
    const text = String(source);
    refuseLong(text);
    const slope = want.kind === 'angle' ? readSlope(text) : null;
    if (slope !== null) return { kind: want.kind, names: [], valueIn: () => slope };
    const expression = readingFrom(0, compileExpression(source, scope));
    return { kind: want.kind, names: expression.names, valueIn: valueOfKind(text, expression, want) };
  });
}

function valueOfKind(source: string, expression: Expression, { kind, units }: Want): Quantity['valueIn'] {
  const { dimension, names, valueIn } = expression;
  if (sameDimension(dimension, dimensionOf[kind])) return valueIn;
  if (kind !== 'length' || !isPure(dimension)) refuseKind(source, dimension, kind);
  const factor = metresPer[units];
  if (names.length > 0) return (values) => valueIn(values) * factor;
  const value = valueIn(new Map()) * factor;
  return () => value;
}

/** Units to offer, the usual one first. */
const usualUnits: Readonly<Record<Kind, readonly string[]>> = {
  number: [],
  length: ['in', 'mm'],
  mass: ['kg', 'lb'],
  time: ['s', 'months'],
  angle: ['deg'],
  force: ['N', 'lbf'],
  energy: ['J'],
  density: ['kg/m3'],
  inertia: ['kg m2'],
};

function refuseKind(source: string, dimension: Dimension, kind: Kind): never {
  const found = `${describeDimension(dimension)}, ${shown(source)}`;
  const hint = kindHint(source.trim(), dimension, kind);
  refuse(skipSpaces(source, 0), describeDimension(dimensionOf[kind]), found, hint);
}

/** 42, 1 3/4, ½: what can be said again with a unit behind it. */
const numberAlone = new RegExp(`^[-+]?(?:[\\d.]+|(?:\\d+[\\s-]*)?(?:\\d+/\\d+|${vulgarFraction}))$`, 'u');

function kindHint(text: string, dimension: Dimension, kind: Kind): string {
  if (kind === 'number') return 'this one has no unit';
  const slope = kind === 'angle' ? ', or a slope such as `1 in 12`' : '';
  if (isPure(dimension) && numberAlone.test(text)) {
    return `write ${usualUnits[kind].map((unit) => `\`${text} ${unit}\``).join(' or ')}${slope}`;
  }
  const withoutAngle: Dimension = [dimension[0], dimension[1], dimension[2], 0];
  if (sameDimension(withoutAngle, dimensionOf[kind])) {
    return 'divide the angle by `1 rad` to make it a pure number';
  }
  const usual = usualUnits[kind].map((unit) => `\`${unit}\``).join(' or ');
  return `${describeDimension(dimensionOf[kind])} has a unit such as ${usual}${slope}`;
}
