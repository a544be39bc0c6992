import { describe, expect, it } from 'vitest';
import { loopMoments, signedArea } from '../../../src/geometry/area-moments.js';
import type { Loop } from '../../../src/geometry/piece.js';
import { endOf, startOf } from '../../../src/geometry/piece.js';
import { distance } from '../../../src/geometry/point.js';
import { path } from '../../../src/geometry/words/path.js';
import { rocker } from '../../../src/geometry/words/rocker.js';
import { parabolicSegment } from '../../oracles/plane-areas.js';
import { flawsOf, said, sound } from './built.js';

const inch = 0.0254;
const loopsOf = (data: string, unit = 1): readonly Loop[] => sound(path({ data, unit })).boundaries;
const kinds = (loop: Loop): string[] => loop.map(({ kind }) => kind);

describe('path data', () => {
  it('is read y up, in its unit: the seat board of the contract', () => {
    const [seat] = loopsOf('M -8 14.3 L 9.8 16.2 L 9.8 16.6 L -8 14.7 Z', inch);
    expect(kinds(seat!)).toEqual(['line', 'line', 'line', 'line']);
    // A parallelogram 0.4 in high over 17.8 in, its centre the mean of two opposite corners.
    const { area, centroid } = loopMoments(seat!);
    expect(area / inch ** 2).toBeCloseTo(0.4 * 17.8, 12);
    expect(centroid.x / inch).toBeCloseTo(0.9, 12);
    expect(centroid.y / inch).toBeCloseTo((14.3 + 16.6) / 2, 12);
    expect(signedArea(seat!)).toBeGreaterThan(0);
  });

  it('with sweep flag 1 draws the bottom of a rocker from tail to nose', () => {
    // Radius 5, ends 3 to both sides and so 1 up; top edge radius 4.5, ends 2.7 out and 1.4 up.
    const [drawn] = loopsOf('M -3 1 A 5 5 0 0 1 3 1 L 2.7 1.4 A 4.5 4.5 0 0 0 -2.7 1.4 Z');
    const arcs = [{ radius: 5, until: null }];
    const word = sound(rocker({ arcs, depth: 0.5, nose: 3, tail: 3, at: 0, along: 'level' }));
    expect(kinds(drawn!)).toEqual(['arc', 'line', 'arc', 'line']);
    const [a, b] = [loopMoments(drawn!), loopMoments(word.boundary)];
    expect(a.area).toBeCloseTo(b.area, 12);
    expect(distance(a.centroid, b.centroid)).toBeLessThan(1e-12);
    expect(a.polar).toBeCloseTo(b.polar, 11);
  });

  it('relative, level and plumb commands draw what the absolute ones do', () => {
    expect(loopsOf('m1 2h3v4h-3z')).toEqual(loopsOf('M1 2 H4 V6 H1 Z'));
    expect(loopsOf('M1,2 4,2 4,6-1e0+6z')).toEqual(loopsOf('M1 2 L4 2 L4 6 L-1 6 Z'));
  });

  it('smooth commands mirror the control before', () => {
    const s = 'M 0 0 C 0 1 1 2 2 2 S 4 1 4 0 Z';
    expect(loopsOf(s)).toEqual(loopsOf('M 0 0 C 0 1 1 2 2 2 C 3 2 4 1 4 0 Z'));
    expect(loopsOf('M 0 0 Q 1 2 2 0 T 4 0 V 5 H 0 Z')).toEqual(
      loopsOf('M 0 0 Q 1 2 2 0 Q 3 -2 4 0 V 5 H 0 Z'),
    );
  });

  it('a quadratic is the same parabola as a cubic', () => {
    const [loop] = loopsOf('M 0.4 0 Q 0 0.2 -0.4 0 Z');
    const expected = parabolicSegment(0.4, 0.1);
    expect(kinds(loop!)).toEqual(['cubic', 'line']);
    expect(loopMoments(loop!).area).toBeCloseTo(expected.area, 15);
    expect(loopMoments(loop!).polar).toBeCloseTo(expected.polar, 15);
  });

  it('two half turns make a disc, an ellipse arc with unlike radii an ellipse', () => {
    const [disc] = loopsOf('M 1 0 A 1 1 0 0 1 -1 0 A 1 1 0 0 1 1 0 Z');
    expect(kinds(disc!)).toEqual(['arc', 'arc']);
    expect(loopMoments(disc!).area).toBeCloseTo(Math.PI, 13);
    const [ellipse] = loopsOf('M 2 0 A 2 1 0 0 1 -2 0 A 2 1 0 0 1 2 0 Z');
    expect(kinds(ellipse!)).toEqual(['ellipse-arc', 'ellipse-arc']);
    expect(loopMoments(ellipse!).area).toBeCloseTo(2 * Math.PI, 13);
  });

  it('several subpaths are several loops; after Z drawing goes on from the start', () => {
    const loops = loopsOf('M0 0 H1 V1 Z M 5 5 h1v1z h-1v-1z');
    expect(loops.map((loop) => startOf(loop[0]!))).toEqual([
      { x: 0, y: 0 },
      { x: 5, y: 5 },
      { x: 5, y: 5 },
    ]);
    expect(loops.map((loop) => Math.abs(signedArea(loop)))).toEqual([0.5, 0.5, 0.5]);
  });

  it('drops lines of no length and a Z that draws nothing', () => {
    expect(kinds(loopsOf('M0 0 H1 H1 V1 H0 L0 0 Z')[0]!)).toHaveLength(4);
    const rounded = loopsOf('m0.1 0.1 h0.2 v0.1 h-0.1 h-0.1 v-0.1 z')[0]!;
    expect(kinds(rounded)).toHaveLength(5);
    expect(loopsOf('M0 0 H1 V1 Z M 7 7')).toHaveLength(1);
  });

  it('a subpath that comes back to its start by itself is closed', () => {
    const [loop] = loopsOf('M0 0 H1 V1 L0 0');
    expect(endOf(loop!.at(-1)!)).toEqual(startOf(loop![0]!));
  });
});

