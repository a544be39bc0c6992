import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygon, startOf, type Arc, type Loop, type Piece } from '../../src/geometry/piece.js';
import { distance } from '../../src/geometry/point.js';
import { loopContains } from '../../src/geometry/winding.js';
import { places, soundLoops } from '../arbitraries/outlines.js';
import { flattenPoint, flattenPolygon } from '../oracles/flatten-shapes.js';
import { finePolygon } from '../oracles/fine-polygon.js';
import { reversedLoop } from '../oracles/moved-loop.js';

const { PI } = Math;
const origin = { x: 0, y: 0 };
const arc = (radius: number, start: number, sweep: number): Arc => ({
  kind: 'arc',
  centre: origin,
  radius,
  start,
  sweep,
});

describe('a loop contains a point', () => {
  it.each<[string, Loop]>([
    ['one arc', [arc(1, 2, 2 * PI)]],
    ['one arc, clockwise', [arc(1, 2, -2 * PI)]],
    ['two half circles', [arc(1, 0, PI), arc(1, PI, PI)]],
    ['two half circles, chord plumb', [arc(1, PI / 2, PI), arc(1, -PI / 2, PI)]],
    ['a large and a small arc', [arc(1, 0, 5), arc(1, 5, 2 * PI - 5)]],
    ['four quarters', [0, 1, 2, 3].map((quarter) => arc(1, (quarter * PI) / 2, PI / 2))],
  ])('of a circle of %s: inside, and on the lines of its corners', (_, circle) => {
    for (const point of [
      origin,
      { x: 0.5, y: 0 },
      { x: 0, y: -0.5 },
      { x: 0.5, y: 0.5 },
      { x: -0.7, y: 0.7 },
    ]) {
      expect(loopContains(circle, point)).toBe(true);
    }
    for (const point of [
      { x: -2, y: 0 },
      { x: 2, y: 0 },
      { x: -0.8, y: 0.8 },
      { x: -2, y: 1 },
      { x: 0, y: -1.5 },
    ]) {
      expect(loopContains(circle, point)).toBe(false);
    }
  });

  it('of a hollow: an arc that bends in', () => {
    // A square of side 2 whose top edge is a half circle of radius 1 bent down about (0, 1).
    const hollow: Loop = [
      ...polygon([
        { x: 1, y: 1 },
        { x: -1, y: 1 },
        { x: -1, y: -1 },
        { x: 1, y: -1 },
      ]).slice(1),
      { kind: 'arc', centre: { x: 0, y: 1 }, radius: 1, start: 0, sweep: -PI },
    ];
    const inside = [
      { x: 0, y: -0.5 },
      { x: 0.9, y: 0.1 },
      { x: -0.95, y: 0.5 },
    ];
    const outside = [
      { x: 0, y: 0.5 },
      { x: 0, y: 1 },
      { x: 0, y: 0.01 },
      { x: 2, y: -1 },
    ];
    expect(inside.map((point) => loopContains(hollow, point))).toEqual([true, true, true]);
    expect(outside.map((point) => loopContains(hollow, point))).toEqual([false, false, false, false]);
  });

  it('that lies just on the chord of an arc', () => {
    const line = (x: number, y: number, toX: number, toY: number): Piece => ({
      kind: 'line',
      from: { x, y },
      to: { x: toX, y: toY },
    });
    const overLevelChord: Loop = [arc(1, 0, PI), line(-1, 0, -1, -1), line(-1, -1, 1, -1), line(1, -1, 1, 0)];
    const overSlopingChord: Loop = [
      arc(1, 0, PI / 2),
      line(0, 1, -1, 0),
      line(-1, 0, 0, -1),
      line(0, -1, 1, 0),
    ];
    // 3, 4, 5: its ends come out exact, the chord is plumb.
    const overPlumbChord: Loop = [
      arc(5, Math.atan2(-3, 4), 2 * Math.atan2(3, 4)),
      line(4, 3, -4, 3),
      line(-4, 3, -4, -3),
      line(-4, -3, 4, -3),
    ];
    expect(startOf(overPlumbChord[0]!)).toEqual({ x: 4, y: -3 });
    for (const loop of [overPlumbChord, reversedLoop(overPlumbChord)]) {
      expect(loopContains(loop, { x: 4, y: 0 })).toBe(true);
      expect(loopContains(loop, { x: 4, y: -2 })).toBe(true);
    }
    for (const loop of [overLevelChord, reversedLoop(overLevelChord)]) {
      expect(loopContains(loop, origin)).toBe(true);
      expect(loopContains(loop, { x: -0.5, y: 0 })).toBe(true);
    }
    for (const loop of [overSlopingChord, reversedLoop(overSlopingChord)]) {
      expect(loopContains(loop, { x: 0.5, y: 0.5 })).toBe(true);
      expect(loopContains(loop, { x: 0.25, y: 0.75 })).toBe(true);
    }
  });

  it('either way round, as @flatten-js/core finds too', () => {
    fc.assert(
      fc.property(soundLoops, places, (loop, point) => {
        const face = flattenPolygon(loop);
        const at = flattenPoint(point);
        // Its own tolerance is 1e-6: nearer the boundary the two need not agree.
        fc.pre(face.distanceTo(at)[0] > 1e-5);
        expect(loopContains(loop, point)).toBe(face.contains(at));
        expect(loopContains(reversedLoop(loop), point)).toBe(loopContains(loop, point));
      }),
      { numRuns: 300 },
    );
  });

  it('of ellipse arcs and cubics', () => {
    const [a, b] = [0.5, 0.2];
    const ellipse: Loop = [
      {
        kind: 'ellipse-arc',
        centre: origin,
        axisA: { x: a, y: 0 },
        axisB: { x: 0, y: b },
        start: 1,
        sweep: 2 * PI,
      },
    ];
    const share = 1e-5;
    for (let t = 0; t < 6; t += 0.1) {
      const rim = (size: number) => ({ x: a * size * Math.cos(t), y: b * size * Math.sin(t) });
      expect(loopContains(ellipse, rim(1 - share))).toBe(true);
      expect(loopContains(ellipse, rim(1 + share))).toBe(false);
    }
    expect(distance(finePolygon(ellipse, 1000).centroid, origin)).toBeLessThan(1e-12);
  });
});
