import { describe, expect, it } from 'vitest';
import { profileOf } from '../../src/geometry/profile.js';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { runningSurface } from '../../src/geometry/running-surface.js';
import { surfaceShape } from '../../src/geometry/surface-shape.js';
import type { Point } from '../../src/geometry/point.js';
import { runner, type Step } from '../rolling/runners.js';

const degree = Math.PI / 180;

const shapeOf = (outline: Loop, stated: readonly [Point, Point] | null = null) => {
  const profile = profileOf([[outline]]);
  return surfaceShape(
    profile,
    runningSurface(profile, () => stated),
  );
};
const shapeOfSteps = (steps: readonly Step[], nose: number) => shapeOf(runner(steps, nose).outline);
const arc = (radius: number, length: number): Step => ({ radius, turn: length / radius });

describe('a plain runner', () => {
  it('has no flat, no corner, no bump', () => {
    expect(shapeOfSteps([{ radius: 1, turn: 0.6 }], -0.3)).toEqual({
      flatLongest: 0,
      sharpestCorner: 0,
      radiusJump: 0,
    });
  });
});

describe('flats', () => {
  it('the longest on the running surface counts', () => {
    const steps: Step[] = [arc(1, 0.2), { flat: 0.012 }, arc(1, 0.2), { flat: 0.038 }, arc(1, 0.2)];
    expect(shapeOfSteps(steps, -0.3).flatLongest).toBeCloseTo(0.038, 12);
  });

  it('a flat past the ends does not, a part of one up to a stated end does', () => {
    const { outline, ends } = runner([arc(1, 0.3), { corner: 0.4 }, { flat: 0.3 }, arc(1, 0.1)], -0.2);
    expect(shapeOf(outline).flatLongest).toBe(0);
    expect(shapeOf(outline, [ends.nose, ends.tail]).flatLongest).toBeCloseTo(0.3, 9);
    const level = runner([{ flat: 0.3 }, arc(1, 0.3)], 0);
    const from = { x: level.ends.nose.x - 0.1, y: level.ends.nose.y };
    expect(shapeOf(level.outline, [from, level.ends.tail]).flatLongest).toBeCloseTo(0.2, 9);
  });

  it('the base of a box is one', () => {
    const box = polygon([
      { x: 0, y: 0 },
      { x: 0.5, y: 0 },
      { x: 0.5, y: 1 },
      { x: 0, y: 1 },
    ]);
    expect(shapeOf(box)).toEqual({ flatLongest: 0.5, sharpestCorner: 0, radiusJump: 0 });
  });

  it('a flat with a point in it that stands out by rounding is one flat', () => {
    for (const turn of [0, 1e-12, 1e-11, 1e-10]) {
      const steps: Step[] = [arc(1, 0.2), { flat: 0.02 }, { corner: turn }, { flat: 0.03 }, arc(1, 0.2)];
      const shape = shapeOfSteps(steps, -0.2);
      expect(shape.flatLongest).toBeCloseTo(0.05, 12);
      expect(shape.sharpestCorner).toBe(0);
    }
  });
});

describe('corners', () => {
  it('the sharpest that is rolled over counts, not those at the ends', () => {
    const steps: Step[] = [
      arc(1, 0.2),
      { corner: 3 * degree },
      arc(1, 0.2),
      { corner: 7 * degree },
      arc(1, 0.2),
    ];
    expect(shapeOfSteps(steps, -0.3).sharpestCorner).toBeCloseTo(7 * degree, 6);
  });
});

describe('jump of radius', () => {
  it('a single tangent joint of two arcs has none, however different', () => {
    expect(shapeOfSteps([arc(0.5, 0.3), arc(5, 0.3)], -0.3).radiusJump).toBe(0);
  });

  it.each([
    ['a bump', 1, 0.8, 1, 0.04, 0.2],
    ['a hollow', 1, 1.3, 1, 0.04, 0.3],
    ['just within 50 mm', 1, 1.3, 1, 0.0499, 0.3],
    ['just beyond 50 mm', 1, 1.3, 1, 0.0501, 0],
    ['the smaller of its two sides', 1, 1.5, 1.25, 0.04, 0.2],
    ['steps that go on the same way', 1, 1.2, 1.5, 0.04, 0],
  ])('%s', (_, before, here, after, length, jump) => {
    const { radiusJump } = shapeOfSteps([arc(before, 0.3), arc(here, length), arc(after, 0.3)], -0.25);
    expect(radiusJump).toBeCloseTo(jump, 9);
  });

  it('a bump in two steps is seen as well', () => {
    const steps = [arc(1, 0.3), arc(1.2, 0.02), arc(1.5, 0.02), arc(1, 0.3)];
    // 1.5 over 1 before the first step and after the last: half as much again.
    expect(shapeOfSteps(steps, -0.25).radiusJump).toBeCloseTo(0.5, 9);
  });

  it('flats and corners between do not hide it', () => {
    const steps: Step[] = [arc(1, 0.3), { flat: 0.005 }, arc(0.7, 0.02), { corner: degree }, arc(1, 0.3)];
    expect(shapeOfSteps(steps, -0.25).radiusJump).toBeCloseTo(0.3, 9);
  });

  it('past the ends does not count', () => {
    const steps: Step[] = [arc(1, 0.3), { corner: 0.5 }, arc(0.7, 0.02), arc(1, 0.1)];
    expect(shapeOfSteps(steps, -0.25).radiusJump).toBe(0);
  });

  it('of many short arcs is found in a moment', () => {
    const steps = Array.from({ length: 2000 }, (_, i) => arc(i % 2 === 0 ? 1 : 1.01, 0.0004));
    expect(shapeOfSteps(steps, -0.4).radiusJump).toBeCloseTo(0.01, 9);
  });
});
