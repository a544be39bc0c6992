/**
 * Things that lie at places, found again by a place near them: a grid of cells much wider than what counts as near, so that
 * a look goes beyond its own cell only next to the border.
 */
import { distance, type Point } from '../../geometry/point.js';

export interface PlaceGrid<T> {
  readonly add: (at: Point, thing: T) => void;
  /** The first that was put near it, if any holds. */
  readonly near: (at: Point, holds: (thing: T) => boolean) => T | undefined;
}

interface There<T> {
  readonly at: Point;
  readonly thing: T;
}

/** Of what counts as near. */
const cellWidth = 16;

/** One number of two; two cells that share one are told apart by the distance. */
const cellKey = (column: number, row: number): number =>
  Math.imul(column | 0, 73856093) ^ Math.imul(row | 0, 19349663);

/** @param within above 0 */
export function placeGrid<T>(within: number): PlaceGrid<T> {
  const width = cellWidth * within;
  const cells = new Map<number, There<T>[]>();
  const cellOf = (along: number): number => Math.floor(along / width);
  return {
    add: (at, thing) => {
      const key = cellKey(cellOf(at.x), cellOf(at.y));
      const cell = cells.get(key);
      if (cell) cell.push({ at, thing });
      else cells.set(key, [{ at, thing }]);
    },
    near: (at, holds) => {
      const [left, right] = [cellOf(at.x - within), cellOf(at.x + within)];
      const [foot, top] = [cellOf(at.y - within), cellOf(at.y + within)];
      for (let column = left; column <= right; column++)
        for (let row = foot; row <= top; row++)
          for (const there of cells.get(cellKey(column, row)) ?? [])
            if (distance(there.at, at) <= within && holds(there.thing)) return there.thing;
      return undefined;
    },
  };
}
