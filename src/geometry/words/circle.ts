/** `circle: { centre, radius }`: a full circle as one arc. */
import { built, notPositive, type Built } from '../flaw.js';
import { fullTurn } from '../lean.js';
import type { Loop } from '../piece.js';
import type { Point } from '../point.js';

export interface CircleWord {
  readonly centre: Point;
  readonly radius: number;
}

export function circle({ centre, radius }: CircleWord): Built<{ boundary: Loop }> {
  return built(
    { 'centre x': centre.x, 'centre y': centre.y, radius },
    () => notPositive({ radius }),
    () => ({ boundary: [{ kind: 'arc', centre, radius, start: 0, sweep: fullTurn }] }),
  );
}
