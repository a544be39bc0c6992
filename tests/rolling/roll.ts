/** Rolls an outline as its running surface lies, and reads what must be there. */
import type { Loop } from '../../src/geometry/piece.js';
import type { Point } from '../../src/geometry/point.js';
import { profileOf } from '../../src/geometry/profile.js';
import { runningSurface, type RunningSurface } from '../../src/geometry/running-surface.js';
import type { MassProperties } from '../../src/mass.js';
import { isMissing, type Missing, type OrMissing } from '../../src/numeric/missing.js';
import { balancesOf } from '../../src/rolling/balance.js';
import { landscapeOf } from '../../src/rolling/landscape.js';
import { rollAtRest, type RestRecord, type RollRecord } from '../../src/rolling/roll-at-rest.js';
import { freeSwing, type Swing } from '../../src/rolling/swing.js';

export const degree = Math.PI / 180;

export function roll(
  outline: Loop,
  body: MassProperties,
  { swing = 6 * degree, pushedAt = null }: { swing?: number; pushedAt?: Point | null } = {},
): RollRecord {
  const profile = profileOf([[outline]]);
  return rollAtRest(profile, runningSurface(profile), body, { swing, pushedAt });
}

/** The rest of a body that must come to rest. */
export function settled(
  outline: Loop,
  body: MassProperties,
  settings: { swing?: number; pushedAt?: Point | null } = {},
): RestRecord {
  const { atRest, rollsOff } = roll(outline, body, settings);
  if (atRest === null) throw new RangeError(`settled: rolls ${rollsOff ?? 'neither way'}`);
  return atRest;
}

/** A number that must be there. */
export function there<T>(value: OrMissing<T>): T {
  if (isMissing(value)) throw new RangeError(`there: missing, ${value.missing}`);
  return value;
}

export const why = (value: unknown): string => (value as Missing).missing;

/** A swing let go at a lean, about a rest at another. */
export function swingFrom(
  outline: Loop,
  body: MassProperties,
  rest: number,
  release: number,
): OrMissing<Swing> {
  const profile = profileOf([[outline]]);
  return freeSwing(landscapeOf(profile, body.centre), runningSurface(profile), body, rest, release);
}

/** The same with no end of a running surface in its way. */
export function swingFreely(
  outline: Loop,
  body: MassProperties,
  rest: number,
  release: number,
): OrMissing<Swing> {
  const everywhere: RunningSurface = {
    owner: 0,
    nose: { lean: -Infinity, length: -Infinity },
    tail: { lean: Infinity, length: Infinity },
  };
  return freeSwing(landscapeOf(profileOf([[outline]]), body.centre), everywhere, body, rest, release);
}

export const balances = (outline: Loop, centre: Point) =>
  balancesOf(landscapeOf(profileOf([[outline]]), centre));

/** a over b less one. */
export const off = (a: number, b: number): number => Math.abs(a / b - 1);
