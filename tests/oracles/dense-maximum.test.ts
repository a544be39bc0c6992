import { describe, expect, it } from 'vitest';
import { denseMaximum } from './dense-maximum.js';

describe('maximum by looking everywhere', () => {
  it.each([
    ['inside', (x: number) => Math.sin(x), 0, 3, 1],
    ['at an end', (x: number) => x * x, -1, 2, 4],
    ['beside a jump', (x: number) => (x < 0.123 ? x : -x), -1, 1, 0.123],
    [
      'on the higher of two hills',
      (x: number) => Math.cos(20 * x) + x / 10,
      0,
      0.5,
      Math.cos(Math.asin(0.005)) + (Math.PI / 10 + Math.asin(0.005) / 20) / 10,
    ],
  ])('%s', (_, f, a, b, exact) => {
    // The last look has steps below 1e-15.
    expect(Math.abs(denseMaximum(f, a, b) - exact)).toBeLessThan(1e-14);
  });
});
