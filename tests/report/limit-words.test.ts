import { describe, expect, it } from 'vitest';
import type { Remedy } from '../../src/explore/remedy.js';
import { dimensionOf } from '../../src/quantity/dimension.js';
import { sayLimit } from '../../src/report/limit-words.js';
import { sayRemedy } from '../../src/report/remedy-words.js';
import { inSI, limit } from './made-up.js';

const inch = 0.0254;

describe('a limit in words', () => {
  it('has finer digits where its ends would read as one number', () => {
    expect(sayLimit(limit('seated', 'x', 'seatSlopeDeg', [8.9, 9.1], 10.12), 'in')).toBe(
      'x: seat slope, front higher: 10.1°, wanted 8.9° to 9.1°: 1° too much',
    );
    expect(sayLimit(limit('seated', 'x', 'kneeHollowGapM', [1, 1.03], 0.5), 'in')).toBe(
      'x: knee hollow over the front edge: 1/2 in, wanted 1 in to 1-1/32 in: 1/2 in too little',
    );
  });

  it('has the usual ones else, and of one value only', () => {
    expect(sayLimit(limit('seated', 'x', 'seatSlopeDeg', [8.9, 9.6], 10.12), 'in')).toContain(
      '10°, wanted 9° to 9.5°: 0.5° too much',
    );
    expect(sayLimit(limit('seated', 'x', 'seatSlopeDeg', [9.1, 9.1], 10.12), 'in')).toContain(
      '10°, wanted 9°:',
    );
  });
});

describe('what to change', () => {
  const kick = limit('getting-up', 'x', 'kickBackDeg', [null, 19], 32);
  const remedy = (most: number): Remedy => ({
    stage: 'drawing',
    changes: [
      {
        change: {
          variable: { name: 'nose', dimension: dimensionOf.length, stated: 17 * inch, of: null },
          step: inch / 16,
          from: 272,
          least: -100,
          greatest: 200,
        },
        from: 17 * inch,
        to: 27.5 * inch,
        neededFor: [],
      },
    ],
    value: inSI('kickBackDeg', 20.4),
    range: { min: null, max: inSI('kickBackDeg', most) },
    notMet: [],
    breaks: [],
    moves: [],
    mendsAll: false,
  });

  it('tells the bound that holds then where it moves with the design', () => {
    expect(sayRemedy(remedy(20.6), kick, 'in')).toBe(
      'nose 17 in → 27-1/2 in (then 20.5°, wanted at most 20.5° then)',
    );
    expect(sayRemedy(remedy(19), kick, 'in')).toBe('nose 17 in → 27-1/2 in (then 20.5°)');
  });
});
