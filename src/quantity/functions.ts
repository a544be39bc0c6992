/** The functions an expression may use, each with what it takes and what it makes. */
import { dimensionOf, isPure, powerOfDimension, sameDimension, type Dimension } from './dimension.js';

export interface Fn {
  /** How many values it takes. */
  readonly least: number;
  readonly most: number;
  /** What it takes, in words. */
  readonly takes: string;
  /** What it makes of quantities of these dimensions; null when it does not take them. */
  readonly dimension: (of: readonly Dimension[]) => Dimension | null;
  readonly value: (...values: number[]) => number;
}

const { angle, number } = dimensionOf;
const isAngle = (of: Dimension) => isPure(of) || sameDimension(of, angle);
const alike = (of: readonly Dimension[]) => of.every((one) => sameDimension(one, of[0]!));

const ofAngle = (value: (angle: number) => number): Fn => ({
  least: 1,
  most: 1,
  takes: 'an angle',
  dimension: ([of]) => (isAngle(of!) ? number : null),
  value,
});
const toAngle = (value: (ratio: number) => number): Fn => ({
  least: 1,
  most: 1,
  takes: 'a pure number',
  dimension: ([of]) => (isPure(of!) ? angle : null),
  value,
});
const ofLike = (least: number, most: number, value: (...values: number[]) => number): Fn => ({
  least,
  most,
  takes: 'quantities of one kind',
  dimension: (of) => (alike(of) ? of[0]! : null),
  value,
});

/** More values than this in one list are a slip, not a design. */
const longestList = 16;

export const functions: ReadonlyMap<string, Fn> = new Map(
  Object.entries({
    sqrt: {
      least: 1,
      most: 1,
      takes: 'any quantity',
      dimension: ([of]) => powerOfDimension(of!, 1 / 2),
      value: Math.sqrt,
    },
    abs: ofLike(1, 1, Math.abs),
    sin: ofAngle(Math.sin),
    cos: ofAngle(Math.cos),
    tan: ofAngle(Math.tan),
    asin: toAngle(Math.asin),
    acos: toAngle(Math.acos),
    atan: toAngle(Math.atan),
    atan2: { ...ofLike(2, 2, Math.atan2), dimension: (of) => (alike(of) ? angle : null) },
    hypot: ofLike(2, longestList, Math.hypot),
    min: ofLike(1, longestList, Math.min),
    max: ofLike(1, longestList, Math.max),
  } satisfies Record<string, Fn>),
);
export const functionNames: readonly string[] = [...functions.keys()];
