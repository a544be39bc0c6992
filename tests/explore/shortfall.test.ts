import { expect, test } from 'vitest';
import type { JudgedLimit } from '../../src/checks/verdict.js';
import { missedInAll, worstOff } from '../../src/explore/shortfall.js';
import type { LoadId } from '../../src/names.js';
import { limit, noRest } from '../report/made-up.js';

const period = (value: number | string) => limit('seated', 'Ada', 'periodS', [1.6, 2], value);
const left = (value: number) => limit('leaning-back-hard', 'Ada', 'rockerLeftBackM', [2, null], value);
const now = (limits: readonly JudgedLimit[], ...rolled: LoadId[]) => ({ limits, rolled: new Set(rolled) });

test('of some limits the worst counts, over the size of its bound, negative below', () => {
  const goals = [period(2.2), left(1)];
  const both = ['seated', 'leaning-back-hard'] as const;
  expect(worstOff(goals, now(goals, ...both))).toBeCloseTo(-0.5, 12);
  expect(worstOff([period(2.2)], now(goals, ...both))).toBeCloseTo(0.1, 12);
  expect(worstOff(goals, now([period(1.8), left(3)], ...both))).toBe(0);
  expect(worstOff([period(2.2)], now([period('no rest')], 'seated'))).toBe(Infinity);
});

test('a limit that is no more judged is as far off as can be, but for coming to rest', () => {
  expect(worstOff([period(2.2)], now([], 'seated'))).toBe(Infinity);
  expect(worstOff([noRest('seated', 'Ada')], now([], 'seated'))).toBe(0);
});

test('what has no number lies beyond its bound, on the side of it', () => {
  const none = limit('leaning-back-hard', 'Ada', 'leftToTipBackDeg', [8, null], 'goes over');
  expect(worstOff([none], now([none], 'leaning-back-hard'))).toBe(-Infinity);
  const kick = limit('getting-up', 'Ada', 'kickBackDeg', [null, 25], 'goes over');
  expect(worstOff([kick], now([kick], 'getting-up'))).toBe(Infinity);
});

test('a limit whose load is not rolled is a broken promise', () => {
  expect(() => worstOff([period(2.2)], now([], 'empty'))).toThrow(RangeError);
});

test('in all, each miss counts as one at most', () => {
  expect(missedInAll([period(1.8), period(2.2), left(1)])).toBeCloseTo(0.6, 12);
  expect(missedInAll([period('no rest'), period(200)])).toBe(2);
  expect(missedInAll([])).toBe(0);
});
