import { describe, expect, it } from 'vitest';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { bruteSupport, sizeOf } from './brute-support.js';

const leans = Array.from({ length: 97 }, (_, i) => -7 + i / 7);
const halfDisc: Loop = [
  { kind: 'arc', centre: { x: 2, y: 3 }, radius: 0.5, start: Math.PI, sweep: Math.PI },
  { kind: 'line', from: { x: 2.5, y: 3 }, to: { x: 1.5, y: 3 } },
];

describe('support by brute force', () => {
  // A rectangle 2a × 2b about the origin: S = a |sin θ| + b |cos θ| (textbook).
  it('of a rectangle', () => {
    const corners = [
      { x: 2, y: 1 },
      { x: -2, y: 1 },
      { x: -2, y: -1 },
      { x: 2, y: -1 },
    ];
    for (const lean of leans) {
      const exact = 2 * Math.abs(Math.sin(lean)) + Math.abs(Math.cos(lean));
      expect(bruteSupport([[polygon(corners)]])(lean)).toBeCloseTo(exact, 14);
    }
  });

  // Half disc about c: c·d + r on its round side, c·d + r |sin θ| on its flat one.
  it('of a half disc', () => {
    for (const lean of leans) {
      const centre = -2 * Math.sin(lean) - 3 * Math.cos(lean);
      const exact = centre + 0.5 * (Math.cos(lean) > 0 ? 1 : Math.abs(Math.sin(lean)));
      expect(bruteSupport([[halfDisc]])(lean)).toBeCloseTo(exact, 14);
    }
    expect(sizeOf([[halfDisc]])).toBe(5.5);
  });
});
