/** Layers of a drawing that are no parts: the seat line, the back line, the line of the arms. */
import type { DrawnCurve } from '../drawing/read/drawn.js';
import { joined } from '../drawing/read/joined.js';
import type { Line } from '../geometry/piece.js';
import type { Point } from '../geometry/point.js';

/** The lines of a design with their ends: that of less x or y first. */
export const seatLines = {
  seat: { ends: ['rear', 'front'], along: 'x' },
  back: { ends: ['foot', 'top'], along: 'y' },
  arms: { ends: ['rear', 'front'], along: 'x' },
} as const;

export type SeatLine = keyof typeof seatLines;

export interface LineRead {
  /** What it was read from: `the layer seat`. */
  readonly from: string;
  /** Of less x or y, and the other. */
  readonly ends: readonly [Point, Point];
}

const names: Readonly<Record<string, SeatLine>> = { seat: 'seat', back: 'back', arms: 'arms', arm: 'arms' };

/** `Seat`, `SEAT LINE`, `arm_line`. */
export function lineNamed(layer: string): SeatLine | null {
  const word = layer
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+line$/u, '');
  return Object.hasOwn(names, word) ? names[word]! : null;
}

/** Ends as near as this, metres, are one: of a line that is drawn twice. */
const oneEnd = 1e-6;

/** The one straight line that is drawn, once or twice; null: something else is. @param unit of the curves, metres */
export function onlyLine(curves: readonly DrawnCurve[], unit: number): Line | null {
  const { loops, open } = joined(curves, oneEnd / unit);
  const [only] = open.length === 1 && loops.length === 0 ? open[0]!.pieces : [];
  return only?.kind === 'line' && open[0]!.pieces.length === 1 ? only : null;
}

export function endsOf({ from, to }: Pick<Line, 'from' | 'to'>, line: SeatLine): readonly [Point, Point] {
  const { along } = seatLines[line];
  return from[along] <= to[along] ? [from, to] : [to, from];
}
