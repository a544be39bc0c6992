import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopMoments, outlineMoments } from '../../src/geometry/area-moments.js';
import { outlineFlaws, type OutlineFlaw } from '../../src/geometry/flaws.js';
import type { DrawnLoop } from '../../src/geometry/nesting.js';
import { endOf, polygon, startOf, type Arc, type Loop, type Outline } from '../../src/geometry/piece.js';
import type { Point } from '../../src/geometry/point.js';
import { bar } from '../../src/geometry/words/bar.js';
import { circle } from '../../src/geometry/words/circle.js';
import { path } from '../../src/geometry/words/path.js';
import { rectangle } from '../../src/geometry/words/rectangle.js';
import { rocker } from '../../src/geometry/words/rocker.js';
import { convexPolygons, soundLoops, stars } from '../arbitraries/outlines.js';
import { movedLoop, reversedLoop } from '../oracles/moved-loop.js';
import { sound } from './words/built.js';

const { PI } = Math;
const solid = (boundary: Loop): DrawnLoop => ({ boundary, hole: false });
const hole = (boundary: Loop): DrawnLoop => ({ boundary, hole: true });
const disc = (x: number, y: number, radius: number): Loop =>
  sound(circle({ centre: { x, y }, radius })).boundary;
const box = (x: number, y: number, toX: number, toY: number): Loop =>
  sound(rectangle({ from: { x, y }, to: { x: toX, y: toY } })).boundary;
const stick = (from: Point, to: Point, width: number): Loop => sound(bar({ from, to, width })).boundary;
const drawn = (data: string): Loop[] => [...sound(path({ data, unit: 0.001 })).boundaries];
const corners = (...list: [number, number][]): Loop => polygon(list.map(([x, y]) => ({ x, y })));

function outlineOf(loops: readonly DrawnLoop[]): Outline {
  const checked = outlineFlaws(loops);
  if (!checked.ok) throw new Error(JSON.stringify(checked.flaws));
  return checked.outline;
}

function flawsOf(loops: readonly DrawnLoop[]): readonly OutlineFlaw[] {
  const checked = outlineFlaws(loops);
  if (checked.ok) throw new Error('expected a flaw, found none');
  return checked.flaws;
}
const foundIn = (...loops: DrawnLoop[]): string =>
  flawsOf(loops)
    .map(({ found }) => found)
    .join('\n');

