/** What the tests of the SVG reader ask of what it read: closed outlines by meeting ends, box, areas. */
import { readSvg } from '../../../src/drawing/read/svg.js';
import type { Drawn, DrawingFlaw } from '../../../src/drawing/read/drawn.js';
import { signedArea } from '../../../src/geometry/area-moments.js';
import { endOf, pointOn, startOf, type Piece } from '../../../src/geometry/piece.js';
import { distance } from '../../../src/geometry/point.js';

export const svg = (inside: string, attributes = 'viewBox="0 0 100 100"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:ink="urn:ink" ${attributes}>${inside}</svg>`;

export function drawn(text: string): Drawn {
  const read = readSvg(text);
  if (!read.ok) throw new Error(JSON.stringify(read.flaws));
  return read.drawn;
}

export function flawsOf(text: string): readonly DrawingFlaw[] {
  const read = readSvg(text);
  return read.ok ? [] : read.flaws;
}

/** Curves that are closed or come back to their start within a millionth of their size. */
export const outlines = ({ curves }: Drawn): Piece[][] =>
  curves
    .map(({ pieces }) => [...pieces])
    .filter((pieces) => distance(endOf(pieces.at(-1)!), startOf(pieces[0]!)) <= 1e-6 * sizeOf(pieces));

export const areas = (text: string): number[] => outlines(drawn(text)).map((loop) => signedArea(loop));

const sizeOf = (pieces: readonly Piece[]): number => {
  const [left, top, right, foot] = boxOf(pieces);
  return Math.hypot(right - left, foot - top);
};

/** Left, top, right, foot, from places along every piece: low by no more than a millionth of a piece’s size. */
export function boxOf(pieces: readonly Piece[]): [number, number, number, number] {
  const box: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const piece of pieces)
    for (let i = 0; i <= 2000; i++) {
      const { x, y } = pointOn(piece, i / 2000);
      box[0] = Math.min(box[0], x);
      box[1] = Math.min(box[1], y);
      box[2] = Math.max(box[2], x);
      box[3] = Math.max(box[3], y);
    }
  return box;
}

/** Rounding of sums left out. */
export const boxIn = (text: string): number[] =>
  boxOf(drawn(text).curves.flatMap(({ pieces }) => pieces)).map((side) => Number(side.toFixed(12)) + 0);
