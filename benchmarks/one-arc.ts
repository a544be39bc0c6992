/** A runner of one arc of 1.07 m, and the integral of its swings with any number of steps. */
import { profileOf } from '../src/geometry/profile.js';
import { runningSurface } from '../src/geometry/running-surface.js';
import { rocker } from '../src/geometry/words/rocker.js';
import type { MassProperties } from '../src/mass.js';
import { isMissing } from '../src/numeric/missing.js';
import { landscapeOf } from '../src/rolling/landscape.js';
import { wholeSwing } from '../src/rolling/rolling-time.js';
import { freeSwing } from '../src/rolling/swing.js';

export const degree = Math.PI / 180;

export function runnerOfOneArc() {
  const made = rocker({
    arcs: [{ radius: 1.07, until: null }],
    depth: 0.05,
    nose: 0.5,
    tail: 0.5,
    at: 0,
    along: 'level',
  });
  if (!made.ok) throw new Error('the benchmark’s rocker is none');
  const profile = profileOf([[made.boundary]]);
  return { profile, surface: runningSurface(profile, () => [made.ends.tail, made.ends.nose]) };
}

/** Periods of a body on it, seconds. */
export function periodsOn({ profile, surface }: ReturnType<typeof runnerOfOneArc>, body: MassProperties) {
  const landscape = landscapeOf(profile, body.centre);
  const stretch = landscape.stretches
    .filter((each) => each.kind === 'round')
    .find(({ radius }) => radius > 0)!;
  return {
    /** As the project has it. */
    exact: (swing: number): number => {
      const found = freeSwing(landscape, surface, body, 0, swing);
      if (isMissing(found)) throw new Error(found.missing);
      return found.period;
    },
    /** The same integral with far more steps than it needs. */
    truth: (swing: number, steps: number): number =>
      wholeSwing(stretch, body.inertia / body.mass, swing, steps),
  };
}
