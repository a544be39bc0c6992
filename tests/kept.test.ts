import { expect, test } from 'vitest';
import { keptByPlace, keptWhileSame } from '../src/kept.js';

test('is made anew only when a thing, or their number, is another', () => {
  const kept = keptWhileSame<number>();
  let made = 0;
  const ask = (...of: unknown[]): number => kept(of, () => ++made);
  const thing = {};
  expect([ask(thing, 1), ask(thing, 1), ask({}, 1), ask(thing, 1), ask(thing), ask(), ask()]).toEqual([
    1, 1, 2, 3, 4, 5, 5,
  ]);
  // NaN is never the same: what has no number is looked at again.
  expect([ask(NaN), ask(NaN)]).toEqual([6, 7]);
});

test('each place keeps its own', () => {
  const kept = keptByPlace<string>();
  const ask = (place: number, of: string): string => kept(place, [of], () => `${place}${of}`);
  expect([ask(0, 'a'), ask(1, 'a'), ask(0, 'a'), ask(3, 'b')]).toEqual(['0a', '1a', '0a', '3b']);
});
