import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { quartiles, timeRatio } from '../../benchmarks/timing.js';

describe('quartiles', () => {
  // R 4, quantile(x, c(.25, .5, .75)), type 7: the formula's own values for 1..21, and for four numbers.
  it.each([
    [Array.from({ length: 21 }, (_, i) => 21 - i), { low: 6, median: 11, high: 16 }],
    [[4, 1, 3, 2], { low: 1.75, median: 2.5, high: 3.25 }],
    [[7], { low: 7, median: 7, high: 7 }],
  ])('of %j', (values, expected) => {
    expect(quartiles(values)).toEqual(expected);
  });

  it.each([[[]], [[1, Number.NaN]]])('of %j are refused', (values) => {
    expect(() => quartiles(values)).toThrow(RangeError);
  });
});

describe('timeRatio', () => {
  it('tells the longer from the shorter', async () => {
    const { median } = await timeRatio(
      () => pause(20),
      () => pause(5),
      5,
    );
    // 4 by the clock; timers are late by a millisecond or so each, more on a busy machine.
    expect(median).toBeGreaterThan(1.5);
  });

  it('runs both the same number of times and takes turns in going first', async () => {
    let order = '';
    await timeRatio(
      () => {
        order += 's';
      },
      () => {
        order += 'y';
      },
      4,
    );
    expect(order).toBe('sy' + 'ys' + 'sy' + 'ys' + 'sy');
  });
});
