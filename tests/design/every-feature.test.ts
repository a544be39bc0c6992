/** A design that uses everything the format has, in SI. The numbers on the right are worked out by hand. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { woodNamed } from '../../src/wood/woods.js';
import { read, resolved } from './read.js';

const text = readFileSync(new URL('every-feature.yaml', import.meta.url), 'utf8');
const design = resolved(text);

const inch = 0.0254;
const pound = 0.45359237;
const degree = Math.PI / 180;
/** To the rounding of a few operations. */
const near = (value: number): number => expect.closeTo(value, 12) as number;
const at = (x: number, y: number) => ({ x: near(x), y: near(y) });

it('names the chair, its floor and its room', () => {
  expect(design).toMatchObject({
    name: 'Reading-room rocker',
    kind: 'nursing',
    units: 'cm',
    floor: { name: null, friction: 0.35, rolling: near(0.0015) },
    wall: near(14 * inch),
    spacing: near(20 * inch),
  });
});

it('knows who sits in it', () => {
  const unmeasured = { kneeHollow: null, buttockToKneeHollow: null, elbowAboveSeat: null };
  expect(design.sitters).toEqual([
    {
      name: '007',
      body: 'female',
      stature: near(66.5 * inch),
      mass: near(140 * pound),
      percentile: null,
      measured: unmeasured,
    },
    {
      name: 'tall',
      body: 'male',
      stature: null,
      mass: 110,
      percentile: 95,
      measured: {
        kneeHollow: near(17 * inch),
        buttockToKneeHollow: near(20 * inch),
        elbowAboveSeat: near(9 * inch),
      },
    },
  ]);
  // Nine twelfths of 365.25 days.
  expect(design.child).toEqual({ body: 'girl', age: near(0.75 * 365.25 * 86_400), mass: null });
});

it('has its rockers', () => {
  const [left, right] = design.parts;
  expect(left).toEqual({
    name: 'left rocker',
    count: 1,
    across: near(1.25 * inch),
    wood: 'hard maple',
    density: woodNamed('hard maple')!.density,
    mass: null,
    side: 'left',
    runs: { from: at(0.4, 0.03), to: at(-0.5, 0.04) },
    outline: [
      {
        hole: false,
        word: 'rocker',
        arcs: [
          { radius: near(1.05), until: near(9 * inch) },
          { radius: near(60 * inch), until: null },
        ],
        depth: near(2.25 * inch),
        nose: near(22 * inch),
        tail: near(20 * inch),
        at: near(-4 * inch),
        along: 'curve',
      },
    ],
  });
  expect(right).toMatchObject({
    wood: null,
    density: near(700),
    across: near(0.03),
    side: 'right',
    outline: [{ arcs: [{ radius: near(42 * inch), until: null }], at: 0, along: 'level' }],
  });
});

it('has outlines of every other form', () => {
  const [, , post, seat] = design.parts;
  expect(post).toMatchObject({ count: 2, mass: near(7.25 * pound), across: null, density: null, runs: null });
  expect(post!.outline).toEqual([
    { hole: false, word: 'bar', from: at(0, 0.05), to: at(5 * inch, 0.6), width: near(1.75 * inch) },
    { hole: false, word: 'circle', centre: at(0, 0.7), radius: near(0.06) },
    { hole: true, word: 'circle', centre: at(0, 0.7), radius: near(0.015) },
    { hole: false, word: 'rectangle', from: at(0.1, 0.1), to: at(0.12, 0.14) },
  ]);
  expect(seat).toMatchObject({ name: 'seat: woven', mass: near(0.9) });
  expect(seat!.outline).toEqual([{ hole: false, word: 'path', data: 'M 0 0 L 1,0 L 1,1 Z', unit: 0.01 }]);
});

it('has its extras and lines', () => {
  expect(design.extras).toEqual([
    { name: '0', mass: 0.5, at: at(0, 12 * inch), inertia: near(0.002) },
    { name: 'bolts', mass: near(pound / 2), at: at(0.01, 0.02), inertia: 0 },
  ]);
  expect(design.seat).toEqual({ front: at(0.25, 0.42), rear: at(-0.2, 0.38) });
  expect(design.back).toEqual({ foot: at(-0.22, 0.38), top: at(-0.4, 1.05) });
  expect(design.arms).toEqual({ rear: at(-0.22, 0.62), front: at(0.25, 0.64) });
});

it('changes the loads; one with a child takes the settings of the one without', () => {
  const lean = { trunkAhead: near(20 * degree), throwTime: 0.5, shove: 0.25, shoveTime: 0.6 };
  const rise = { leaveTime: 1.5, slideTime: 0.7, armShare: 0.3, seatPush: 0.2 };
  expect(design.loads).toEqual({
    empty: { swing: near(5 * degree) },
    seated: { swing: near(15 * degree) },
    'with-a-child': { swing: near(15 * degree) },
    'leaning-back-hard': lean,
    'leaning-back-hard-with-a-child': { ...lean, shove: 0.1 },
    'getting-up': rise,
    'getting-up-with-a-child': rise,
    'seated-feet-up': null,
    'child-on-the-tails': { mass: near(33 * pound) },
  });
});

it('has its limits, those without a load first', () => {
  expect(design.limits).toEqual([
    { measure: 'seatSlopeDeg', load: null, range: { min: near(Math.atan(1 / 12)), max: null } },
    { measure: 'periodS', load: null, range: { min: 1.8, max: 2.6 } },
    { measure: 'tipBackEnergyJ', load: null, range: { min: 20, max: null } },
    { measure: 'frictionDemand', load: null, range: { min: null, max: 0.25 } },
    { measure: 'wallClearanceM', load: null, range: null },
    { measure: 'tailLoadBorneKg', load: null, range: { min: 10, max: null } },
    { measure: 'seatSlopeDeg', load: 'empty', range: { min: near(-2 * degree), max: near(15 * degree) } },
    { measure: 'restCount', load: 'empty', range: { min: 1, max: 1 } },
    { measure: 'edgeLoadBorneN', load: 'getting-up', range: { min: 200, max: null } },
  ]);
});

it('lists its named values, each after those it is made of', () => {
  const { dimensions } = read(text);
  const names = dimensions.map(({ name }) => name);
  expect([...names].sort()).toEqual(['bend', 'halfLean', 'lean', 'overhang', 'rungs', 'tail']);
  expect(names.indexOf('tail')).toBeLessThan(names.indexOf('overhang'));
  expect(names.indexOf('halfLean')).toBeLessThan(names.indexOf('lean'));
  const overhang = dimensions.find(({ name }) => name === 'overhang');
  expect(overhang).toMatchObject({ dimension: [1, 0, 0, 0], value: near(5 * inch) });
});

it('has the errors of the shop, each in its own kind', () => {
  expect(design.errors).toEqual([
    { dimension: 'tail', spread: 'even', size: near(0.001) },
    { dimension: 'overhang', spread: 'normal', size: near(0.005) },
    { dimension: 'lean', spread: 'normal', size: near(1 * degree) },
    { dimension: 'rungs', spread: 'even', size: 0.5 },
  ]);
});
