/** What was assumed: all that the file does not say, with what it rests on, and nothing that it does say. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assumptionsOf } from '../../src/report/assumptions.js';
import { checked, oneArc, sitters } from '../reading.js';

const assumed = (design: string) => assumptionsOf(checked(design));
const whats = (design: string): string[] => assumed(design).map(({ what }) => what);
const of = (design: string, what: string) => assumed(design).find((one) => one.what === what);
const person = (more: string): string => `${oneArc}sitters: [ { name: ada, body: female, ${more} } ]\n`;
const stick = (more: string): string =>
  oneArc.replace(
    'extras:',
    `  - { name: leg, ${more}, outline: { bar: { from: [0, 40], to: [0, 400], width: 40 } } }\nextras:`,
  );

describe('woods', () => {
  it('used by volume are listed once with their density; weighed ones are not', () => {
    const ash = readFileSync('fixtures/porch-rocker/design.yaml', 'utf8');
    expect(whats(ash).filter((what) => what.includes('white ash'))).toEqual(['density of white ash']);
    // Specific gravity at 12 % of white ash 0.60 (Wood Handbook): 600 × 1.12.
    expect(of(ash, 'density of white ash')?.value).toBe('672 kg/m³');
    expect(whats(stick('wood: red oak, mass: 1 kg')).filter((what) => what.startsWith('density'))).toEqual(
      [],
    );
    expect(
      whats(stick('density: 700 kg/m3, across: 40')).filter((what) => what.startsWith('density')),
    ).toEqual([]);
  });
});

describe('the floor', () => {
  it('by name is an assumption of this project', () => {
    expect(of(oneArc, 'friction of bare boards')).toMatchObject({
      value: '0.4',
      basis: 'assumption of this project',
    });
    expect(of(`${oneArc}floor: deep rug\n`, 'rolling arm of deep rug')?.value).toBe('12 mm');
  });

  it('of the design’s own is said to be that', () => {
    const own = of(`${oneArc}floor: { friction: 0.35, rolling: 1.5 mm }\n`, 'rolling arm of the floor');
    expect(own).toMatchObject({
      value: '1.5 mm',
      basis: expect.stringMatching(/^the design’s own/) as string,
    });
  });
});

describe('swings', () => {
  const rocks = (text: string) => assumed(text).filter(({ what }) => what.startsWith('a rock, each way'));

  it('that are one are told once, of no load by name', () => {
    const basis = 'assumption of this project: a gentle rock';
    expect(rocks(`${oneArc}${sitters}`)).toEqual([{ what: 'a rock, each way', value: '6°', basis }]);
  });

  it('that differ are told with whose they are and of which loads', () => {
    const told = rocks(`${oneArc}${sitters}loads: { seated: { swing: 0.1 rad } }\n`);
    expect(told.map(({ what, value, basis }) => [what, value, basis])).toEqual([
      ['a rock, each way, empty and feet up', '6°', 'assumption of this project: a gentle rock'],
      ['a rock, each way, seated', '5.72958°', 'the design’s own'],
    ]);
  });
});

describe('bodies', () => {
  it('are not spoken of where nobody sits', () => {
    expect(whats(oneArc)).toEqual([
      'friction of bare boards',
      'rolling arm of bare boards',
      'a rock, each way',
      'a child on the tails: steps on the ends of both',
    ]);
  });

  it('have what is not stated: sizes from stature, stature and mass from a percentile', () => {
    const stated = whats(person('stature: 1.6 m, mass: 60 kg'));
    expect(stated).toContain('ada: knee hollow over the floor, bare');
    expect(stated).not.toContain('ada: stature');
    expect(stated).not.toContain('ada: mass');
    const half = person('stature: 1.6 m, percentile: 50');
    expect(whats(half)).not.toContain('ada: stature');
    // ANSUR II 2012, women, median 66.8 kg.
    expect(of(half, 'ada: mass')?.value).toMatch(/^66\.8 kg/);
    expect(of(person('percentile: 50'), 'ada: stature')?.value).toBe('1626 mm');
  });

  it('have nothing of what was measured', () => {
    const measured = person(
      'stature: 1.6 m, mass: 60 kg, measured: { kneeHollow: 400 mm, buttockToKneeHollow: 480 mm, elbowAboveSeat: 220 mm }',
    );
    expect(whats(measured).filter((what) => what.startsWith('ada: '))).toEqual([]);
  });

  it('rest on publications, shoes on common practice', () => {
    const all = assumed(`${oneArc}${sitters}`);
    for (const { what, basis } of all) expect(basis, what).toMatch(/\S/);
    expect(of(`${oneArc}${sitters}`, 'segments of the body')?.basis).toMatch(/de Leva/);
    expect(of(`${oneArc}${sitters}`, 'shoes, under the knee hollow')).toMatchObject({
      value: '25 mm',
      basis: 'common practice, no source',
    });
  });

  it('that are standard are told who they are', () => {
    const standard =
      `${oneArc.replace('trueroll: 1', 'trueroll: 1\nkind: porch').replace('units: mm', 'units: in')}sitters: standard\n`
        .replace(/radius: 1000, depth: 50, nose: 400, tail: 500/, 'radius: 40, depth: 2, nose: 16, tail: 20')
        .replace('spacing: 500', 'spacing: 20')
        .replace('at: [-10, 400]', 'at: [0, 16]')
        .replace(/seat:.*\n/, 'seat: { front: [12, 15], rear: [-6, 14] }\n')
        .replace(/back:.*\n/, 'back: { foot: [-6, 14], top: [-14, 40] }\n');
    expect(of(standard, 'shortest')?.value).toMatch(/^female, 5' 0", 47\.6/);
    expect(of(standard, 'tallest')?.value).toMatch(/^male, 6' 3", 113\.4/);
    expect(of(standard, 'middle')?.basis).toContain('porch');
  });
});

describe('how people lean back and rise', () => {
  const seated = `${oneArc}${sitters}`;
  it.each([
    [
      'leaning back hard: thrown onto the back within',
      '0.4 s',
      'leaning-back-hard: { throwTime: 0.6 s }',
      '0.6 s',
    ],
    ['getting up: has left the chair after', '1.2 s', 'getting-up: { leaveTime: 2 s }', '2 s'],
    [
      'a child on the tails: steps on the ends of both',
      '15 kg',
      'child-on-the-tails: { mass: 9 kg }',
      '9 kg',
    ],
  ])('%s: the standard load’s, or the design’s own', (what, usual, own, value) => {
    expect(of(seated, what)).toMatchObject({
      value: expect.stringContaining(usual) as string,
      basis: expect.stringMatching(/^assumption of this project/) as string,
    });
    expect(of(`${seated}loads: { ${own} }\n`, what)).toMatchObject({
      value: expect.stringContaining(value) as string,
      basis: 'the design’s own',
    });
  });

  it('is not spoken of where the load is off', () => {
    const off = `${seated}loads: { leaning-back-hard: off, getting-up: off, child-on-the-tails: off }\n`;
    expect(whats(off).filter((what) => /leaning back|getting up|on the tails/.test(what))).toEqual([]);
  });
});

describe('a child', () => {
  it('by age is weighed by a table; by mass it is not', () => {
    const held = (child: string): string => `${oneArc}${sitters}child: ${child}\n`;
    expect(of(held('{ body: girl, age: 9 months }'), 'mass of the child')?.value).toMatch(/^8\.2 kg/);
    expect(whats(held('{ mass: 9 kg }'))).not.toContain('mass of the child');
    expect(of(held('{ mass: 9 kg }'), 'a child in arms')?.value).toMatch(/^9 kg/);
    expect(whats(`${oneArc}${sitters}`)).not.toContain('a child in arms');
  });
});
