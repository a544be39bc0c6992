/**
 * S(θ) by brute force: the largest p·d(θ), d = (-sin θ, -cos θ), over the ends of every piece and over the lowest
 * point of every arc that has it. Nothing is kept from one θ to the next.
 */
import { endOf, startOf, type Arc, type Loop } from '../../src/geometry/piece.js';
import { dot, type Point } from '../../src/geometry/point.js';

export const downAt = (lean: number): Point => ({ x: -Math.sin(lean), y: -Math.cos(lean) });

export function bruteSupport(bodies: readonly (readonly Loop[])[]): (lean: number) => number {
  const pieces = bodies.flat(2).map((piece) => ({ piece, from: startOf(piece), to: endOf(piece) }));
  return (lean) => {
    const down = downAt(lean);
    const direction = Math.atan2(down.y, down.x);
    let lowest = -Infinity;
    for (const { piece, from, to } of pieces) {
      lowest = Math.max(lowest, dot(from, down), dot(to, down));
      if (piece.kind === 'arc' && holds(piece, direction))
        lowest = Math.max(lowest, dot(piece.centre, down) + piece.radius);
    }
    return lowest;
  };
}

/** Whether the arc has a point in this direction from its centre. */
function holds({ start, sweep }: Arc, direction: number): boolean {
  const turned = sweep > 0 ? direction - start : start - direction;
  const positive = turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI));
  return positive <= Math.abs(sweep);
}

/** Size of the bodies for relative errors: the largest coordinate sum, |x| + |y| + radius. */
export const sizeOf = (bodies: readonly (readonly Loop[])[]): number =>
  Math.max(
    ...bodies.flat(2).map((piece) => {
      const { x, y } = piece.kind === 'arc' ? piece.centre : startOf(piece);
      return Math.abs(x) + Math.abs(y) + (piece.kind === 'arc' ? piece.radius : 0);
    }),
  );
