import { describe, expect, it } from 'vitest';
import type { AreaMoments } from '../../src/geometry/area-moments.js';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { distance } from '../../src/geometry/point.js';
import { finePolygon } from './fine-polygon.js';
import * as handbook from './plane-areas.js';

const { PI } = Math;
const same = (a: AreaMoments, b: AreaMoments, digits: number): void => {
  expect(a.area).toBeCloseTo(b.area, digits);
  expect(distance(a.centroid, b.centroid)).toBeLessThan(10 ** -digits);
  expect(a.polar).toBeCloseTo(b.polar, digits);
};

describe('the handbook forms hold each other up', () => {
  it('where one shape becomes another', () => {
    same(handbook.segmentArea(0.7, PI), handbook.ellipseArea(0.7, 0.7), 12);
    same(handbook.sectorArea(0.7, PI), handbook.ellipseArea(0.7, 0.7), 12);
    same(handbook.annularSector(0.7, 0.2, PI), handbook.annulusArea(0.7, 0.2), 12);
    same(handbook.annularSector(0.7, 0, 0.6), handbook.sectorArea(0.7, 0.6), 12);
    const { area, centroid, polar } = handbook.halfDisc(0.7);
    same(handbook.segmentArea(0.7, PI / 2), { area, centroid: { x: centroid.y, y: 0 }, polar }, 12);
    same(handbook.quarterEllipse(1, 1), turned(handbook.sectorArea(1, PI / 4), PI / 4), 12);
  });

  it('where two make a third: a sector is its segment and a triangle', () => {
    const [r, alpha] = [1.3, 0.8];
    const [sector, segment] = [handbook.sectorArea(r, alpha), handbook.segmentArea(r, alpha)];
    const [height, half] = [r * Math.cos(alpha), r * Math.sin(alpha)];
    const area = height * half;
    expect(sector.area).toBeCloseTo(segment.area + area, 12);
    const first = segment.area * segment.centroid.x + (area * 2 * height) / 3;
    expect(sector.area * sector.centroid.x).toBeCloseTo(first, 12);
  });

  it('a flat parabola is nearly a segment, a square four right triangles', () => {
    const [r, alpha] = [10, 0.01];
    const rise = r * (1 - Math.cos(alpha));
    const parabola = handbook.parabolicSegment(r * Math.sin(alpha), rise);
    expect(handbook.segmentArea(r, alpha).area / parabola.area).toBeCloseTo(1, 4);
    const { area, polar, centroid } = handbook.rightTriangle(1, 1);
    const whole = handbook.rectangleArea(Math.SQRT2, Math.SQRT2);
    expect(4 * area).toBeCloseTo(whole.area, 12);
    expect(4 * (polar + area * (centroid.x ** 2 + centroid.y ** 2))).toBeCloseTo(whole.polar, 12);
  });
});

function turned({ area, centroid, polar }: AreaMoments, angle: number): AreaMoments {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const { x, y } = centroid;
  return { area, centroid: { x: cos * x - sin * y, y: sin * x + cos * y }, polar };
}

describe('the fine polygon', () => {
  it('of straight pieces is exact', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 0.5, y: 0 },
      { x: 0.5, y: 0.2 },
      { x: 0, y: 0.2 },
    ];
    const found = finePolygon(polygon(corners), 7);
    same(found, handbook.rectangleArea(0.5, 0.2), 15);
    expect(found.areaError).toBe(0);
  });

  it('of a circle is the regular polygon, n sin(2π/n) r² / 2, short by less than it says', () => {
    const circle: Loop = [{ kind: 'arc', centre: { x: 1, y: 2 }, radius: 0.5, start: 0.3, sweep: 2 * PI }];
    for (const count of [12, 100, 1000]) {
      const { area, areaError } = finePolygon(circle, count);
      expect(area).toBeCloseTo((count / 2) * Math.sin((2 * PI) / count) * 0.25, 13);
      expect(PI * 0.25 - area).toBeLessThan(areaError);
      expect(PI * 0.25 - area).toBeGreaterThan(areaError / 10);
    }
  });
});
