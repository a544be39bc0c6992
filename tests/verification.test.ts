/**
 * Every number of this project that is held against one not made here. `npm run verify` writes verification.md anew;
 * here it must be what these checks make of it.
 */
import { describe, expect, it } from 'vitest';
import { engines } from './verification/engines.js';
import { mechanics } from './verification/mechanics.js';
import {
  allowedOf,
  expectedOf,
  gotOf,
  holds,
  sourcesOf,
  type OutsideCheck,
} from './verification/outside-check.js';
import { people } from './verification/people.js';
import { printVerification } from './verification/print.js';
import { woodsAndUnits } from './verification/woods-and-units.js';

const rooms = {
  'Mechanics of rolling': mechanics,
  'Other engines': engines,
  'Bodies of people': people,
  'Woods, units, statistics': woodsAndUnits,
};
const checks: readonly OutsideCheck[] = Object.values(rooms).flat();
const asserted = checks.filter(({ mark }) => mark !== 'MEMORY');

describe('held against the outside', () => {
  it.each(asserted.map((check) => [check.what, check] as const))('%s', (_, check) => {
    const got = gotOf(check);
    const expected = expectedOf(check);
    expect(holds(check, got), `${got} for ${expected}`).toBe(true);
    // What is allowed is a small part of the number, or nobody could tell it from another.
    if (expected !== 0) expect(allowedOf(check) / Math.abs(expected)).toBeLessThanOrEqual(0.2 + 1e-9);
  });

  it('are many, from many sources that know nothing of each other', () => {
    expect(asserted.length).toBeGreaterThanOrEqual(40);
    expect(sourcesOf(asserted).size).toBeGreaterThanOrEqual(12);
    expect(new Set(checks.map(({ what }) => what)).size).toBe(checks.length);
  });

  it('are written in verification.md', async () => {
    await expect(printVerification(rooms)).toMatchFileSnapshot('verification.md');
  }, 60_000);
});
