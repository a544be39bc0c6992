import { describe, expect, it } from 'vitest';
import { directionsOf, mostCoordinates, sobolDigits } from '../../src/numeric/sobol.js';

const all = Array.from({ length: mostCoordinates }, (_, coordinate) => directionsOf(coordinate));
const point = (number: number): number[] =>
  all.map((directions) => sobolDigits(directions, number) / 2 ** 32);

/** scipy 1.17.1, scipy.stats.qmc.Sobol(40, scramble=False), which reads the file new-joe-kuo-6.21201. */
const number777 = [
  0.6923828125, 0.9365234375, 0.1630859375, 0.2744140625, 0.6357421875, 0.3564453125, 0.1904296875,
  0.7626953125, 0.3486328125, 0.3232421875, 0.7451171875, 0.6962890625, 0.3837890625, 0.4736328125,
  0.5693359375, 0.5146484375, 0.4033203125, 0.8642578125, 0.3701171875, 0.7529296875, 0.2373046875,
  0.2724609375, 0.9462890625, 0.4814453125, 0.3447265625, 0.1455078125, 0.0595703125, 0.7802734375,
  0.0634765625, 0.1103515625, 0.5419921875, 0.8994140625, 0.1123046875, 0.0029296875, 0.8056640625,
  0.9462890625, 0.4619140625, 0.3505859375, 0.3427734375, 0.3583984375,
];

describe('Sobol’ points', () => {
  it('begin as published', () => {
    expect([0, 1, 2, 3, 4, 5].map((number) => point(number).slice(0, 6))).toEqual([
      [0, 0, 0, 0, 0, 0],
      [0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
      [0.75, 0.25, 0.25, 0.25, 0.75, 0.75],
      [0.25, 0.75, 0.75, 0.75, 0.25, 0.25],
      [0.375, 0.375, 0.625, 0.875, 0.375, 0.125],
      [0.875, 0.875, 0.125, 0.375, 0.875, 0.625],
    ]);
    expect(point(777)).toEqual(number777);
  });

  it.each([1, 4, 7, 10])('of every coordinate alone, the first 2^%i fill as many equal parts', (power) => {
    const count = 2 ** power;
    for (const directions of all) {
      const parts = Array.from({ length: count }, (_, n) => sobolDigits(directions, n) / 2 ** (32 - power));
      expect(new Set(parts.map(Math.floor)).size).toBe(count);
    }
  });

  it('of the first two coordinates are a net: every box of 2^-k × 2^(k-m) holds one of 2^m', () => {
    const power = 8;
    const points = Array.from({ length: 2 ** power }, (_, number) => point(number));
    for (let k = 0; k <= power; k++) {
      const boxes = points.map(([x, y]) => `${Math.floor(x! * 2 ** k)} ${Math.floor(y! * 2 ** (power - k))}`);
      expect(new Set(boxes).size).toBe(2 ** power);
    }
  });

  it('are no more than the table has', () => {
    expect(() => directionsOf(mostCoordinates)).toThrow(RangeError);
  });
});
