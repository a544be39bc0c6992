import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { plus, type Point } from '../../src/geometry/point.js';
import { contactAt, lengthAt, perimeter, profileOf } from '../../src/geometry/profile.js';
import { runningSurface, surfaceLength } from '../../src/geometry/running-surface.js';
import { between, roundRockers } from '../arbitraries/rolling.js';
import { rockers } from '../arbitraries/outlines.js';
import { movedLoop, movedPoint } from '../oracles/moved-loop.js';
import { plumbAbove, roundRunner, runner, type Step } from '../rolling/runners.js';

const degree = Math.PI / 180;
const surfaceOf = (loop: Loop, stated: readonly [Point, Point] | null = null) =>
  runningSurface(profileOf([[loop]]), () => stated);

describe('running surface by its corners', () => {
  it('of a band runs from end to end', () => {
    fc.assert(
      fc.property(roundRockers, ({ runner: { outline }, radius, nose, tail }) => {
        const surface = surfaceOf(outline);
        // An arc keeps 1e-7 rad past its end where it ties with its end point.
        expect(surface.nose.lean).toBeCloseTo(nose, 6);
        expect(surface.tail.lean).toBeCloseTo(tail, 6);
        expect(surfaceLength(surface) / (radius * (tail - nose))).toBeCloseTo(1, 6);
      }),
    );
  });

  it.each([
    [19.99, 'goes on over'],
    [20.01, 'ends at'],
  ])('a corner of %f° it %s', (corner) => {
    const steps: Step[] = [{ radius: 1, turn: 0.3 }, { corner: corner * degree }, { radius: 1, turn: 0.2 }];
    const { outline } = runner(steps, -0.2);
    const { tail, nose } = surfaceOf(outline);
    const over = corner < 20;
    expect(tail.lean).toBeCloseTo(over ? 0.3 + corner * degree : 0.1, 6);
    expect(tail.length - nose.length).toBeCloseTo(over ? 0.5 : 0.3, 6);
  });

  it.each([
    [19.99, 'goes on over'],
    [20.01, 'ends at'],
  ])('a corner of %f° towards the nose it %s', (corner) => {
    const steps: Step[] = [{ radius: 1, turn: 0.2 }, { corner: corner * degree }, { radius: 1, turn: 0.3 }];
    const { outline } = runner(steps, -0.4 - corner * degree);
    const { tail, nose } = surfaceOf(outline);
    const over = corner < 20;
    expect(nose.lean).toBeCloseTo(over ? -0.4 - corner * degree : -0.2, 6);
    expect(tail.length - nose.length).toBeCloseTo(over ? 0.5 : 0.3, 6);
  });

  it('counts one corner drawn twice, a hair apart, as one', () => {
    const corner = 12 * degree;
    const steps: Step[] = [
      { radius: 1, turn: 0.3 },
      { corner },
      { flat: 1e-13 },
      { corner },
      { radius: 1, turn: 0.2 },
    ];
    expect(surfaceOf(runner(steps, -0.2).outline).tail.lean).toBeCloseTo(0.1, 6);
  });

  it('ends where another body touches', () => {
    const band = roundRunner({ x: 0, y: 1 }, 1, -0.4, 0.4);
    // A peg whose tip is 1 mm below the arc at lean 0.2: tangents from it touch the arc acos(1/1.001) off.
    const tip = plumbAbove(band.tracks, 0.2, -0.001);
    const peg = polygon([tip, plus(tip, { x: 0.02, y: 0.3 }), plus(tip, { x: -0.02, y: 0.3 })]);
    const surface = runningSurface(profileOf([[band.outline], [peg]]));
    expect(surface.owner).toBe(0);
    expect(surface.tail.lean).toBeCloseTo(0.2 - Math.acos(1 / 1.001), 9);
    expect(surface.nose.lean).toBeCloseTo(-0.4, 6);
  });

  it('of a ball is the whole ball, as far back as forward', () => {
    const ball: Loop = [{ kind: 'arc', centre: { x: 1, y: 2 }, radius: 2, start: 0.4, sweep: 2 * Math.PI }];
    const surface = surfaceOf(ball);
    expect(surfaceLength(surface)).toBeCloseTo(4 * Math.PI, 12);
    expect(surface.tail.lean + surface.nose.lean).toBeCloseTo(0, 12);
  });
});

