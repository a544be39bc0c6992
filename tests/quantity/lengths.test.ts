/** Lengths as makers write them. Expected values by hand: 1 in = 25.4 mm, 1 ft = 304.8 mm. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { read } from './scope.js';

/** Ten times the rounding of one multiplication or addition of doubles. */
const rounding = 1e-15;
const expectMillimetres = (source: string, millimetres: number) => {
  expect(Math.abs(read(source) - millimetres / 1000)).toBeLessThan(rounding * 10);
};

describe('one length', () => {
  it.each([
    ['1-3/4 in', 44.45],
    ['1 3/4 in', 44.45],
    ['1 3/4"', 44.45],
    ['1 3 / 4 in', 44.45],
    ['1–3/4 in', 44.45],
    ['1¾"', 44.45],
    ['1 ¾ in', 44.45],
    ['1-¾ in', 44.45],
    ['1 3⁄4 in', 44.45],
    ['1.75in', 44.45],
    ['⅝ in', 15.875],
    ['⅛"', 3.175],
    ['¼"', 6.35],
    ['⅜"', 9.525],
    ['½"', 12.7],
    ['⅞"', 22.225],
    ['⅓ ft', 101.6],
    ['⅔ ft', 203.2],
    ['3/4 in', 19.05],
    ['3 / 4 in', 19.05],
    ['12/5 in', 60.96],
    ['.5 in', 12.7],
    ['16.375in', 415.925],
    ['19 mm', 19],
    ['1e-3 m', 1],
    ["5'", 1524],
    ["5''", 127],
    ['1 yd', 914.4],
    ['2 inches', 50.8],
  ])('%s', expectMillimetres);

  it.each([
    ['16 3/8', 415.925],
    ['1-3/4', 44.45],
    ['-1-3/4', -44.45],
    ['(1-3/4)', 44.45],
    ['½', 12.7],
    ['42', 1066.8],
    ['1/2', 12.7],
  ])('%s without a unit, in a design in inches', expectMillimetres);

  it('reads a bare number in the units of the design', () => {
    expect(read('42', 'length', 'mm')).toBe(0.042);
    expect(read(42, 'length', 'cm')).toBe(0.42);
    expect(read('ratio', 'length', 'm')).toBe(3);
    expect(read('2 in', 'length', 'mm')).toBe(0.0508);
  });
});

describe('feet and inches', () => {
  it.each([
    `5' 2"`,
    `5'2"`,
    `5'-2"`,
    `5' 2`,
    `5'2`,
    `5'-2`,
    `5 ft 2 in`,
    `5ft 2in`,
    `5 feet 2 inches`,
    '5′ 2″',
    '5′-2″',
    '5’ 2”',
    '5‘ 2“',
    `5' 2''`,
    '5 ft + 2 in',
    '(5 ft) + 2"',
    '62 in',
    '62',
  ])('%s is 1574.8 mm', (source) => {
    expectMillimetres(source, 1574.8);
  });

  it.each([
    [`5' 6-1/2"`, 1689.1],
    [`5' 6 1/2"`, 1689.1],
    [`5' 6½"`, 1689.1],
    [`5'-6 1/2"`, 1689.1],
    [`5'-6-1/2"`, 1689.1],
    [`5' 6 1/2`, 1689.1],
    [`5' 6.5"`, 1689.1],
    [`5' 1/2"`, 1536.7],
    [`5' ½`, 1536.7],
    [`5' 0"`, 1524],
    ['5 ft 2-1/2 in', 1587.5],
    ['12 ft 3 in', 3733.8],
    ['1 yd 2 ft 3 in', 1600.2],
    ['1 m 20 cm 5 mm', 1205],
  ])('%s', expectMillimetres);

  it('covers the whole literal by a sign in front', () => {
    expectMillimetres(`-5' 2"`, -1574.8);
    expectMillimetres('- 1 3/4 in', -44.45);
    expectMillimetres(`3 * 5' 2"`, 3 * 1574.8);
    expectMillimetres(`5' 2" / 2`, 1574.8 / 2);
  });

  it('takes spaced dashes between quantities for differences', () => {
    expectMillimetres('5 ft - 2 in', 1473.2);
    expectMillimetres('3 in - 1/2 in', 63.5);
    expectMillimetres('3 in-1/2 in', 63.5);
    expectMillimetres('12 - 7/2', 8.5 * 25.4);
  });
});

describe('every sixteenth', () => {
  const sixteenths = fc.integer({ min: 0, max: 100 * 16 });
  const vulgar = new Map([
    ['1/8', '⅛'],
    ['1/4', '¼'],
    ['3/8', '⅜'],
    ['1/2', '½'],
    ['5/8', '⅝'],
    ['3/4', '¾'],
    ['7/8', '⅞'],
  ]);

  it('is the same in each way of writing it', () => {
    fc.assert(
      fc.property(sixteenths, (count) => {
        const [whole, over] = [Math.floor(count / 16), count % 16];
        const reduced = [2, 4, 8, 16].find((under) => (over * under) % 16 === 0)!;
        const fraction = `${(over * reduced) / 16}/${reduced}`;
        const [feet, inches] = [Math.floor(whole / 12), whole % 12];
        const ways = [
          `${whole} ${over}/16 in`,
          `${whole}-${over}/16 in`,
          `${whole} ${fraction}"`,
          `${whole}-${fraction}`,
          `${whole + over / 16} in`,
          `${count}/16 in`,
          `${whole} in + ${over}/16 in`,
          `${feet}' ${inches}-${fraction}"`,
          `${feet} ft ${inches} ${fraction} in`,
          `${feet}'-${inches} ${over}/16`,
          `${whole}${vulgar.get(fraction) ?? ` ${fraction}`} in`,
        ];
        for (const way of ways) expectMillimetres(way, (count * 25.4) / 16);
      }),
    );
  });
});
