/** Arcs of a drawing meet but for the rounding of its coordinates: such a joint is a joint, no corner and no flat. */
import { describe, expect, it } from 'vitest';
import { profileOf } from '../../src/geometry/profile.js';
import { runningSurface } from '../../src/geometry/running-surface.js';
import { path } from '../../src/geometry/words/path.js';
import { isMissing } from '../../src/numeric/missing.js';
import { rollAtRest } from '../../src/rolling/roll-at-rest.js';

const inch = 0.0254;
const body = { mass: 10, centre: { x: 0, y: 0.4 }, inertia: 1.4 };

/** Two radii that join at the origin, tangent to the floor, with the far ends written to so many decimals of an inch. */
function drawn(back: number, front: number, decimals: number): string {
  const end = (radius: number, x: number): string =>
    (radius - Math.sqrt(radius * radius - x * x)).toFixed(decimals);
  return (
    `M -17.5 ${end(back, 17.5)} A ${back} ${back} 0 0 1 0 0 A ${front} ${front} 0 0 1 16.5 ${end(front, 16.5)} ` +
    `L 16 6 L -17 6 Z`
  );
}

const roll = (data: string) => {
  const made = path({ data, unit: inch });
  if (!made.ok) throw new Error(JSON.stringify(made.flaws));
  const profile = profileOf([made.boundaries]);
  const surface = runningSurface(profile);
  return rollAtRest(profile, surface, body, { swing: 0.1, pushedAt: null });
};

/** π Σ sqrt((I + m h²) / (m g (R - h))): half a period of each radius. */
const period = (radii: readonly number[]): number =>
  radii.reduce((sum, radius) => {
    const [h, g] = [body.centre.y, 9.80665];
    return (
      sum + Math.PI * Math.sqrt((body.inertia + body.mass * h * h) / (body.mass * g * (radius * inch - h)))
    );
  }, 0);

describe('two arcs drawn to', () => {
  it.each([
    [2, 42, 60],
    [3, 42, 60],
    [3, 60, 42],
    [4, 38, 40],
  ])('%i decimals, %i and %i in', (decimals, back, front) => {
    const { atRest, restsOnSurface } = roll(drawn(back, front, decimals));
    expect(restsOnSurface).toHaveLength(1);
    // Rounded ends turn each arc by up to half the last decimal over its chord: 3e-4 of a radian at two decimals. The
    // rest may then lie on either arc beside the joint, and has the period of that arc or of both halves.
    const periods = [period([back, back]), period([front, front]), period([back, front])];
    expect(
      Math.min(...periods.map((each) => Math.abs((atRest!.smallPeriod as number) / each - 1))),
    ).toBeLessThan(2e-3);
    expect(Math.abs(atRest!.rest.lean)).toBeLessThan(2e-3);
  });

  it('does not take a flat for a joint', () => {
    const { atRest } = roll(
      'M -17.5 3.8 A 42 42 0 0 1 -0.5 0 L 0.5 0 A 42 42 0 0 1 16.5 3.4 L 16 6 L -17 6 Z',
    );
    expect(isMissing(atRest!.smallPeriod) && atRest!.smallPeriod.missing).toMatch(/^rests on a flat 25 mm/);
  });
});
