/** Cautions that a design earns, each on both its sides; those of every rocking chair always. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cautionsOf, standingCautions } from '../../src/report/cautions.js';
import { checked, oneArc, sitters } from '../reading.js';

const fixture = (name: string): string => readFileSync(`fixtures/${name}/design.yaml`, 'utf8');
const text = `${oneArc}${sitters}`;
const cautions = (design: string): string[] => cautionsOf(checked(design));
const saying = (words: RegExp, design: string): string[] => cautions(design).filter((one) => words.test(one));

describe('every design', () => {
  it.each(['porch-rocker', 'tight-radius', 'nursing', 'child-chair', 'corner', 'one-arc-metric'])(
    '%s ends with what concerns any rocking chair',
    (name) => {
      expect(cautions(fixture(name)).slice(-standingCautions.length)).toEqual(standingCautions);
    },
  );

  it.each([
    ['a calculation from given sizes', /calculation from the sizes you gave/],
    ['no test', /no test/],
    ['no conformity', /no claim to meet any standard/],
    ['strength only where it is said', /no proof of strength/],
    ['sandbags before people', /sandbags before anyone sits/],
    ['somebody behind at the first sitting', /sit first with somebody standing behind/],
    ['climbed', /climbed/],
    ['knelt in backwards', /knelt in backwards/],
    ['stood on', /stood on/],
    ['pushed hard', /pushed hard/],
    ['asleep with a baby', /Never fall asleep in it holding a baby/],
    ['rising with a child', /Rise with a child only when the chair is still and both feet are flat/],
    ['fingers, toes and tails', /fingers, toes and pets’ tails/],
    ['space behind', /floor behind it clear/],
    ['steps and edges', /away from steps and edges/],
    ['these people and floors only', /Only the people and the floor listed here were looked at/],
    ['structure and sale', /strength, and a chair for sale, judged by somebody licensed where you live/],
  ])('is told of %s', (_, words) => {
    expect(standingCautions.join(' ')).toMatch(words);
  });

  it('is promised nothing', () => {
    expect(standingCautions.join(' ')).not.toMatch(/\bsafe|certif|conform|guarantee/i);
  });
});

describe('the floor of the drawing', () => {
  const raised = (mm: number): string =>
    oneArc.replace(
      /outline: \{ rocker:.*\} \}/,
      `outline: { path: 'M -500 ${133.975 + mm} A 1000 1000 0 0 1 400 ${83.485 + mm} L 380 ${140 + mm} L -480 ${190 + mm} Z' } }`,
    );
  it.each([
    [2.9, 0],
    [-2.9, 0],
    [3.1, 1],
    [-3.1, 1],
  ])('%d mm from y = 0: %i', (mm, count) => {
    expect(saying(/touches the floor at y = /, raised(mm))).toHaveLength(count);
  });

  it('says where it is, with its sign', () => {
    expect(saying(/drawn chair/, raised(-20))[0]).toContain('y = -20 mm, not at y = 0');
  });
});

describe('what does not suit the second sitter', () => {
  it('is said with how much, and not of the first', () => {
    const said = saying(/^For /, text);
    expect(said.length).toBeGreaterThan(0);
    for (const one of said) expect(one).toMatch(/^For tall .* \d+ mm /);
  });
});

describe('people beyond the tables', () => {
  // ANSUR II 2012: 1st to 99th percentile of women's stature 1.4825 to 1.7776 m.
  const of = (stature: number): string =>
    `${oneArc}sitters: [ { name: ada, body: female, stature: ${stature} m, mass: 50 kg } ]\n`;
  it.each([
    [1.48, 1],
    [1.484, 0],
    [1.777, 0],
    [1.779, 1],
  ])('a woman of %d m: %i', (stature, count) => {
    expect(saying(/stretch/, of(stature))).toHaveLength(count);
  });
});

describe('a runner', () => {
  const drawn = (bottom: string): string =>
    oneArc.replace(/outline: \{ rocker:.*\} \}/, `outline: { path: '${bottom} L 380 240 L -480 240 Z' } }`);
  const places = (radius: number, from: number, to: number, step: number): string =>
    Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => {
      const angle = ((from + i * step) * Math.PI) / 180;
      return `${radius * Math.sin(angle)} ${radius * (1 - Math.cos(angle))}`;
    }).join(' L ');

  it('with a corner is told where: 3° on, half of it off each arc', () => {
    // Two arcs of radius 1 m whose centres are 1000 · 2 sin 1.5° apart, square to the way of the corner.
    const c = 1000 * Math.sin((1.5 * Math.PI) / 180);
    const low = 1000 - Math.sqrt(1e6 - c * c);
    const bottom = `M ${-500 + c} ${1000 - Math.sqrt(750000)} A 1000 1000 0 0 1 0 ${low} A 1000 1000 0 0 1 ${400 - c} ${1000 - Math.sqrt(840000)}`;
    const said = saying(/a corner of 3°/, drawn(bottom));
    expect(said).toHaveLength(1);
    // From the tail at -30° to the corner at -1.5° of its own arc: 28.5° of a metre.
    expect(said[0]).toContain('rocker: a corner of 3°, 497 mm from its tail end:');
  });

  it('drawn as lines is told so once', () => {
    const said = saying(/flats in a row/, drawn(`M ${places(1000, -30, 25, 1)}`));
    expect(said).toEqual([
      'rocker: 55 flats in a row, up to 17 mm long, 0 mm to 960 mm from its tail end, as a curve drawn as lines has ' +
        'them. If it is one, draw it as arcs.',
    ]);
    expect(saying(/: a flat/, drawn(`M ${places(1000, -30, 25, 1)}`))).toEqual([]);
  });

  it('with a low spot is told how much flatter', () => {
    const turned = (radius: number, lean: number): string => `A ${radius} ${radius} 0 0 1 ${at(lean)}`;
    const spot = [-30, -2, 0, 24] as const;
    const at = (lean: number): string => {
      const [x, y] = placeOn(lean);
      return `${x} ${y}`;
    };
    // 2° of radius 1.3 m between two of 1 m, tangent where they join.
    function placeOn(lean: number): [number, number] {
      let [x, y] = [0, 0];
      const radii = [1000, 1300, 1000];
      const rad = (angle: number): number => (angle * Math.PI) / 180;
      for (let i = 0; i < 3; i++) {
        const [from, to] = [spot[i]!, Math.min(lean, spot[i + 1]!)];
        if (to <= from) break;
        x += radii[i]! * (Math.sin(rad(to)) - Math.sin(rad(from)));
        y -= radii[i]! * (Math.cos(rad(to)) - Math.cos(rad(from)));
      }
      return [x - 500, y + 134];
    }
    const bottom = `M ${at(-30)} ${turned(1000, -2)} ${turned(1300, 0)} ${turned(1000, 24)}`;
    expect(saying(/spot/, drawn(bottom))).toEqual([
      'rocker: a low spot, 489 mm to 534 mm from its tail end: 30 % flatter than beside it (radius 1300 mm).',
    ]);
  });
});

describe('a flat', () => {
  const flat = (long: number): string => {
    const [half, low] = [long / 2, 1000 - Math.sqrt(1e6 - (long / 2) ** 2)];
    return oneArc.replace(
      /outline: \{ rocker:.*\} \}/,
      `outline: { path: 'M -500 133.975 A 1000 1000 0 0 1 ${-half} ${low} L ${half} ${low} A 1000 1000 0 0 1 400 83.485 L 380 140 L -480 190 Z' } }`,
    );
  };
  it.each([
    [11.9, 0],
    [12.1, 1],
  ])('%d mm long: %i', (long, count) => {
    expect(saying(/: a flat/, flat(long))).toHaveLength(count);
  });
});

describe('a porch', () => {
  it('falls 1/4 in per ft, magnified by R/(R - h)', () => {
    const result = checked(
      `kind: porch\n${text}`.replace('kind: porch\n\ntrueroll: 1', 'trueroll: 1\nkind: porch'),
    );
    const change = (sitter: string): number => {
      const { body } = result.loads.find(({ record: { load } }) => load.sitter === sitter)!.record.load;
      const hang = Math.hypot(body.centre.x, 1 - body.centre.y);
      return Math.round(((2 * Math.atan(0.25 / 12)) / hang) * (180 / Math.PI)) / 2;
    };
    const [said] = cautionsOf(result).filter((one) => one.startsWith('On a porch floor'));
    for (const name of ['short', 'tall']) expect(said).toContain(`${change(name)}° for ${name}`);
    expect(saying(/porch/, text)).toEqual([]);
  });
});

describe('implausible drawings', () => {
  it('are asked about, in the units of the design', () => {
    expect(saying(/lighter than most/, oneArc.replace('9.998 kg', '4 kg'))).toHaveLength(1);
    expect(saying(/heavier than most/, oneArc.replace('9.998 kg', '40 kg'))).toHaveLength(1);
    const seat =
      '  - { name: seat, mass: 1 g, across: 19 mm, outline: { rectangle: { from: [-100, 300], to: [300, 320] } } }\n';
    const said = saying(/thickness/, oneArc.replace('extras:', `${seat}extras:`));
    expect(said).toEqual(['seat is 19 mm across the chair: `across` is its width, not its thickness.']);
    expect(saying(/touches no other part/, oneArc.replace('extras:', `${seat}extras:`))).toHaveLength(1);
  });
});
