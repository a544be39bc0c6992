/** What is wrong with a drawing as a whole: lines, sides, stated ends. */
import { describe, expect, it } from 'vitest';
import { radiusAt } from '../../src/geometry/profile.js';
import { checked, mistakesIn, oneArc, sitters } from '../reading.js';

const rocker = (radius: number, more: string): string =>
  `  - { name: rocker ${radius}, mass: 1 kg, outline: { rocker: { radius: ${radius}, depth: 50, nose: 400, tail: 500 } }, ${more} }\n`;
const design = (parts: string): string => oneArc.replace(/ {2}- \{ name: rocker.*\n/, parts);

describe('lines', () => {
  it.each([
    [
      'front: [300, 380], rear: [-150, 350]',
      'front: [-150, 350], rear: [300, 380]',
      'the front of the seat line ahead of its rear',
    ],
    [
      'front: [300, 380], rear: [-150, 350]',
      'front: [300, 380], rear: [300, 380]',
      'the front of the seat line ahead of its rear',
    ],
    [
      'foot: [-150, 350], top: [-350, 1000]',
      'foot: [-350, 1000], top: [-150, 350]',
      'the top of the back line above its foot',
    ],
  ])('%s as %s is refused', (from, to, expected) => {
    const mistakes = mistakesIn(oneArc.replace(from, to));
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toContain(`expected ${expected}`);
    expect(mistakes[0]).toMatch(/^design\.yaml:\d+:\d+: /);
  });
});

describe('a back line that nobody leans on while sitting on the seat', () => {
  // The seat line runs 451 mm up to its front, the back line meets it at its rear as drawn.
  const at = (ahead: number): string =>
    oneArc.replace(
      'foot: [-150, 350], top: [-350, 1000]',
      `foot: [${-150 + ahead}, ${350 + ahead / 15}], top: [${-350 + ahead}, ${1000 + ahead / 15}]`,
    );

  it.each([440, 100, -300, -490])('%d mm ahead of the rear of the seat is none', (ahead) => {
    expect(mistakesIn(at(ahead))).toEqual([]);
  });

  it.each([
    [460, 'one that meets it 10.022 mm ahead of the front'],
    [254000, 'ahead of the front of the seat line'],
    [-510, 'one that meets it 511.13 mm behind the rear'],
    [-254000, 'behind the rear of the seat line'],
  ])('%d mm ahead of the rear of the seat is refused there, whether or not anybody sits', (ahead, found) => {
    for (const who of ['', sitters]) {
      const mistakes = mistakesIn(at(ahead) + who);
      expect(mistakes).toHaveLength(1);
      expect(mistakes[0]).toMatch(/^design\.yaml:9:7: expected a back line .* no farther than 500 mm behind/);
      expect(mistakes[0]).toContain(found);
    }
  });
});

describe('sides', () => {
  it('left and right of unlike radii roll on their mean', () => {
    const { chair } = checked(design(rocker(1000, 'side: left') + rocker(980, 'side: right')));
    expect(radiusAt(chair.profile, 0)).toBeCloseTo(0.99, 12);
    expect(chair.offset).toBeCloseTo(0, 15);
  });

  it('carry the mass to their side', () => {
    const heavy = rocker(1000, 'side: left').replace('mass: 1 kg', 'mass: 3 kg');
    const { chair } = checked(design(heavy + rocker(1000, 'side: right')));
    // (3 - 1) kg at 250 mm over the whole.
    expect(chair.offset).toBeCloseTo((2 * 0.25) / chair.body.mass, 12);
  });

  it.each([
    ['both on one', rocker(1000, 'side: left') + rocker(980, 'side: left'), 'one side only'],
    ['one of two pieces', rocker(1000, 'side: left, count: 2') + rocker(980, 'side: right'), 'a count of 1'],
    [
      'one beside none',
      rocker(1000, 'side: left') +
        '  - { name: leg, mass: 1 kg, outline: { bar: { from: [0, 100], to: [0, 500], width: 40 } } }\n',
      'a rocker with side: right',
    ],
  ])('%s are refused', (_, parts, words) => {
    const mistakes = mistakesIn(design(parts));
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toContain(words);
  });
});

describe('stated ends', () => {
  const path = "path: 'M -500 134 A 1000 1000 0 0 1 400 83.5 L 380 140 L -480 190 Z'";
  const part = (runs: string): string => `  - { name: rocker, mass: 1 kg, outline: { ${path} }, ${runs} }\n`;

  it('on the bottom edge are taken', () => {
    const { chair } = checked(design(part('runs: { from: [-400, 83.5], to: [300, 46.06] }')));
    expect(chair.surface.tail.lean).toBeCloseTo(Math.asin(0.4), 3);
    expect(chair.surface.nose.lean).toBeCloseTo(-Math.asin(0.3), 3);
  });

  it('off it are refused, each', () => {
    const mistakes = mistakesIn(design(part('runs: { from: [-400, 200], to: [300, -60] }')));
    expect(mistakes).toHaveLength(2);
    expect(mistakes[0]).toContain('a place on the bottom edge');
  });
});
