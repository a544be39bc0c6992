import { describe, expect, it } from 'vitest';
import { monotoneChain, perimeterOf, uniformPolygon } from './monotone-chain.js';

const rectangle = [
  { x: 1, y: 1 },
  { x: 4, y: 1 },
  { x: 4, y: 3 },
  { x: 1, y: 3 },
];

describe('monotone chain', () => {
  it('keeps the corners of a rectangle and nothing on its edges or inside, counter-clockwise', () => {
    const more = [...rectangle, { x: 2, y: 1 }, { x: 4, y: 2 }, { x: 2.5, y: 2.2 }, { x: 1, y: 1 }];
    expect(monotoneChain(more.toReversed())).toEqual(rectangle);
    expect(perimeterOf(rectangle)).toBe(10);
  });

  // Handbook: centroid in the middle, k² = (b² + h²)/12.
  it('gives the centroid and the radius of gyration of a uniform rectangle', () => {
    const { centre, gyration2 } = uniformPolygon(rectangle);
    expect(centre.x).toBeCloseTo(2.5, 14);
    expect(centre.y).toBeCloseTo(2, 14);
    expect(gyration2).toBeCloseTo((3 ** 2 + 2 ** 2) / 12, 14);
  });
});
