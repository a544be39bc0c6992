import { describe, expect, it } from 'vitest';
import { evenPoints, mixed, scrambledDigits } from '../../src/numeric/owen-scramble.js';

const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;

describe('scrambling', () => {
  it('keeps as many leading digits alike as were alike, and parts where they parted (Owen 1995)', () => {
    const numbers = Array.from({ length: 60 }, (_, i) => mixed(3, i));
    const alike = (a: number, b: number): number => Math.clz32(a ^ b);
    for (const a of numbers)
      for (const near of [a ^ 1, a ^ 0x400, a ^ 0x123456, mixed(4, a)])
        expect(alike(scrambledDigits(a, 7), scrambledDigits(near >>> 0, 7))).toBe(alike(a, near));
  });

  it('turns every digit about as often as not', () => {
    for (let bit = 0; bit < 32; bit++) {
      const turned = Array.from({ length: 4096 }, (_, key) => (scrambledDigits(0, mixed(key)) >>> bit) & 1);
      // Five standard deviations of 4096 tosses of a coin.
      expect(Math.abs(mean(turned) - 0.5)).toBeLessThan(5 * Math.sqrt(0.25 / 4096));
    }
  });
});

describe('even points', () => {
  it('are the same for the same seed, others for another', () => {
    expect(evenPoints(64, 3, 1)).toEqual(evenPoints(64, 3, 1));
    expect(evenPoints(64, 3, 1)).not.toEqual(evenPoints(64, 3, 2));
    // A coordinate does not hang on how many there are.
    expect(evenPoints(64, 9, 1).map((point) => point.slice(0, 3))).toEqual(evenPoints(64, 3, 1));
  });

  it('fall once into each of as many parts, in those coordinates too that the table lacks', () => {
    const points = evenPoints(128, 45, 5);
    for (let coordinate = 0; coordinate < 45; coordinate++)
      expect(new Set(points.map((point) => Math.floor(point[coordinate]! * 128))).size).toBe(128);
    expect(points.flat().every((x) => x > 0 && x < 1)).toBe(true);
  });

  it('stay a net in the first two coordinates', () => {
    for (let k = 0; k <= 8; k++) {
      const boxes = evenPoints(256, 2, 11).map(
        ([x, y]) => `${Math.floor(x! * 2 ** k)} ${Math.floor(y! * 2 ** (8 - k))}`,
      );
      expect(new Set(boxes).size).toBe(256);
    }
  });

  it('give a smooth mean without bias, and far closer than chance', () => {
    /** ∏ 2x over five coordinates: mean 1, variance (4/3)^5 - 1. */
    const of = (point: readonly number[]): number => point.reduce((product, x) => product * 2 * x, 1);
    const errors = Array.from({ length: 100 }, (_, seed) => mean(evenPoints(256, 5, seed).map(of)) - 1);
    const root = Math.sqrt(mean(errors.map((error) => error ** 2)));
    expect(root).toBeLessThan(Math.sqrt(((4 / 3) ** 5 - 1) / 256) / 3);
    expect(Math.abs(mean(errors))).toBeLessThan((4 * root) / 10);
  });
});