describe('a sound outline has no flaw', () => {
  it('drawn at random, either way round', () => {
    fc.assert(
      fc.property(soundLoops, fc.boolean(), (loop, backward) => {
        const boundary = backward ? reversedLoop(loop) : loop;
        expect(outlineOf([solid(boundary)])).toEqual([{ boundary, holes: [] }]);
      }),
      { numRuns: 500 },
    );
  });

  it('drawn at random and cut to wedges that meet in its centre: nothing overlaps, nothing is lost', () => {
    fc.assert(
      fc.property(stars, ({ centre, boundary }) => {
        const wedges = boundary.map((piece): DrawnLoop => {
          const [out, back] = [startOf(piece), endOf(piece)];
          return solid([
            { kind: 'line', from: centre, to: out },
            piece,
            { kind: 'line', from: back, to: centre },
          ]);
        });
        const { area, polar } = outlineMoments(outlineOf(wedges));
        expect(area / loopMoments(boundary).area).toBeCloseTo(1, 12);
        expect(polar / loopMoments(boundary).polar).toBeCloseTo(1, 12);
      }),
    );
  });

  it('drawn at random, convex, with itself at half size cut out and put back', () => {
    fc.assert(
      fc.property(convexPolygons, (boundary) => {
        const { x, y } = loopMoments(boundary).centroid;
        const half = movedLoop(boundary, { scale: 0.5, shift: { x: x / 2, y: y / 2 } });
        const outline = outlineOf([hole(half), solid(boundary)]);
        expect(outline).toEqual([{ boundary, holes: [half] }]);
        expect(outlineMoments(outline).area).toBeCloseTo(0.75 * loopMoments(boundary).area, 14);
        expect(outlineOf([solid(boundary), hole(half), solid(half)])).toHaveLength(2);
      }),
    );
  });

  it.each<[string, DrawnLoop[]]>([
    ['nothing', []],
    ['one arc all round', [solid(disc(0, 0, 0.1))]],
    ['two bars side by side', [solid(box(0, 0, 1, 0.02)), solid(box(0, 0.02, 1, 0.04))]],
    [
      'two bars side by side, aslant and of unlike length',
      [
        solid(stick({ x: 0, y: 0 }, { x: 0.3, y: 0.4 }, 0.02)),
        solid(stick({ x: -0.016 + 0.06, y: 0.012 + 0.08 }, { x: -0.016 + 0.24, y: 0.012 + 0.32 }, 0.02)),
      ],
    ],
    ['corner to corner', [solid(box(0, 0, 1, 1)), solid(box(1, 1, 2, 2))]],
    ['a corner on an edge', [solid(box(0, 0, 1, 1)), solid(corners([1, 0.5], [2, 0], [2, 1]))]],
    ['a disc on a board', [solid(disc(0, 0.1, 0.1)), solid(box(-1, -0.1, 1, 0))]],
    ['disc against disc', [solid(disc(0, 0, 0.1)), solid(disc(0.3, 0, 0.2))]],
    [
      'a lamination: band on band',
      [0.9, 0.92].map((radius) => {
        const arcs = [{ radius, until: null }];
        const { boundary } = sound(
          rocker({ arcs, depth: 0.02, nose: 0.4, tail: 0.4, at: 0, along: 'level' }),
        );
        return solid(movedLoop(boundary, { shift: { x: 0, y: -radius } }));
      }),
    ],
    ['hole in its middle', [solid(disc(0, 0, 0.1)), hole(disc(0, 0, 0.05))]],
    ['hole that touches the edge from inside', [solid(disc(0, 0, 0.1)), hole(disc(0.05, 0, 0.05))]],
    ['notch drawn as a hole along the edge', [solid(box(0, 0, 1, 1)), hole(box(0.4, 0.8, 0.6, 1))]],
    [
      'holes side by side',
      [solid(box(0, 0, 1, 1)), hole(box(0.2, 0.2, 0.4, 0.8)), hole(box(0.4, 0.2, 0.6, 0.8))],
    ],
    [
      'a plug that fills a hole',
      [solid(box(0, 0, 1, 1)), hole(disc(0.5, 0.5, 0.2)), solid(disc(0.5, 0.5, 0.2))],
    ],
    ['touching itself at a corner', [solid(corners([0, 0], [1, 0], [1, 1], [0.5, 0], [0, 1]))]],
    [
      'a slit to its hole',
      [solid(corners([0, 0], [3, 0], [3, 3], [0, 3], [0, 0], [1, 1], [1, 2], [2, 2], [2, 1], [1, 1]))],
    ],
    ['a repeated corner', [solid(corners([0, 0], [1, 0], [1, 0], [1, 1]))]],
    ['tangent arcs of nearly the same radius', [solid(tangents(1, 1 + 1e-6))]],
    [
      'a cubic leaf and its mirror image along one edge',
      [
        solid(drawn('M 0 0 C 100 50 200 50 300 0 Z')[0]!),
        solid(drawn('M 0 0 C 100 50 200 50 300 0 L 300 100 L 0 100 Z')[0]!),
      ],
    ],
    [
      'half ellipses back to back',
      [
        solid(drawn('M -200 0 A 200 100 0 0 1 200 0 Z')[0]!),
        solid(drawn('M -200 0 A 200 50 0 0 0 200 0 Z')[0]!),
      ],
    ],
  ])('%s', (_, loops) => {
    expect(outlineFlaws(loops)).toMatchObject({ ok: true });
  });

  it('when solids overlap by less than a knife line, and holes stick out by less', () => {
    const little = 4e-5;
    expect(outlineFlaws([solid(box(0, 0, 1, 1)), solid(box(1 - little, 0, 2, 1))]).ok).toBe(true);
    expect(outlineFlaws([solid(box(0, 0, 1, 1)), hole(box(0.5, 0.5, 1 + little, 0.6))]).ok).toBe(true);
    expect(outlineFlaws([solid(box(0, 0, 1, 1)), solid(box(0.9998, 0, 2, 1))]).ok).toBe(false);
    expect(outlineFlaws([solid(box(0, 0, 1, 1)), hole(box(0.5, 0.5, 1.0002, 0.6))]).ok).toBe(false);
  });
});

