/** A written quantity, read as one thing: 42, 1 3/4 in, 5' 6-1/2", 7 lb 4 oz. */
import { readCompound } from './compound.js';
import { dimensionOf, type Dimension } from './dimension.js';
import { hasUnit, readMeasure, type MeasureWithUnit } from './measure.js';
import { refuse } from './reading.js';
import { matchAt, shown, vulgarFraction } from './source-text.js';
import { readPlainNumber, refuseUnclearDash, type WrittenNumber } from './written-number.js';
import { readUnit } from './written-unit.js';

export interface Literal {
  readonly end: number;
  /** SI; as it stands when there is no unit. */
  readonly value: number;
  readonly dimension: Dimension;
  /** How the number was written when it has no unit; null when it has one. */
  readonly bare: WrittenNumber['form'] | null;
}

/** The literal at the offset; null when no number starts there. */
export function readLiteral(source: string, at: number): Literal | null {
  const first = readMeasure(source, at);
  if (!first) return null;
  const literal = hasUnit(first) ? quantity(source, first) : bareNumber(source, first.number);
  const isPlain = literal.bare === 'whole' || literal.bare === 'decimal';
  if (!isPlain && matchAt(source, literal.end, /^\s*[\^²³]/u)) {
    const text = source.slice(at, literal.end);
    refuse(at, 'brackets before a power', shown(text), `write \`(${text})^2\``);
  }
  return literal;
}

function quantity(source: string, first: MeasureWithUnit): Literal {
  return { ...readCompound(source, first), dimension: first.unit.dimension, bare: null };
}

function bareNumber(source: string, number: WrittenNumber): Literal {
  refuseUnclearDash(source, number);
  return { end: number.end, value: number.value, dimension: dimensionOf.number, bare: number.form };
}

/** What stands behind `/` or `^`: a plain number with nothing stuck to it; null when no number starts there. */
export function readDivisor(source: string, at: number): Literal | null {
  const number = readPlainNumber(source, at);
  if (!number) {
    refuseStuck(source, at, at);
    return null;
  }
  refuseStuck(source, at, number.end);
  return { end: number.end, value: number.value, dimension: dimensionOf.number, bare: number.form };
}

const fractionHere = new RegExp(`^\\s*${vulgarFraction}`, 'u');
const stuckHere = /^\s*[\p{L}\p{Nd}_.]+/u;

/** `a/2 in` may be (a/2) × 1 in or a/(2 in), `a/1 1/2` may be a/1.5 or a slip: refused. */
export function refuseStuck(source: string, at: number, end: number): void {
  const unitEnd = readUnit(source, end)?.end;
  const stuck = matchAt(source, end, fractionHere) ?? (end > at ? matchAt(source, end, stuckHere) : null);
  const stuckEnd = unitEnd ?? (stuck && end + stuck[0].length);
  if (stuckEnd === null) return;
  const hint = 'use brackets, as in `(a/2) * 1 in`, `a/(2 in)` or `a/(1 1/2)`';
  refuse(at, 'a plain number behind `/` or `^`', shown(source.slice(at, stuckEnd)), hint);
}
