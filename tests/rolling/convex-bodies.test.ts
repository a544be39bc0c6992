import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopMoments } from '../../src/geometry/area-moments.js';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { plus, times, type Point } from '../../src/geometry/point.js';
import { profileOf } from '../../src/geometry/profile.js';
import { fullTurn } from '../../src/geometry/lean.js';
import {
  hangOn,
  heightAt,
  heightOn,
  landscapeOf,
  riseBetween,
  slopeOn,
  stretchAt,
} from '../../src/rolling/landscape.js';
import { indexAt } from '../../src/geometry/profile.js';
import { between, convexCorners, thickLoops as outlines } from '../arbitraries/rolling.js';
import { hullOutline } from '../geometry/hull-outline.js';
import { bruteSupport, sizeOf } from '../oracles/brute-support.js';
import { uniformPolygon } from '../oracles/monotone-chain.js';
import { balances } from './roll.js';

const leans = between(-10, 10);
const places: fc.Arbitrary<Point> = fc.record({ x: between(-1, 1), y: between(-1, 1) });
const landscape = (outline: Loop, q: Point) => landscapeOf(profileOf([[outline]]), q);

/** Stretch that carries a lean with `room` to both of its ends; null at a joint. */
function stretchAround(outline: Loop, q: Point, lean: number, room: number) {
  const all = landscape(outline, q);
  const stretch = stretchAt(all, indexAt(all.profile, lean));
  return stretch.from + room < lean && lean < stretch.to - room ? stretch : null;
}

describe('height of any point of any convex body', () => {
  it('H_q(θ) + H_q(θ + π) is the width across, wherever q is', () => {
    fc.assert(
      fc.property(outlines, places, leans, (outline, q, lean) => {
        const all = landscape(outline, q);
        const support = bruteSupport([[outline]]);
        const across = heightAt(all, lean) + heightAt(all, lean + Math.PI);
        const width = support(lean) + support(lean + Math.PI);
        expect(Math.abs(across - width)).toBeLessThan(1e-13 * (1 + sizeOf([[outline]])));
      }),
    );
  });

  it('H is S plus how far up q lies, by brute force', () => {
    fc.assert(
      fc.property(outlines, places, leans, (outline, q, lean) => {
        const height = bruteSupport([[outline]])(lean) + q.x * Math.sin(lean) + q.y * Math.cos(lean);
        expect(Math.abs(heightAt(landscape(outline, q), lean) - height)).toBeLessThan(
          1e-13 * (1 + sizeOf([[outline]])),
        );
      }),
    );
  });

  it("H' is its slope, H'' = ρ - H", () => {
    fc.assert(
      fc.property(outlines, places, leans, (outline, q, lean) => {
        const h = 1e-4;
        const stretch = stretchAround(outline, q, lean, 2 * h);
        fc.pre(stretch !== null);
        const size = 1 + sizeOf([[outline]]);
        const at = (step: number): number => heightOn(stretch, lean + step);
        // Central differences: h²/6 of the third derivative, and roundings over h.
        expect(Math.abs((at(h) - at(-h)) / (2 * h) - slopeOn(stretch, lean))).toBeLessThan(1e-7 * size);
        const slope = (step: number): number => slopeOn(stretch, lean + step);
        expect(Math.abs((slope(h) - slope(-h)) / (2 * h) - hangOn(stretch, lean))).toBeLessThan(1e-7 * size);
        const radius = stretch.kind === 'round' ? stretch.radius : NaN;
        expect(Math.abs(radius - heightOn(stretch, lean) - hangOn(stretch, lean))).toBeLessThan(1e-13 * size);
      }),
    );
  });

  it('rises add up to the difference of heights, over joints and turns', () => {
    fc.assert(
      fc.property(outlines, places, leans, leans, (outline, q, a, b) => {
        const all = landscape(outline, q);
        const rise = heightAt(all, b) - heightAt(all, a);
        expect(Math.abs(riseBetween(all, a, b) - rise)).toBeLessThan(1e-12 * (1 + sizeOf([[outline]])));
        expect(riseBetween(all, a, b) + riseBetween(all, b, a)).toBe(0);
      }),
    );
  });
});

describe('balances', () => {
  const uniformPolygons = convexCorners.map((corners) => ({
    outline: polygon(corners),
    ...uniformPolygon(corners),
  }));
  const uniformHulls = outlines.map((loop) => {
    const outline = hullOutline(profileOf([[loop]]));
    return { outline, centre: loopMoments(outline).centroid };
  });

  // Domokos, Papadopoulos, Ruina 1994, J. Elasticity 36, 59-66: homogeneous, plane, convex, not a circle.
  it.each([
    ['polygons', uniformPolygons],
    ['bodies bounded by arcs and lines', uniformHulls],
  ])('of homogeneous convex %s: two rests at least', (_, bodies) => {
    fc.assert(
      fc.property(bodies, ({ outline, centre }) => {
        fc.pre(!round(outline));
        const rests = balances(outline, centre).filter(({ kind }) => kind === 'rest');
        expect(rests.length).toBeGreaterThanOrEqual(2);
      }),
      { numRuns: 300 },
    );
  });

  const round = (outline: Loop): boolean => outline.length === 1;

  it('alternate: as many rests as crests, wherever G is inside', () => {
    fc.assert(
      fc.property(outlines, between(0, 1), between(0, fullTurn), (loop, out, direction) => {
        const outline = hullOutline(profileOf([[loop]]));
        fc.pre(!round(outline));
        const { centroid } = loopMoments(outline);
        const away = 0.3 * out;
        const centre = {
          x: centroid.x + away * Math.cos(direction),
          y: centroid.y + away * Math.sin(direction),
        };
        const found = balances(outline, centre);
        expect(found.length % 2).toBe(0);
        found.forEach(({ kind, lean }, i) => {
          expect(kind).not.toBe(found[(i + 1) % found.length]!.kind);
          if (i > 0) expect(lean).toBeGreaterThanOrEqual(found[i - 1]!.lean);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('are the lows and highs that looking everywhere finds', () => {
    fc.assert(
      fc.property(convexCorners, (corners) => {
        const { centre } = uniformPolygon(corners);
        const height = bruteSupport([[polygon(corners)]]);
        const at = (lean: number): number =>
          height(lean) + centre.x * Math.sin(lean) + centre.y * Math.cos(lean);
        const found = balances(polygon(corners), centre);
        const leansFound = found.map(({ lean }) => lean);
        // Between one balance and the next H only rises or only falls.
        fc.pre(leansFound.every((lean, i) => lean - (leansFound.at(i - 1)! - (i ? 0 : fullTurn)) > 2e-5));
        for (const { kind, lean } of found) {
          const beside = [-1e-5, 1e-5].map((step) => at(lean + step) - at(lean));
          // H falls off a crest by H step²/2, some 1e-11; rises from a flat by more.
          for (const rise of beside) expect(kind === 'rest' ? rise : -rise).toBeGreaterThan(-1e-15);
        }
      }),
    );
  });

  it('a corner is never a rest', () => {
    fc.assert(
      fc.property(convexCorners, between(0, 1), (corners, share) => {
        const [middle, corner] = [uniformPolygon(corners).centre, corners[0]!];
        const centre = plus(times(middle, share), times(corner, 1 - share));
        for (const { kind, place } of balances(polygon(corners), centre))
          expect(place).toBe(kind === 'rest' ? 'flat' : 'stretch');
      }),
    );
  });
});