/** Two tangent arcs, radii a and b, from slope -0.3 to 0.3, closed by a line. */
function tangents(a: number, b: number): Loop {
  const first: Arc = { kind: 'arc', centre: { x: 0, y: a }, radius: a, start: -PI / 2 - 0.3, sweep: 0.3 };
  const second: Arc = { kind: 'arc', centre: { x: 0, y: b }, radius: b, start: -PI / 2, sweep: 0.3 };
  const from = endOf(second);
  const to = { x: a * Math.sin(-0.3), y: a * (1 - Math.cos(0.3)) };
  return [first, second, { kind: 'line', from, to }];
}

describe('holes go to the solid they lie in', () => {
  it('of two solids', () => {
    const [left, right] = [box(0, 0, 1, 1), box(1, 0, 2, 1)];
    const holes = [disc(1.5, 0.5, 0.1), disc(0.5, 0.5, 0.1), disc(1.2, 0.2, 0.1)];
    const outline = outlineOf([hole(holes[0]!), solid(left), hole(holes[1]!), solid(right), hole(holes[2]!)]);
    expect(outline).toEqual([
      { boundary: left, holes: [holes[1]] },
      { boundary: right, holes: [holes[0], holes[2]] },
    ]);
    expect(outlineMoments(outline).area).toBeCloseTo(2 - 0.03 * PI, 14);
  });

  it('an island in a hole keeps its own', () => {
    const rings = [4, 3, 2, 1].map((radius) => disc(0, 0, radius));
    const outline = outlineOf(rings.map((boundary, i) => ({ boundary, hole: i % 2 === 1 })));
    expect(outline.map(({ holes }) => holes)).toEqual([[rings[1]], [rings[3]]]);
    expect(outlineMoments(outline).area).toBeCloseTo(PI * (16 - 9 + 4 - 1), 12);
  });
});

