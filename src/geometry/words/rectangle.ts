/** `rectangle: { from, to }`: two opposite corners, sides level and plumb. */
import { built, millimetres, type Built, type Flaw } from '../flaw.js';
import { polygon, type Loop } from '../piece.js';
import { samePlace, type Point } from '../point.js';

export interface RectangleWord {
  readonly from: Point;
  readonly to: Point;
}

export function rectangle({ from, to }: RectangleWord): Built<{ boundary: Loop }> {
  const [left, right] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [foot, top] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  return built(
    { 'from x': from.x, 'from y': from.y, 'to x': to.x, 'to y': to.y },
    () => [...noSide('long', right - left), ...noSide('high', top - foot)],
    () => ({
      boundary: polygon([
        { x: left, y: foot },
        { x: right, y: foot },
        { x: right, y: top },
        { x: left, y: top },
      ]),
    }),
  );
}

function noSide(extent: string, length: number): Flaw[] {
  if (length > samePlace) return [];
  const hint = '`from` and `to` are opposite corners';
  return [{ expected: 'a rectangle with two sides', found: `${millimetres(length)} ${extent}`, hint }];
}
