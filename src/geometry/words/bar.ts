/** `bar: { from, to, width }`: a straight stick with square ends; from and to are the middles of its ends. */
import { built, millimetres, notPositive, type Built, type Flaw } from '../flaw.js';
import { polygon, type Loop } from '../piece.js';
import { distance, minus, plus, samePlace, times, type Point } from '../point.js';

export interface BarWord {
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
}

export function bar({ from, to, width }: BarWord): Built<{ boundary: Loop }> {
  const length = distance(from, to);
  return built(
    { 'from x': from.x, 'from y': from.y, 'to x': to.x, 'to y': to.y, width },
    () => [...noLength(length), ...notPositive({ width })],
    () => {
      const along = minus(to, from);
      const left = times({ x: -along.y, y: along.x }, width / (2 * length));
      return { boundary: polygon([minus(from, left), minus(to, left), plus(to, left), plus(from, left)]) };
    },
  );
}

function noLength(length: number): Flaw[] {
  if (length > samePlace) return [];
  return [{ expected: 'a bar with its ends apart', found: `a length of ${millimetres(length)}` }];
}