describe('a loop that crosses itself', () => {
  it.each<[string, Loop, string]>([
    ['bow tie', corners([0, 0], [1, 1], [1, 0], [0, 1]), '(500, 500) mm'],
    ['bow tie of unlike lobes', corners([0, 0], [2, 2], [2, 0], [0, 1]), 'mm'],
    [
      'bow tie with a corner at the crossing',
      corners([0, 0], [1, 1], [2, 2], [2, 0], [1, 1], [0, 2]),
      '(1000, 1000) mm',
    ],
    [
      'pentagram',
      corners(...[0, 2, 4, 1, 3].map((i): [number, number] => [Math.cos(1.2566 * i), Math.sin(1.2566 * i)])),
      'mm',
    ],
    ['circle run twice', [...disc(0, 0, 1), ...disc(0, 0, 1)], 'mm'],
    [
      'arc through a line',
      [
        { kind: 'arc', centre: { x: 0, y: 0 }, radius: 1, start: 0, sweep: PI },
        { kind: 'line', from: { x: -1, y: 0 }, to: { x: 0, y: 1.5 } },
        { kind: 'line', from: { x: 0, y: 1.5 }, to: { x: 1, y: 0 } },
      ],
      'mm',
    ],
    [
      'an outline with a loop in a corner',
      corners([0, 0], [1, 0], [1, 1.1], [1.1, 1], [0, 1]),
      '(1000, 1000) mm',
    ],
    ['cubic that loops', drawn('M 0 0 C 300 200 -200 200 100 0 L 100 -50 L 0 -50 Z')[0]!, '(50, '],
    ['ellipse arc through a line', drawn('M -200 0 A 200 100 0 0 1 200 0 L 200 -50 L -200 -50 Z')[0]!, 'mm'],
  ])('%s', (_, loop, place) => {
    for (const boundary of [loop, reversedLoop(loop)]) {
      const [flaw] = flawsOf([solid(boundary)]);
      expect(flaw!.expected).toBe('an outline that does not cross itself');
      expect(flaw!.found).toContain('a crossing near (');
      expect(flaw!.found).toContain(place);
    }
  });

  it('is found when any two corners of a convex outline that follow each other change places', () => {
    fc.assert(
      fc.property(convexPolygons, fc.nat(), (loop, which) => {
        const places = loop.map(startOf);
        const [i, j] = [which % places.length, (which + 1) % places.length];
        const swapped = places.map((place, k) => (k === i ? places[j]! : k === j ? places[i]! : place));
        expect(foundIn(solid(polygon(swapped)))).toContain('a crossing near');
      }),
    );
  });

  it('is found wherever it lies and however it is turned', () => {
    fc.assert(
      fc.property(
        fc.record({
          x: fc.double({ min: -2, max: 2, noNaN: true }),
          y: fc.double({ min: -2, max: 2, noNaN: true }),
        }),
        fc.double({ min: 0, max: 6.3, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (shift, turn, scale) => {
          const tie = movedLoop(corners([0, 0], [1, 1], [1, 0], [0, 0.8]), { shift, turn, scale });
          expect(foundIn(solid(tie))).toContain('a crossing near');
        },
      ),
    );
  });
});

describe('other flaws of a loop', () => {
  it('no width', () => {
    const flat = corners([0, 0], [1, 0], [2, 0]);
    expect(foundIn(solid(flat))).toContain('no width');
    expect(foundIn(solid(corners([0, 0], [1, 0])))).toContain('no width');
    expect(foundIn(solid([]))).toContain('no width');
    expect(foundIn(solid(corners([1, 2])))).toContain('no width');
    expect(foundIn(solid(box(0, 0, 1, 2e-5)))).toContain('no width');
  });

  it('a whisker', () => {
    const whisker = corners([0, 0], [1, 0], [1, 1], [0.5, 1], [0.5, 2], [0.5, 1], [0, 1]);
    expect(foundIn(solid(whisker))).toBe('a stretch without width from (500, 1000) mm');
  });

  it('a tangle, of one outline or of two', () => {
    // Chords of a circle, each to the 200th next of 401 places: each crosses nearly all others.
    const chords = Array.from({ length: 401 }, (_, i): [number, number] => {
      const angle = (2 * PI * 200 * i) / 401;
      return [Math.cos(angle), Math.sin(angle)];
    });
    const tangled = 'more than 50 meetings for each line or curve of them';
    expect(foundIn(solid(corners(...chords)))).toBe(tangled);
    // Combs of 150 teeth, one level and one upright: each tooth crosses all of the other.
    const comb = Array.from({ length: 150 }, (_, i): [number, number][] => [
      ...([[i, -1], [i, 160], [i + 0.5, 160], [i + 0.5, -1]] as [number, number][]), // prettier-ignore
    ]).flat();
    const upright = [...comb, [160, -1], [160, -5], [0, -5]] as [number, number][];
    const level = upright.map(([x, y]): [number, number] => [y, x]);
    expect(outlineFlaws([solid(corners(...upright))]).ok).toBe(true);
    expect(foundIn(solid(corners(...upright)), solid(corners(...level)))).toBe(tangled);
  });

  it('a gap', () => {
    const [a, b, c] = corners([0, 0], [1, 0], [1, 1]);
    const open: Loop = [a!, b!, { ...c!, to: { x: 0, y: 0.0032 } } as Loop[number]];
    expect(foundIn(solid(open))).toBe('a gap of 3.2 mm at (0, 3.2) mm');
  });

  it('no number, or one too large', () => {
    expect(foundIn(solid(corners([0, NaN], [1, 0], [1, 1])))).toContain('a gap of NaN mm');
    expect(foundIn(solid(box(0, 0, 1e200, 1e200)))).toContain('Infinity');
  });
});

describe('flaws between loops', () => {
  const board = solid(box(0, 0, 1, 1));
  it.each<[string, DrawnLoop[], string]>([
    ['solids crossing', [board, solid(box(0.5, 0.5, 2, 2))], 'outline 1 and outline 2 overlapping near ('],
    ['a solid in a solid', [board, solid(disc(0.5, 0.5, 0.1))], 'outline 1 and outline 2 overlapping'],
    ['the same solid twice', [board, board], 'outline 1 and outline 2 overlapping'],
    [
      'the same disc, cut elsewhere',
      [solid(disc(0, 0, 1)), solid(movedLoop(disc(0, 0, 1), { turn: 1 }))],
      'overlapping',
    ],
    [
      'bars crossing like an X',
      [
        solid(stick({ x: 0, y: 0 }, { x: 1, y: 1 }, 0.02)),
        solid(stick({ x: 0, y: 1 }, { x: 1, y: 0 }, 0.02)),
      ],
      'near (',
    ],
    ['a T whose stem runs in', [solid(box(0, 0, 1, 0.1)), solid(box(0.4, 0.05, 0.5, 1))], 'overlapping'],
    ['one edge shared, still overlapping', [board, solid(box(0, 0, 0.5, 1))], 'overlapping'],
    [
      'a plug larger than its hole',
      [board, hole(disc(0.5, 0.5, 0.2)), solid(disc(0.5, 0.5, 0.25))],
      'outline 1 and outline 3 overlapping',
    ],
    [
      'an island that leaves its hole',
      [board, hole(disc(0.5, 0.5, 0.2)), solid(disc(0.6, 0.5, 0.15))],
      'overlapping',
    ],
    ['a hole outside', [board, hole(disc(2, 2, 0.1))], 'a hole that lies in none'],
    ['a hole of nothing', [hole(disc(2, 2, 0.1))], 'a hole that lies in none'],
    ['a hole against the outside', [board, hole(box(1, 0, 2, 1))], 'a hole that lies in none'],
    ['a hole over the edge', [board, hole(disc(1, 0.5, 0.1))], 'a hole that crosses its boundary, near (1'],
    [
      'a hole over a seam',
      [board, solid(box(1, 0, 2, 1)), hole(disc(1, 0.5, 0.1))],
      'a hole that crosses its boundary',
    ],
    ['a hole around its solid', [board, hole(box(-1, -1, 2, 2))], 'a hole that crosses its boundary'],
    [
      'holes overlapping',
      [board, hole(disc(0.4, 0.5, 0.1)), hole(disc(0.5, 0.5, 0.1))],
      'outline 2 and outline 3 overlapping',
    ],
    [
      'a hole in a hole',
      [board, hole(disc(0.5, 0.5, 0.2)), hole(disc(0.5, 0.5, 0.1))],
      'outline 2 and outline 3 overlapping',
    ],
    ['a hole that leaves nothing', [board, hole(box(0, 0, 1, 1))], 'holes that take all of it'],
    [
      'holes that leave nothing',
      [board, hole(box(0, 0, 0.5, 1)), hole(box(0.5, 0, 1, 1))],
      'holes that take all of it',
    ],
  ])('%s', (_, loops, found) => {
    expect(foundIn(...loops)).toContain(found);
  });

  it('are told all together, each with its loop', () => {
    const flaws = flawsOf([board, hole(disc(3, 3, 0.1)), solid(disc(0, 0, 0.5)), hole(disc(4, 4, 0.1))]);
    expect(flaws.map(({ loop }) => loop)).toEqual([1, 3, 2]);
  });

  it('whatever the shapes: two that share a place overlap, moved apart they do not', () => {
    fc.assert(
      fc.property(soundLoops, soundLoops, (a, b) => {
        const [from, to] = [loopMoments(a).centroid, loopMoments(b).centroid];
        const away = movedLoop(b, { shift: { x: from.x - to.x + 4, y: from.y - to.y } });
        expect(outlineFlaws([solid(a), solid(away)]).ok).toBe(true);
        expect(outlineFlaws([solid(a), solid(a)]).ok).toBe(false);
        const nudged = movedLoop(a, { shift: { x: 3e-3, y: 2e-3 } });
        expect(outlineFlaws([solid(a), solid(nudged)]).ok).toBe(false);
        expect(outlineFlaws([solid(a), hole(nudged)]).ok).toBe(false);
      }),
    );
  });
});

describe('a hole moved along an edge of its solid', () => {
  // One edge stays within what counts as touching; the next sticks out by 3.6 mm.
  it('is found to stick out', () => {
    const corner = [
      [0.016143260706048306, 0.06125703586051223],
      [-0.047498774479073684, 0.0365266319142261],
      [-0.024769406629273735, -0.0576606378981656],
      [0.05794060986050673, 0],
    ] as const;
    const quad = corners(...corner.map(([x, y]): [number, number] => [x, y]));
    const moved = corners(...corner.map(([x, y]): [number, number] => [x + 3e-3, y + 2e-3]));
    expect(outlineFlaws([solid(quad), hole(moved)]).ok).toBe(false);
  });
});

describe('time', () => {
  it('some hundred pieces are checked before anybody waits', () => {
    const cog = corners(
      ...Array.from({ length: 400 }, (_, i): [number, number] => {
        const away = i % 2 === 0 ? 1 : 0.9;
        return [away * Math.cos((PI * i) / 200), away * Math.sin((PI * i) / 200)];
      }),
    );
    const holes = Array.from({ length: 30 }, (_, i) =>
      hole(disc(0.7 * Math.cos(i * 0.2), 0.7 * Math.sin(i * 0.2), 0.05)),
    );
    const from = performance.now();
    expect(outlineFlaws([solid(cog), ...holes]).ok).toBe(true);
    // Some 50 ms on an idle machine; a busy one gets its share.
    expect(performance.now() - from).toBeLessThan(3000);
  });
});
