/** Rockers of two sides: what a design must say of them, and what it rolls on. */
import { describe, expect, it } from 'vitest';
import { contactAt, radiusAt, supportAt } from '../../src/geometry/profile.js';
import { checked, mistakesIn, oneArc } from '../reading.js';

interface Drawn {
  readonly radius?: number;
  readonly nose?: number;
  readonly tail?: number;
  readonly more?: string;
}
const rocker = ({ radius = 1000, nose = 400, tail = 500, more = '' }: Drawn): string =>
  `  - { name: rocker, mass: 1 kg, outline: { rocker: { radius: ${radius}, depth: 50, nose: ${nose}, tail: ${tail} } }${more} }\n`;
const [left, right] = [', side: left', ', side: right'];
const design = (...parts: string[]): string => oneArc.replace(/ {2}- \{ name: rocker.*\n/, parts.join(''));

describe('sides that are no pair', () => {
  it.each([
    ['both left', [rocker({ more: left }), rocker({ more: left })], 'parts on both sides'],
    ['both right', [rocker({ more: right }), rocker({ more: right })], 'parts on both sides'],
    [
      'two pieces on one',
      [rocker({ more: `${left}, count: 2` }), rocker({ more: right })],
      'a count of 1: it is on one side only, found 2',
    ],
  ])('%s', (_, parts, words) => {
    const mistakes = mistakesIn(design(...parts));
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toContain(words);
  });

  it('a longer one of one side beside one of none: that one runs on the other side', () => {
    // The one that says no side is on both sides; the longer one lies over it on the left.
    const text = design(rocker({ radius: 1000, more: left }), rocker({ radius: 1000, nose: 300, tail: 300 }));
    expect(mistakesIn(text)[0]).toContain('a rocker with side: right beside this one');
  });

  it('a foot of one side that never touches needs no other', () => {
    const foot = `  - { name: hook, mass: 1 kg, outline: { rectangle: { from: [0, 60], to: [30, 90] } }${left} }\n`;
    expect(mistakesIn(design(rocker({}), foot))).toEqual([]);
  });
});

describe('unlike rockers', () => {
  it('of one radius roll on it, as far as the shorter of them reaches', () => {
    const { chair } = checked(design(rocker({ more: left, tail: 450 }), rocker({ more: right, nose: 350 })));
    for (const lean of [-0.3, 0, 0.2]) {
      expect(radiusAt(chair.profile, lean)).toBeCloseTo(1, 12);
      expect(contactAt(chair.profile, lean).x).toBeCloseTo(-Math.sin(lean), 12);
    }
    expect(chair.surface.tail.lean).toBeCloseTo(Math.asin(0.45), 9);
    expect(chair.surface.nose.lean).toBeCloseTo(-Math.asin(0.35), 9);
  });

  it('have the mean of both radii and of both contacts', () => {
    const { chair } = checked(
      design(rocker({ radius: 1100, more: left }), rocker({ radius: 900, more: right })),
    );
    // The contact of an arc about (0, R) is (-R sin θ, R (1 - cos θ)), linear in R: the mean is that of R = 1.
    for (const lean of [-0.3, -0.1, 0.1, 0.4]) {
      expect(radiusAt(chair.profile, lean)).toBeCloseTo(1, 12);
      expect(contactAt(chair.profile, lean)).toMatchObject({
        x: expect.closeTo(-Math.sin(lean), 12) as number,
        y: expect.closeTo(1 - Math.cos(lean), 12) as number,
      });
    }
    expect(supportAt(chair.profile, 0)).toBeCloseTo(0, 12);
  });

  it('alike on both sides are as one part of two pieces', () => {
    const apart = checked(design(rocker({ more: left }), rocker({ more: right })));
    const together = checked(design(rocker({ more: ', count: 2' })));
    const measures = (result: typeof apart) => [...result.loads[0]!.measured.entries()];
    const [a, b] = [measures(apart), measures(together)];
    a.forEach(([key, value], i) => {
      if (typeof value === 'number') expect(value, key).toBeCloseTo(b[i]![1] as number, 9);
      else expect(value).toEqual(b[i]![1]);
    });
  });

  it('have a flat or a bump that only one of them has', () => {
    // The right one's bottom edge is level from -20 to 20 mm.
    const flat =
      "path: 'M -500 133.975 A 1000 1000 0 0 1 -20 0.2 L 20 0.2 A 1000 1000 0 0 1 400 83.485 L 380 140 L -480 190 Z'";
    const part = `  - { name: rocker, mass: 1 kg, outline: { ${flat} }${right} }\n`;
    const { chair } = checked(design(rocker({ more: left }), part));
    expect(chair.surfaceShape.flatLongest).toBeCloseTo(0.04, 9);
  });
});

describe('stated ends', () => {
  const runs = (from: string, to: string): string => `, runs: { from: [${from}], to: [${to}] }`;
  // On the arc at x: y = 1000 - sqrt(1000² - x²): 300 → 46.06, -400 → 83.48.
  it('on the bottom edge end the running surface there', () => {
    const { surface } = checked(
      design(rocker({ more: `${runs('-400, 83.48', '300, 46.06')}, count: 2` })),
    ).chair;
    expect(surface.tail.lean).toBeCloseTo(Math.asin(0.4), 4);
    expect(surface.nose.lean).toBeCloseTo(-Math.asin(0.3), 4);
  });

  it.each([
    ['4 mm off is how it was drawn', '-400, 87.8', 0],
    ['6 mm off is another place', '-400, 90.2', 1],
  ])('%s', (_, from, count) => {
    // 5 mm square to the arc is 5/cos 23.6° = 5.46 mm plumb: 83.48 + 4.3 and + 6.7 lie on either side.
    const mistakes = mistakesIn(design(rocker({ more: `${runs(from, '300, 46.06')}, count: 2` })));
    expect(mistakes).toHaveLength(count);
    for (const mistake of mistakes) expect(mistake).toContain('a place on the bottom edge');
  });

  it('of each side are looked at on that side', () => {
    const off = runs('-400, 200', '300, 46.06');
    const mistakes = mistakesIn(design(rocker({ more: left }), rocker({ more: right + off })));
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toMatch(/^design\.yaml:\d+:\d+: /);
  });
});
