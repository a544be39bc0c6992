import { expect, it } from 'vitest';
import { mistakesIn, oneArc } from '../reading.js';

const kept = (keep: string): string[] => mistakesIn(`${oneArc}dimensions: { radius: 1 m }\nkeep: ${keep}\n`);

it('what is kept is told by names that this design has', () => {
  expect(kept('[radius, front-legs]')).toEqual([]);
  expect(kept('radius')).toEqual([
    expect.stringMatching(/expected a list of names such as \[radius, rocker-radius\], found/),
  ]);
});

it('what is kept is said once', () => {
  expect(kept('[radius, front-legs, radius]')).toEqual([expect.stringMatching(/expected each name once/)]);
});
