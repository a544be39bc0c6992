/** What is wrong with a word or an outline: data, not an exception. Lengths are told in millimetres. */
import type { Point } from './point.js';

export interface Flaw {
  readonly expected: string;
  readonly found: string;
  readonly hint?: string;
  /** Where in path data, characters from 0. */
  readonly at?: number;
}

export type Built<T> = ({ readonly ok: true } & T) | { readonly ok: false; readonly flaws: readonly Flaw[] };

/** What a word builds, unless its numbers are not finite (an overflow in an expression, say) or it has other flaws. */
export function built<T>(
  numbers: Readonly<Record<string, number>>,
  otherFlaws: () => readonly Flaw[],
  build: () => T,
): Built<T> {
  const notFinite = Object.entries(numbers)
    .filter(([, value]) => !Number.isFinite(value))
    .map(([name, value]) => ({ expected: `a finite number for ${name}`, found: String(value) }));
  const flaws = notFinite.length > 0 ? notFinite : otherFlaws();
  return flaws.length > 0 ? { ok: false, flaws } : { ok: true, ...build() };
}

/** Five digits tell a micrometre in a handbreadth. */
const inMillimetres = (length: number): number => Number((1000 * length).toPrecision(5));

export const millimetres = (length: number): string => `${inMillimetres(length)} mm`;

/** `(12.5, 300) mm` in the chair's frame. */
export const placeInMillimetres = ({ x, y }: Point): string =>
  `(${inMillimetres(x)}, ${inMillimetres(y)}) mm`;

/** How a place is told, and whether holes are those of a drawing, found by what lies in what. */
export interface Telling {
  readonly place: (place: Point) => string;
  readonly drawn: boolean;
}

export const inChair: Telling = { place: placeInMillimetres, drawn: false };

/** A flaw for each length that is not more than nothing. */
export const notPositive = (lengths: Readonly<Record<string, number>>): Flaw[] =>
  Object.entries(lengths)
    .filter(([, length]) => !(length > 0))
    .map(([name, length]) => ({ expected: `a ${name} greater than zero`, found: millimetres(length) }));
