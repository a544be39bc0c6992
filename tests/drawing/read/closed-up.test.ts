/** Ends that nearly meet: nothing is put between them that the floor could feel. */
import { describe, expect, it } from 'vitest';
import { closedUp } from '../../../src/drawing/read/closed-up.js';
import { endOf, startOf, type Arc, type Loop, type Piece } from '../../../src/geometry/piece.js';
import { distance } from '../../../src/geometry/point.js';

const quarter = (start: number, x: number): Arc => ({
  kind: 'arc',
  centre: { x, y: 0 },
  radius: 1,
  start,
  sweep: Math.PI / 2,
});
const meets = (loop: Loop): boolean =>
  loop.every((piece, i) => distance(endOf(piece), startOf(loop[(i + 1) % loop.length]!)) <= 1e-9);

describe('closing up', () => {
  it('moves a line’s end to what it nearly meets', () => {
    const arc = quarter(0, 0);
    const pieces: Piece[] = [
      arc,
      { kind: 'line', from: { x: 1e-5, y: 1.00002 }, to: { x: -1e-5, y: 0 } },
      { kind: 'line', from: { x: 0, y: 1e-5 }, to: { x: 1.00001, y: 0 } },
    ];
    const loop = closedUp(pieces);
    expect(loop.map(({ kind }) => kind)).toEqual(['arc', 'line', 'line']);
    expect(loop[0]).toBe(arc);
    expect(meets(loop)).toBe(true);
  });

  it('turns and stretches a curve by as little as it takes', () => {
    const off = 3e-6;
    const loop = closedUp([0, 1, 2, 3].map((i) => quarter((i * Math.PI) / 2, i === 1 ? off : 0)));
    expect(loop).toHaveLength(4);
    expect(meets(loop)).toBe(true);
    for (const piece of loop) expect(Math.abs((piece as Arc).radius - 1)).toBeLessThan(2 * off);
  });

  it('puts a line across what is open by more than that', () => {
    const loop = closedUp([0, 1, 2, 3].map((i) => quarter((i * Math.PI) / 2, i === 1 ? 0.001 : 0)));
    expect(loop.map(({ kind }) => kind)).toEqual(['arc', 'line', 'arc', 'line', 'arc', 'arc']);
    expect(meets(loop)).toBe(true);
  });
});
