/** Gaps against closed forms, to the twentieth of a millimetre that they promise. */
import { describe, expect, it } from 'vitest';
import { gapBetween, silhouetteOf, type Silhouette } from '../../src/geometry/gap.js';
import type { Loop } from '../../src/geometry/piece.js';
import { touching } from '../../src/geometry/point.js';
import { circle } from '../../src/geometry/words/circle.js';
import { rectangle } from '../../src/geometry/words/rectangle.js';

const shape = (made: { ok: true; boundary: Loop } | { ok: false }): Silhouette => {
  if (!made.ok) throw new Error('no outline');
  return silhouetteOf([{ boundary: made.boundary, holes: [] }]);
};
const disc = (x: number, y: number, radius: number) => shape(circle({ centre: { x, y }, radius }));
const box = (left: number, foot: number, right: number, top: number) =>
  shape(rectangle({ from: { x: left, y: foot }, to: { x: right, y: top } }));
const far = 1;

describe('the gap between', () => {
  it('two discs is the way between centres less both radii', () => {
    const gap = gapBetween(disc(0, 0, 0.1), disc(0.3, 0.4, 0.2), far);
    expect(Math.abs(gap - (0.5 - 0.3))).toBeLessThan(2 * touching);
  });

  it('a disc and a box, over a side and over a corner', () => {
    expect(Math.abs(gapBetween(disc(0.5, 0.3, 0.1), box(0, 0, 1, 0.1), far) - 0.1)).toBeLessThan(touching);
    expect(Math.abs(gapBetween(disc(1.3, 0.5, 0.1), box(0, 0, 1, 0.1), far) - 0.4)).toBeLessThan(touching);
  });

  it('boxes side by side, and corner to corner', () => {
    expect(gapBetween(box(0, 0, 1, 1), box(1.005, 0, 2, 1), far)).toBeCloseTo(0.005, 12);
    expect(gapBetween(box(0, 0, 1, 1), box(1.003, 1.004, 2, 2), far)).toBeCloseTo(0.005, 12);
  });

  it.each([
    ['that touch', box(0, 0, 1, 1), box(1, 0, 2, 1)],
    ['that cross', box(0, 0, 1, 1), box(0.4, -1, 0.6, 2)],
    ['one inside the other', box(0, 0, 1, 1), disc(0.5, 0.5, 0.1)],
  ])('shapes %s is none', (_, a, b) => {
    expect(gapBetween(a, b, far)).toBe(0);
    expect(gapBetween(b, a, far)).toBe(0);
  });

  it('is not worked out beyond what is asked', () => {
    expect(gapBetween(box(0, 0, 1, 1), box(1.5, 0, 2, 1), 0.01)).toBe(0.01);
  });
});