describe('path data that is no closed outline', () => {
  it.each<[string, string, number | undefined]>([
    ['', 'expected path data that draws an outline, found nothing drawn', undefined],
    ['M 3 4', 'expected path data that draws an outline, found nothing drawn', undefined],
    ['  L 1 1 Z', 'expected path data that starts with M, found "L 1 1 Z"', 2],
    ['M 0 0 L 1 0 foo', 'expected a path command (M L H V C S Q T A Z) or a number, found "foo"', 12],
    ['M 0 0 L 1', 'expected a number, found the end of the data', 9],
    ['M 0 0 L 1 x', 'expected a number, found "x"', 10],
    ['M 0 0 A 1 1 0 2 0 1 1 Z', 'expected an arc flag, 0 or 1, found "2 0 1 1 Z"', 14],
    ['M 0 0 H 01 Z', 'expected a number without leading zeros, found "01 Z"', 8],
    ['M 0 0 L 1e Z', 'expected a number, found "Z"', 10],
    [
      'M 0 0 R 1 1 2 0 3 1 Z',
      'expected a path command (M L H V C S Q T A Z) or a number, found "R 1 1 2 0 3 1 Z"',
      6,
    ],
    ['M 0 0 L NaN 1 Z', 'expected a number, found "NaN 1 Z"', 8],
    ['M0 0H1V1Z M 0 0 L 1e999 1 Z', 'expected finite numbers, found one too large to count with', 10],
    [
      'M0 0H1V1Z M 0 0 L 1 0 L 1 0.5',
      'expected every subpath closed, found a gap of 28.398 mm between its end and its start',
      10,
    ],
    ['M0 0H1V1Zl1 0 0 1', 'expected every subpath closed, found a gap of 35.921 mm', 9],
  ])('%j: %s', (data, message, at) => {
    const made = path({ data, unit: inch });
    expect(said(made)).toContain(message);
    expect(flawsOf(made)[0]!.at).toBe(at);
  });

  it('every open subpath is told, with the hint to end it with Z', () => {
    const flaws = flawsOf(path({ data: 'M0 0H1V1 M 5 5 H 6 V 7', unit: 1 }));
    expect(flaws.map(({ at }) => at)).toEqual([0, 9]);
    expect(flaws.map(({ hint }) => hint)).toEqual(['end it with Z', 'end it with Z']);
  });
});
