/** Each sign of a design that was not drawn as meant, on its two sides. */
import { describe, expect, it } from 'vitest';
import { implausible, type Implausible } from '../../src/checks/plausibility.js';
import { checked } from '../reading.js';

interface Drawn {
  readonly rocker?: string;
  readonly lump?: string;
  readonly parts?: string;
  readonly kind?: string;
}

/** Rockers with a box that stands on them, and a lump that makes up the weight. */
function signs({ rocker = '1 kg', lump = '5 kg', parts = '', kind = 'adult' }: Drawn = {}): Implausible[] {
  const { chair, design } = checked(`
trueroll: 1
units: mm
kind: ${kind}
parts:
  - { name: rocker, count: 2, mass: ${rocker}, outline: { rocker: { radius: 1000, depth: 50, nose: 400, tail: 500 } } }
  - { name: box, mass: 1 kg, outline: { rectangle: { from: [-100, 50], to: [100, 300] } } }
${parts}
extras: [ { name: lump, mass: ${lump}, at: [0, 400] } ]
`);
  return implausible(chair, design.kind);
}
const whats = (drawn: Drawn): string[] => signs(drawn).map(({ what }) => what);

it('a chair without oddities has none', () => {
  expect(signs()).toEqual([]);
});

describe('the weight', () => {
  // Rockers and box weigh 3 kg.
  it.each([
    ['adult', '1.99 kg', ['light']],
    ['adult', '2.01 kg', []],
    ['nursing', '16.99 kg', []],
    ['porch', '17.01 kg', ['heavy']],
    ['child', '1.1 kg', []],
    ['child', '8.99 kg', []],
    ['child', '9.01 kg', ['heavy']],
  ])('of kind %s with a lump of %s', (kind, lump, found) => {
    expect(whats({ kind, lump })).toEqual(found);
  });

  it('of a child’s chair under 2.5 kg is light', () => {
    expect(whats({ kind: 'child', rocker: '700 g', lump: '50 g' })).toContain('light');
  });
});

describe('a part', () => {
  it.each([
    ['2.99 kg', []],
    ['3.01 kg', ['heavy part']],
  ])('of two times %s in 12 kg', (rocker, found) => {
    // Box 1 kg and a lump of 5 kg: half the whole is 6 kg for both rockers together.
    expect(whats({ rocker })).toEqual(found);
  });

  it('is named with its share', () => {
    expect(signs({ rocker: '6 kg' })).toEqual([{ what: 'heavy part', part: 'rocker', share: 12 / 18 }]);
  });
});

describe('a seat', () => {
  const seat = (name: string, across: string, count = 1): Drawn => ({
    parts: `  - { name: ${name}, count: ${count}, mass: 300 g, across: ${across}, outline: { rectangle: { from: [-100, 300], to: [100, 320] } } }`,
  });
  it.each([
    ['seat', '249 mm', 1, 1],
    ['seat', '251 mm', 1, 0],
    ['Seat board', '20 mm', 1, 1],
    ['seat board', '100 mm', 3, 0],
    ['seat slat', '40 mm', 1, 0],
    ['seat rail', '20 mm', 2, 0],
    ['loveseats', '20 mm', 1, 0],
  ])('%s, %s across, %i of them: %i sign', (name, across, count, found) => {
    expect(whats(seat(name, across, count)).filter((what) => what === 'narrow seat')).toHaveLength(found);
  });

  it('weighed without its width is not judged', () => {
    expect(
      whats({
        parts:
          '  - { name: seat, mass: 300 g, outline: { rectangle: { from: [-100, 300], to: [100, 320] } } }',
      }),
    ).toEqual([]);
  });
});

describe('a gap', () => {
  const shelf = (foot: number): Drawn => ({
    parts: `  - { name: shelf, mass: 300 g, outline: { rectangle: { from: [-100, ${foot}], to: [100, 400] } } }`,
  });
  it.each([
    [300, 0],
    [300.4, 0],
    [300.6, 1],
    [309.9, 1],
    [310.1, 0],
    [250, 0],
  ])('of a shelf at %s mm over a box of 300: %i', (foot, count) => {
    expect(whats(shelf(foot)).filter((what) => what === 'gap')).toHaveLength(count);
  });

  it('is told with its width and both names', () => {
    expect(signs(shelf(304))).toEqual([
      { what: 'gap', parts: ['box', 'shelf'], gap: expect.closeTo(0.004, 12) as number },
    ]);
  });

  it('is none where a third part joins both', () => {
    const joined = `${shelf(304).parts!}\n  - { name: peg, mass: 50 g, outline: { bar: { from: [0, 250], to: [0, 350], width: 10 } } }`;
    expect(signs({ parts: joined })).toEqual([]);
  });

  it('is none round a rung in the hole that was bored for it', () => {
    const bored = (radius: number): string =>
      `  - { name: leg, mass: 500 g, outline: [ { rectangle: { from: [100, 60], to: [140, 300] } }, { hole: true, circle: { centre: [120, 200], radius: 12 } } ] }\n` +
      `  - { name: rung, mass: 200 g, outline: { circle: { centre: [120, 200], radius: ${radius} } } }`;
    expect(signs({ parts: bored(12) })).toEqual([]);
    expect(signs({ parts: bored(9) })).toEqual([]);
  });
});

describe('the rockers', () => {
  const alone = (foot: number): string[] => {
    const { chair, design } = checked(`
trueroll: 1
units: mm
parts:
  - { name: rocker, count: 2, mass: 1 kg, outline: { rocker: { radius: 1000, depth: 50, nose: 400, tail: 500 } } }
  - { name: box, mass: 3 kg, outline: { rectangle: { from: [-10, ${foot}], to: [10, 300] } } }
extras: [ { name: lump, mass: 4 kg, at: [0, 400] } ]
`);
    return implausible(chair, design.kind).map(({ what }) => what);
  };
  it.each([
    [50, []],
    [50.3, []],
    [55, ['gap', 'rocker alone']],
    [80, ['rocker alone']],
  ])('with all else from %s mm up', (foot, found) => {
    expect(alone(foot)).toEqual(found);
  });

  it('need no other part when they are the only one', () => {
    const { chair, design } = checked(`
trueroll: 1
units: mm
parts: [ { name: rocker, mass: 8 kg, outline: { rocker: { radius: 1000, depth: 50, nose: 400, tail: 500 } } } ]
`);
    expect(implausible(chair, design.kind).map(({ what }) => what)).toEqual(['heavy part']);
  });

  it('are two, where they are said to be a distance apart', () => {
    const signs = (count: string, more = ''): string[] => {
      const { chair, design } = checked(`
trueroll: 1
units: mm
spacing: 500
parts:
  - { name: rocker, ${count} mass: 3 kg, outline: { rocker: { radius: 1000, depth: 50, nose: 400, tail: 500 } } }
  - { name: box, mass: 4 kg, outline: { rectangle: { from: [-10, 40], to: [10, 300] } } }
${more}extras: [ { name: lump, mass: 4 kg, at: [0, 400] } ]
`);
      return implausible(chair, design.kind).map(({ what }) => what);
    };
    expect(signs('count: 2,')).toEqual([]);
    expect(signs('')).toEqual(['one rocker']);
    expect(signs('count: 2, across: 600 mm,')).toEqual(['rockers in one']);
    const shelf =
      '  - { name: shelf, mass: 1 kg, outline: { rectangle: { from: [500, 300], to: [600, 320] } } }\n';
    expect(signs('count: 2,', shelf)).toEqual(['loose part']);
  });
});
