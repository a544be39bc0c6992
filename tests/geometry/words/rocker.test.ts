import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopMoments } from '../../../src/geometry/area-moments.js';
import { endOf, startOf, type Arc, type Loop } from '../../../src/geometry/piece.js';
import { cross, distance, dot, minus } from '../../../src/geometry/point.js';
import { rocker, type RockerWord } from '../../../src/geometry/words/rocker.js';
import { rockerWords } from '../../arbitraries/outlines.js';
import { said, sound } from './built.js';

const word: RockerWord = {
  arcs: [{ radius: 1, until: null }],
  depth: 0.06,
  nose: 0.5,
  tail: 0.4,
  at: -0.1,
  along: 'level',
};
const arcsOf = (loop: Loop): Arc[] => loop.filter((piece) => piece.kind === 'arc');

/** 12 digits of a metre: rounding of sums and of sine and arc sine one after the other. */
const near = 1e-12;

describe('a rocker of one arc', () => {
  it('touches y = 0 at x = at, its ends lie nose ahead and tail behind on its circle', () => {
    fc.assert(
      fc.property(rockerWords, (word) => {
        const { boundary, ends } = sound(rocker(word));
        const { radius } = word.arcs[0]!;
        const bottom = arcsOf(boundary)[0]!;
        expect(bottom.centre).toEqual({ x: word.at, y: radius });
        expect(Math.abs(ends.nose.x - (word.at + word.nose))).toBeLessThan(near);
        expect(Math.abs(ends.tail.x - (word.at - word.tail))).toBeLessThan(near);
        // Height of a circle over its tangent, by Pythagoras.
        expect(Math.abs(ends.nose.y - (radius - Math.sqrt(radius ** 2 - word.nose ** 2)))).toBeLessThan(near);
        expect(bottom.sweep).toBeGreaterThan(0);
        expect(startOf(bottom)).toEqual(ends.tail);
      }),
    );
  });

  it('has ends square to the arc, as long as it is deep, and pieces that join', () => {
    fc.assert(
      fc.property(rockerWords, (word) => {
        const { boundary, ends } = sound(rocker(word));
        const [bottom, noseEnd, top, tailEnd] = boundary;
        const centre = { x: word.at, y: word.arcs[0]!.radius };
        for (const end of [noseEnd!, tailEnd!]) {
          expect(Math.abs(distance(startOf(end), endOf(end)) - word.depth)).toBeLessThan(near);
          expect(Math.abs(cross(minus(endOf(end), startOf(end)), minus(centre, endOf(end))))).toBeLessThan(
            near,
          );
        }
        boundary.forEach((piece, i) => {
          expect(distance(endOf(piece), startOf(boundary[(i + 1) % 4]!))).toBeLessThan(near);
        });
        expect(endOf(bottom!)).toEqual(ends.nose);
        expect(top!.kind === 'arc' && top!.sweep).toBe(bottom!.kind === 'arc' && -bottom!.sweep);
      }),
    );
  });

  it('measured along the curve has arcs of just that length to both sides', () => {
    const { boundary } = sound(rocker({ ...word, along: 'curve' }));
    const bottom = arcsOf(boundary)[0]!;
    expect(bottom.sweep).toBeCloseTo(0.9, 14);
    expect(bottom.start).toBeCloseTo(-Math.PI / 2 - 0.4, 14);
  });

  it('may lie wholly ahead of or behind where its circle touches', () => {
    const { ends } = sound(rocker({ ...word, nose: -0.1, tail: 0.5 }));
    expect(ends.nose.x).toBeCloseTo(-0.2, 14);
    expect(ends.tail.x).toBeCloseTo(-0.6, 14);
  });

  it('may reach to a quarter turn', () => {
    const { ends } = sound(rocker({ ...word, nose: 1 }));
    expect(ends.nose).toEqual({ x: 0.9, y: 1 });
  });
});

/** 42 in ahead of 9 in behind the touch, 60 in from there to the tail; and a third arc at the nose. */
const listed: RockerWord = {
  ...word,
  at: 0.05,
  nose: 0.6,
  tail: 0.7,
  arcs: [
    { radius: 0.8, until: -0.3 },
    { radius: 1.0668, until: 0.2286 },
    { radius: 1.524, until: null },
  ],
};