describe('running surface that begins on a flat or a joint', () => {
  const box = polygon([
    { x: -0.2, y: 0 },
    { x: 0.3, y: 0 },
    { x: 0.3, y: 0.8 },
    { x: -0.2, y: 0.8 },
  ]);

  it.each([0, 1e-13, -1e-13])('of a box is its base, drawn %f rad off level', (turn) => {
    const surface = surfaceOf(movedLoop(box, { turn }));
    expect(surfaceLength(surface)).toBeCloseTo(0.5, 12);
    expect(Math.abs(surface.nose.lean)).toBeLessThan(1e-12);
    expect(Math.abs(surface.tail.lean)).toBeLessThan(1e-12);
  });

  it.each([0, 1e-13, -1e-13])('of a runner drawn on its flat has both arcs, %f rad off level', (turn) => {
    const { outline } = runner([{ radius: 1, turn: 0.3 }, { flat: 0.04 }, { radius: 2, turn: 0.2 }], -0.3);
    const surface = surfaceOf(movedLoop(outline, { turn }));
    expect(surfaceLength(surface)).toBeCloseTo(0.3 + 0.04 + 0.4, 6);
  });

  it('of two bodies that stand side by side is of the one that touches for larger leans', () => {
    const foot = (x: number): Loop =>
      polygon([
        { x, y: 0 },
        { x: x + 0.1, y: 0 },
        { x: x + 0.1, y: 0.5 },
        { x, y: 0.5 },
      ]);
    const surface = runningSurface(profileOf([[foot(0)], [foot(1)]]));
    expect(surface.owner).toBe(0);
    // The foot's own flat is no edge of the hull: its share of it is one point.
    expect(surfaceLength(surface)).toBeCloseTo(0, 12);
  });

  it('drawn standing on a corner of more than 20° is that corner', () => {
    const surface = surfaceOf(movedLoop(box, { turn: 0.3 }));
    expect(surfaceLength(surface)).toBeCloseTo(0, 12);
    expect(surface.nose.lean).toBeLessThanOrEqual(surface.tail.lean);
  });
});

describe('running surface with stated ends', () => {
  it('of a rocker outline is its bottom edge', () => {
    fc.assert(
      fc.property(rockers, ({ boundary, ends: { nose, tail } }) => {
        for (const stated of [
          [nose, tail],
          [tail, nose],
        ] as const) {
          const profile = profileOf([[boundary]]);
          const surface = runningSurface(profile, () => stated);
          // A tail so long that the band turns past its own end is none that a chair has.
          const [front, rear] = [
            contactAt(profile, surface.nose.lean - 1e-9),
            contactAt(profile, surface.tail.lean),
          ];
          expect(Math.hypot(front.x - nose.x, front.y - nose.y)).toBeLessThan(1e-6);
          expect(Math.hypot(rear.x - tail.x, rear.y - tail.y)).toBeLessThan(1e-6);
        }
      }),
    );
  });

  const steps: Step[] = [
    { radius: 1, turn: 0.2 },
    { corner: 25 * degree },
    { radius: 1, turn: 0.3 },
    { flat: 0.2 },
    { radius: 1, turn: 0.2 },
  ];
  const start = -0.3 - 25 * degree;
  const { outline, tracks, ends } = runner(steps, start);

  it('runs over corners of any size', () => {
    const surface = surfaceOf(outline, [ends.nose, ends.tail]);
    expect(surfaceLength(surface)).toBeCloseTo(0.9, 6);
    expect(surface.nose.lean).toBeCloseTo(start, 6);
  });

  it('may end in the middle of an arc, of a flat, or beside the hull', () => {
    const onArc = plumbAbove(tracks, 0.05, 0);
    const tailArc = tracks.at(-2)!;
    const flatEnds = [plumbAbove(tracks, 0.2 - 1e-12, 0), plumbAbove([tailArc], tailArc.from, 0)] as const;
    const onFlat = {
      x: 0.75 * flatEnds[0].x + 0.25 * flatEnds[1].x,
      y: 0.75 * flatEnds[0].y + 0.25 * flatEnds[1].y,
    };
    const arc = surfaceOf(outline, [ends.nose, onArc]);
    expect(arc.tail.lean).toBeCloseTo(0.05, 9);
    const flat = surfaceOf(outline, [onFlat, ends.nose]);
    expect(flat.tail.lean).toBeCloseTo(0.2, 9);
    expect(surfaceLength(flat)).toBeCloseTo(0.2 + 0.3 + 0.05, 6);
    const beside = surfaceOf(outline, [ends.nose, plumbAbove(tracks, 0.05, 0.004)]);
    expect(beside.tail.lean).toBeCloseTo(0.05, 9);
  });

  it('is the same wherever the drawing lies and whichever way the loop runs', () => {
    fc.assert(
      fc.property(between(-1, 1), between(-1, 1), (x, y) => {
        const move = { shift: { x: 10 * x, y: 10 * y } };
        const stated = [movedPoint(ends.tail, move), movedPoint(ends.nose, move)] as const;
        const moved = surfaceOf(movedLoop(outline, move), stated);
        expect(surfaceLength(moved)).toBeCloseTo(0.9, 6);
        expect(moved.tail.lean).toBeCloseTo(0.4, 6);
      }),
    );
  });

  it('lengths count as the hull counts them', () => {
    const profile = profileOf([[outline]]);
    const surface = runningSurface(profile);
    expect(surface.tail.length).toBeCloseTo(lengthAt(profile, surface.tail.lean), 12);
    expect(surfaceLength(surface)).toBeLessThan(perimeter(profile));
  });
});
