import { describe, expect, it } from 'vitest';
import { circularSegment } from '../../src/geometry/circular-segment.js';
import { segmentArea } from '../oracles/plane-areas.js';

const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);

describe('a segment of the unit circle', () => {
  it.each([1, 1.5, Math.PI / 2, 2, 2.5, 3, Math.PI])('of half angle %f agrees with the handbook', (alpha) => {
    const { area, height, alongChord, squareToChord } = circularSegment(alpha);
    const expected = segmentArea(1, alpha);
    expect(relative(area, expected.area)).toBeLessThan(1e-13);
    expect(Math.abs(height + Math.cos(alpha) - expected.centroid.x)).toBeLessThan(1e-13);
    expect(relative(alongChord + squareToChord, expected.polar)).toBeLessThan(1e-12);
  });

  it.each([1e-1, 1e-2, 1e-4, 1e-8])('of half angle %f keeps its digits where the arc is shallow', (alpha) => {
    // Taylor's series of the handbook's forms; the next terms are below alpha^4.
    const { area, height, alongChord } = circularSegment(alpha);
    const next = Math.max(1e-14, alpha ** 4);
    expect(relative(area, (2 / 3) * alpha ** 3 * (1 - alpha ** 2 / 5))).toBeLessThan(next);
    expect(relative(alongChord, (2 / 15) * alpha ** 5 * (1 - (10 / 21) * alpha ** 2))).toBeLessThan(next);
    // A parabola's centroid lies 2/5 of its height alpha²/2 up; the next term is of order alpha².
    expect(relative(height, alpha ** 2 / 5)).toBeLessThan(Math.max(1e-14, alpha ** 2));
  });

  it('refuses what is no segment', () => {
    expect(() => circularSegment(0)).toThrow(RangeError);
    expect(() => circularSegment(NaN)).toThrow(RangeError);
    expect(() => circularSegment(3.2)).toThrow('3.2 rad');
  });
});
