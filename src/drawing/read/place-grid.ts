/** Things that lie at places, found again by a place near them: a grid of cells as wide as what counts as near. */
import { distance, type Point } from '../../geometry/point.js';

export interface PlaceGrid<T> {
  readonly add: (at: Point, thing: T) => void;
  /** In the order in which they were put there. */
  readonly near: (at: Point) => T[];
}

/** @param within above 0 */
export function placeGrid<T>(within: number): PlaceGrid<T> {
  const cells = new Map<string, { readonly at: Point; readonly thing: T }[]>();
  const cellOf = ({ x, y }: Point): [number, number] => [Math.floor(x / within), Math.floor(y / within)];
  const around = [-1, 0, 1];
  return {
    add: (at, thing) => {
      const key = cellOf(at).join();
      const cell = cells.get(key);
      if (cell) cell.push({ at, thing });
      else cells.set(key, [{ at, thing }]);
    },
    near: (at) => {
      const [column, row] = cellOf(at);
      return around
        .flatMap((i) => around.flatMap((j) => cells.get([column + i, row + j].join()) ?? []))
        .filter((there) => distance(there.at, at) <= within)
        .map(({ thing }) => thing);
    },
  };
}
