/** Loops of curves at random, for hulls: they may cross themselves. */
import fc from 'fast-check';
import { endOf, startOf, type Loop, type Piece } from '../../src/geometry/piece.js';
import { distance, times, unitAt, type Point } from '../../src/geometry/point.js';
import { between } from './rolling.js';

/** On a grid of millimetres, and apart: no curve shrinks to a point. */
const places: fc.Arbitrary<Point> = fc
  .record({ x: fc.integer({ min: -1000, max: 1000 }), y: fc.integer({ min: -1000, max: 1000 }) })
  .map(({ x, y }) => ({ x: x / 1000, y: y / 1000 }));
const cubics: fc.Arbitrary<Piece> = fc
  .record({
    kind: fc.constant('cubic' as const),
    from: places,
    control1: places,
    control2: places,
    to: places,
  })
  .filter(({ from, control1, control2, to }) =>
    [
      distance(from, control1),
      distance(control1, control2),
      distance(control2, to),
      distance(from, to),
    ].every((away) => away > 0.05),
  );
const ellipseArcs: fc.Arbitrary<Piece> = fc
  .record({
    centre: places,
    long: between(0.1, 1),
    short: between(0.1, 1),
    turned: between(-3, 3),
    start: between(-3, 3),
    sweep: between(0.3, 6).chain((sweep) => fc.constantFrom(sweep, -sweep)),
  })
  .map(({ centre, long, short, turned, start, sweep }) => ({
    kind: 'ellipse-arc',
    centre,
    axisA: times(unitAt(turned), long),
    axisB: times(unitAt(turned + Math.PI / 2), short),
    start,
    sweep,
  }));

/** Curves joined by lines, end to start. */
export const curvedLoops: fc.Arbitrary<Loop> = fc
  .array(fc.oneof(cubics, ellipseArcs), { minLength: 1, maxLength: 4 })
  .map((pieces) =>
    pieces.flatMap((piece, i): Piece[] => [
      piece,
      { kind: 'line', from: endOf(piece), to: startOf(pieces[(i + 1) % pieces.length]!) },
    ]),
  );