describe('a rocker of several arcs', () => {
  it('has tangent joints at `until`, centres on the line through the joint', () => {
    const { boundary, ends } = sound(rocker(listed));
    const [tailArc, middle, noseArc] = arcsOf(boundary) as [Arc, Arc, Arc];
    expect(middle.centre).toEqual({ x: 0.05, y: 1.0668 });
    // By hand: sin φ = 0.2286 / 1.0668 behind; c' = c + (R' - R) (sin φ back, cos φ up).
    const sine = 0.2286 / 1.0668;
    expect(tailArc.centre.x).toBeCloseTo(0.05 + (1.524 - 1.0668) * sine, 13);
    expect(tailArc.centre.y).toBeCloseTo(1.0668 + (1.524 - 1.0668) * Math.sqrt(1 - sine ** 2), 13);
    expect(startOf(middle).x).toBeCloseTo(0.05 - 0.2286, 13);
    expect(endOf(middle).x).toBeCloseTo(0.05 + 0.3, 13);
    for (const [before, after] of [
      [tailArc, middle],
      [middle, noseArc],
    ] as const) {
      expect(distance(endOf(before), startOf(after))).toBeLessThan(near);
      expect(Math.abs(before.start + before.sweep - after.start)).toBeLessThan(near);
    }
    expect(ends.nose.x).toBeCloseTo(0.65, 13);
    expect(ends.tail.x).toBeCloseTo(-0.65, 13);
  });

  it('of equal radii is the rocker of one arc', () => {
    const arcs = [0.2, -0.1, null]
      .map((until) => ({ radius: 1, until }))
      .toSorted((a, b) => (a.until ?? 9) - (b.until ?? 9));
    for (const along of ['level', 'curve'] as const) {
      const one = loopMoments(sound(rocker({ ...word, along })).boundary);
      const three = loopMoments(sound(rocker({ ...word, along, arcs })).boundary);
      expect(three.area).toBeCloseTo(one.area, 13);
      expect(three.centroid.x).toBeCloseTo(one.centroid.x, 13);
      expect(three.polar).toBeCloseTo(one.polar, 13);
    }
  });

  it('may change its radius just where it touches', () => {
    const arcs = [
      { radius: 1, until: 0 },
      { radius: 1.5, until: null },
    ];
    const [behind, ahead] = arcsOf(sound(rocker({ ...word, arcs })).boundary);
    expect([ahead!.centre, behind!.centre]).toEqual([
      { x: -0.1, y: 1 },
      { x: -0.1, y: 1.5 },
    ]);
  });

  it('measured along the curve counts the arcs between', () => {
    const { boundary } = sound(rocker({ ...listed, along: 'curve' }));
    const [tailArc, middle, noseArc] = arcsOf(boundary) as [Arc, Arc, Arc];
    const split = -Math.PI / 2 - middle.start;
    expect(tailArc.radius * tailArc.sweep + middle.radius * split).toBeCloseTo(0.7, 13);
    expect(noseArc.radius * noseArc.sweep + middle.radius * (middle.sweep - split)).toBeCloseTo(0.6, 13);
  });

  it('is of the same depth all along', () => {
    const { boundary } = sound(rocker(listed));
    const arcs = arcsOf(boundary);
    for (const bottom of arcs.slice(0, 3)) {
      const above = arcs.slice(3).find(({ centre }) => distance(centre, bottom.centre) === 0)!;
      expect(bottom.radius - above.radius).toBeCloseTo(0.06, 14);
      expect(above.sweep).toBeCloseTo(-bottom.sweep, 14);
    }
    const [noseEnd, tailEnd] = boundary.filter((piece) => piece.kind === 'line');
    const noseCentre = arcs[2]!.centre;
    const along = minus(endOf(noseEnd!), startOf(noseEnd!));
    expect(dot(along, minus(noseCentre, startOf(noseEnd!)))).toBeCloseTo(0.06 * 0.8, 13);
    expect(distance(startOf(tailEnd!), endOf(tailEnd!))).toBeCloseTo(0.06, 13);
  });
});

describe('an impossible rocker', () => {
  const one = (radius: number): RockerWord['arcs'] => [{ radius, until: null }];
  it.each<[Partial<RockerWord>, string]>([
    [{ arcs: one(0) }, 'expected a radius greater than zero, found 0 mm'],
    [{ arcs: one(-1) }, 'expected a radius greater than zero, found -1000 mm'],
    [{ arcs: [] }, 'expected at least one radius, found none'],
    [{ depth: 0 }, 'expected a depth greater than zero, found 0 mm'],
    [{ depth: 1 }, 'expected a depth less than the radius, 1000 mm, found 1000 mm'],
    [
      { tail: 1.2 },
      'expected the tail no farther from the centre of its arc than the radius, 1000 mm, found 1200 mm',
    ],
    [{ nose: 1.2, tail: -1.1 }, 'expected the nose no farther'],
    [{ nose: -0.4 }, 'expected an arc of some length from its tail end forward to its nose end, found 0 mm'],
    [{ nose: NaN }, 'expected a finite number for nose, found NaN'],
    [
      { along: 'curve', nose: 4, tail: 3 },
      'expected less than one full turn from tail to nose, found 401 degrees',
    ],
    [{ arcs: [...one(1), ...one(1.2)] }, 'expected an until of arc 1, found none'],
    [
      { arcs: [{ radius: 1, until: 0.2 }] },
      'expected no `until` on the last arc: it runs to the tail, found 200 mm',
    ],
    [
      { arcs: [{ radius: 1, until: 0.1 }, { radius: 1.2, until: 0.05 }, ...one(1)] },
      'expected arc 2 of some length from its tail end forward to its nose end, found -',
    ],
    [{ arcs: [{ radius: 0.3, until: 0.35 }, ...one(1)] }, 'expected the until of arc 1 no farther'],
  ])('%j', (change, message) => {
    expect(said(rocker({ ...word, ...change }))).toContain(message);
  });

  it('tells every wrong size at once', () => {
    const made = rocker({
      ...word,
      depth: -1,
      arcs: [
        { radius: 0, until: 0.1 },
        { radius: -2, until: null },
      ],
    });
    expect(said(made).split('\n')).toHaveLength(3);
  });
});
