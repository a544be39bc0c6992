/** Rockers unlike on both sides, in closed form: where they touch, from their ends, and how far they reach back. */
import { describe, expect, it } from 'vitest';
import type { MeasureKey } from '../../src/names.js';
import { checked, oneArc, sitters } from '../reading.js';

interface Arc {
  readonly radius: number;
  readonly tail: number;
}
const rocker = (side: string, outline: string): string =>
  `  - { name: ${side} rocker, side: ${side}, mass: 1 g, outline: { ${outline} } }\n`;
const arc = ({ radius, tail }: Arc): string =>
  `rocker: { radius: ${1000 * radius}, depth: 50, nose: 400, tail: ${1000 * tail} }`;
const design = (left: string, right: string): string =>
  oneArc.replace(/ {2}- \{ name: rocker.*\n/, rocker('left', left) + rocker('right', right));

const valueOf = (text: string, id: string, key: MeasureKey, sitter: string | null = null): number =>
  checked(text)
    .loads.find(({ record: { load } }) => load.id === id && load.sitter === sitter)!
    .measured.get(key) as number;
/** Of arcs that all touch the floor at x = 0: the centre of the mean arc is plumb over G. */
const restOn = (radius: number, text: string, id: string, sitter: string | null = null): number => {
  const { record } = checked(text).loads.find(
    ({ record: { load } }) => load.id === id && load.sitter === sitter,
  )!;
  const { x, y } = record.load.body.centre;
  return Math.atan2(-x, radius - y);
};

describe('from the tail end to where it touches', () => {
  // On each side a tape reads R (asin(t/R) - θ), from its own end to its own touch.
  const tape = ({ radius, tail }: Arc, lean: number): number => radius * (Math.asin(tail / radius) - lean);

  it.each<[string, Arc, Arc]>([
    ['two radii', { radius: 1.1, tail: 0.5 }, { radius: 0.9, tail: 0.5 }],
    ['two lengths', { radius: 1, tail: 0.45 }, { radius: 1, tail: 0.6 }],
    ['both', { radius: 1.05, tail: 0.62 }, { radius: 0.95, tail: 0.48 }],
  ])('is the mean of both sides’ tapes: %s', (_, left, right) => {
    const text = design(arc(left), arc(right));
    for (const turned of [text, design(arc(right), arc(left))]) {
      const rest = restOn(1, turned, 'empty');
      const mean = (tape(left, rest) + tape(right, rest)) / 2;
      expect(valueOf(turned, 'empty', 'touchFromTailM')).toBeCloseTo(mean, 9);
    }
    const seated = `${text}${sitters}`;
    const rest = restOn(1, seated, 'seated', 'tall');
    expect(valueOf(seated, 'seated', 'touchFromTailM', 'tall')).toBeCloseTo(
      (tape(left, rest) + tape(right, rest)) / 2,
      9,
    );
  });

  it('is so where one side stands on a flat and the other on its arc', () => {
    // The right one is level from -150 to 150 mm, the chord of its arc of 1 m.
    const low = 1000 - Math.sqrt(1e6 - 150 ** 2);
    const [tail, nose] = [500, 400].map((x) => `${x === 500 ? -x : x} ${1000 - Math.sqrt(1e6 - x * x)}`);
    const flat = `path: 'M ${tail} A 1000 1000 0 0 1 -150 ${low} L 150 ${low} A 1000 1000 0 0 1 ${nose} L 380 140 L -480 190 Z'`;
    const text = design(arc({ radius: 1, tail: 0.5 }), flat);
    const { x } = checked(text).chair.body.centre;
    // Half the sum of both touches is plumb under G: the left one at 0, the right one at 2 x.
    const onArc = Math.asin(0.5);
    const onFlat = 2 * x + 0.15 + (Math.asin(0.5) - Math.asin(0.15));
    expect(valueOf(text, 'empty', 'restAngleDeg')).toBeCloseTo(0, 9);
    expect(valueOf(text, 'empty', 'touchFromTailM')).toBeCloseTo((onArc + onFlat) / 2, 9);
  });
});

describe('how far it goes behind the empty chair', () => {
  // The mean arc is 1 m about (0, 1). A long bar on the left alone is what hits the wall, by its corner at (-0.6, 0.9).
  const wing =
    '  - { name: wing, side: left, mass: 1 g, outline: { rectangle: { from: [-600, 860], to: [-300, 900] } } }\n';
  const two = design(arc({ radius: 1.1, tail: 0.5 }), arc({ radius: 0.9, tail: 0.5 }));
  const text = `${two.replace('extras:', `${wing}extras:`)}${sitters}`;

  it('is told of the side that reaches farther', () => {
    const corner = (lean: number): number => -lean - 0.6 * Math.cos(lean) - (0.9 - 1) * Math.sin(lean);
    const lower = (lean: number): number => -lean - 0.6 * Math.cos(lean) - (0.86 - 1) * Math.sin(lean);
    const rear = (lean: number): number => Math.min(corner(lean), lower(lean));
    const rest = restOn(1, text, 'seated', 'tall');
    const empty = restOn(1, text, 'empty');
    const swing = (6 * Math.PI) / 180;
    const swept = rear(empty) - Math.min(...[rest + swing, rest, rest - swing].map(rear));
    expect(swept).toBeGreaterThan(0);
    expect(valueOf(text, 'seated', 'sweptBackM', 'tall')).toBeCloseTo(swept, 9);
    const mirrored = text.replaceAll(
      /side: (left|right)/g,
      (_, side) => `side: ${side === 'left' ? 'right' : 'left'}`,
    );
    expect(valueOf(mirrored, 'seated', 'sweptBackM', 'tall')).toBeCloseTo(swept, 9);
  });
});
