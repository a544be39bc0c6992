import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outlineMoments } from '../../src/geometry/area-moments.js';
import { pointOn } from '../../src/geometry/piece.js';
import { distance, type Point } from '../../src/geometry/point.js';
import {
  followedBy,
  movedLoop,
  movedMoments,
  movedOutline,
  movedPoint,
  turnedAbout,
  type RigidMotion,
} from '../../src/geometry/rigid-motion.js';
import { curvedLoops } from '../arbitraries/curved-loops.js';
import { places, starShaped } from '../arbitraries/outlines.js';
import { movedLoop as movedElsewhere } from '../oracles/moved-loop.js';

const motions: fc.Arbitrary<RigidMotion> = fc.record({
  turn: fc.double({ min: -3, max: 3, noNaN: true }),
  shift: places,
});
const loops = fc.oneof(starShaped, curvedLoops);
/** Roundings of numbers of order 1. */
const near = (a: Point, b: Point): void => {
  expect(distance(a, b)).toBeLessThan(1e-14 * 16);
};

test('a loop moves as one moved by other means', () => {
  fc.assert(
    fc.property(loops, motions, (loop, motion) => {
      const [one, other] = [movedLoop(loop, motion), movedElsewhere(loop, motion)];
      one.forEach((piece, i) => {
        for (const u of [0, 0.3, 1]) near(pointOn(piece, u), pointOn(other[i]!, u));
      });
    }),
  );
});

test('moments of what is moved are the moments moved', () => {
  fc.assert(
    fc.property(starShaped, motions, (boundary, motion) => {
      const outline = [{ boundary, holes: [] }];
      const [then, moved] = [
        outlineMoments(movedOutline(outline, motion)),
        movedMoments(outlineMoments(outline), motion),
      ];
      expect(then.area).toBeCloseTo(moved.area, 13);
      expect(then.polar).toBeCloseTo(moved.polar, 13);
      expect(distance(then.centroid, moved.centroid)).toBeLessThan(1e-12);
    }),
  );
});

test('one after the other is both at once; about a place that place stays', () => {
  fc.assert(
    fc.property(places, places, motions, motions, (point, centre, first, second) => {
      near(movedPoint(movedPoint(point, first), second), movedPoint(point, followedBy(first, second)));
      near(movedPoint(centre, turnedAbout(centre, first.turn)), centre);
      const about = turnedAbout(centre, first.turn);
      expect(distance(movedPoint(point, about), centre)).toBeCloseTo(distance(point, centre), 13);
    }),
  );
});
