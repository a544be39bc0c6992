/**
 * Every number of this project that is held against one not made here. `npm run verify` writes verification.md anew;
 * here it must be what these checks make of it.
 */
import { describe, expect, it } from 'vitest';
import { engines } from './verification/engines.js';
import { mechanics } from './verification/mechanics.js';
import { gotOf, holds, type OutsideCheck } from './verification/outside-check.js';
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
    expect(holds(check, got), `${got} for ${check.expected}`).toBe(true);
    // The same number as far again beyond what is allowed does not hold.
    const off = check.within * (check.relative ? Math.abs(check.expected) : 1);
    expect(holds(check, check.expected + 2 * Math.max(off, 1e-12))).toBe(false);
  });

  it('are many, from many sources that know nothing of each other', () => {
    expect(asserted.length).toBeGreaterThanOrEqual(40);
    const sources = new Set(asserted.map(({ source }) => source.split(/[,:(]/)[0]));
    expect(sources.size).toBeGreaterThanOrEqual(12);
    expect(new Set(checks.map(({ what }) => what)).size).toBe(checks.length);
  });

  it('are written in verification.md', async () => {
    await expect(printVerification(rooms)).toMatchFileSnapshot('verification.md');
  }, 60_000);
});
