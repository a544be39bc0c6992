/** A place of a drawing as its program shows it: in its own axes and units. */
import type { Point } from '../../geometry/point.js';

/** A tenth of the least that ends are apart. */
const least = 1e-7;

/** `(12.5, 300) as drawn`. @param unit metres a drawing unit */
export function placeDrawn({ x, y }: Point, unit: number): string {
  const digits = Math.min(12, Math.max(0, Math.ceil(Math.log10(unit / least))));
  const shown = (value: number): number => Number(value.toFixed(digits)) + 0;
  return `(${shown(x)}, ${shown(y)})`;
}
