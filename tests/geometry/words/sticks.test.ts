import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopMoments, signedArea } from '../../../src/geometry/area-moments.js';
import { distance, midpoint } from '../../../src/geometry/point.js';
import { bar } from '../../../src/geometry/words/bar.js';
import { circle } from '../../../src/geometry/words/circle.js';
import { rectangle } from '../../../src/geometry/words/rectangle.js';
import { places } from '../../arbitraries/outlines.js';
import { said, sound } from './built.js';

const origin = { x: 0, y: 0 };

describe('bar', () => {
  it('is a rectangle of its length and width about its middle, wherever it points', () => {
    fc.assert(
      fc.property(places, places, fc.double({ min: 0.005, max: 0.2, noNaN: true }), (from, to, width) => {
        fc.pre(distance(from, to) > 0.01);
        const { boundary } = sound(bar({ from, to, width }));
        const { area, centroid, polar } = loopMoments(boundary);
        const length = distance(from, to);
        expect(area / (length * width)).toBeCloseTo(1, 12);
        expect(distance(centroid, midpoint(from, to))).toBeLessThan(1e-12);
        expect(polar / ((length * width * (length ** 2 + width ** 2)) / 12)).toBeCloseTo(1, 10);
        expect(signedArea(boundary)).toBeGreaterThan(0);
      }),
    );
  });

  it('of a leg has its ends square', () => {
    const { boundary } = sound(bar({ from: origin, to: { x: 0, y: 0.4 }, width: 0.04 }));
    expect(boundary.map((piece) => piece.kind === 'line' && piece.from)).toEqual([
      { x: 0.02, y: 0 },
      { x: 0.02, y: 0.4 },
      { x: -0.02, y: 0.4 },
      { x: -0.02, y: 0 },
    ]);
  });

  it('of no length, of no width or of no number is a flaw', () => {
    expect(said(bar({ from: origin, to: origin, width: 0.1 }))).toBe(
      'expected a bar with its ends apart, found a length of 0 mm',
    );
    expect(said(bar({ from: origin, to: { x: 1, y: 0 }, width: 0 }))).toBe(
      'expected a width greater than zero, found 0 mm',
    );
    expect(said(bar({ from: origin, to: { x: 1, y: NaN }, width: 1 }))).toBe(
      'expected a finite number for to y, found NaN',
    );
  });
});

describe('rectangle', () => {
  it('takes any two opposite corners and runs counter-clockwise', () => {
    const corners = { left: { x: -0.1, y: 0.3 }, right: { x: 0.4, y: 0.1 } };
    for (const [from, to] of [
      [corners.left, corners.right],
      [corners.right, corners.left],
    ] as const) {
      const { boundary } = sound(rectangle({ from, to }));
      expect(signedArea(boundary)).toBeCloseTo(0.1, 15);
      expect(loopMoments(boundary).centroid.x).toBeCloseTo(0.15, 15);
    }
  });

  it('without a side is a flaw', () => {
    expect(said(rectangle({ from: origin, to: { x: 0.3, y: 0 } }))).toBe(
      'expected a rectangle with two sides, found 0 mm high',
    );
    expect(said(rectangle({ from: origin, to: { x: 0, y: 0 } }))).toContain('0 mm long');
    expect(said(rectangle({ from: origin, to: { x: Infinity, y: 1 } }))).toContain('to x, found Infinity');
  });
});

describe('circle', () => {
  it('is one arc all round', () => {
    const { boundary } = sound(circle({ centre: { x: 0.1, y: 0.2 }, radius: 0.05 }));
    expect(boundary).toHaveLength(1);
    expect(signedArea(boundary)).toBeCloseTo(Math.PI * 0.05 ** 2, 15);
  });

  it('without a radius is a flaw', () => {
    expect(said(circle({ centre: origin, radius: -0.01 }))).toBe(
      'expected a radius greater than zero, found -10 mm',
    );
    expect(said(circle({ centre: origin, radius: NaN }))).toBe(
      'expected a finite number for radius, found NaN',
    );
  });
});
