/** What is gathered while the elements of an SVG file are gone through: curves, what is left out, flaws. */
import type { DrawnCurve } from './drawn.js';
import type { AttributeFlaw, SvgElement, Taken } from './svg-element.js';
import { tally, type Tally } from './tally.js';

export interface ElementFlaw extends Partial<AttributeFlaw> {
  readonly element: SvgElement;
  readonly expected: string;
  readonly found: string;
}

export interface Sheet {
  readonly byId: ReadonlyMap<string, SvgElement>;
  readonly curves: DrawnCurve[];
  readonly leftOut: Tally;
  readonly flaws: ElementFlaw[];
  /** Characters read again through `use`. */
  drawnAnew: number;
}

export const emptySheet = (byId: Sheet['byId']): Sheet => ({
  byId,
  curves: [],
  leftOut: tally(),
  flaws: [],
  drawnAnew: 0,
});

/** A file that is wrong throughout says so often enough. */
const flawsTold = 20;

export const saysEnough = ({ flaws }: Sheet): boolean => flaws.length >= flawsTold;

/** What was read; null: it was not, and the sheet says why. */
export function took<T>(read: Taken<T>, sheet: Sheet, element: SvgElement): T | null {
  if (read.ok) return read.value;
  flaw(sheet, element, read.flaws);
  return null;
}

export function flaw(
  sheet: Sheet,
  element: SvgElement,
  flaws: readonly Omit<ElementFlaw, 'element'>[],
): void {
  sheet.flaws.push(...flaws.slice(0, flawsTold).map((one) => ({ ...one, element })));
}

export function omit(sheet: Sheet, { name, line }: SvgElement, why: string, what = name): void {
  sheet.leftOut.add(what, why, line);
}
