/** The shape of a running surface: its flats, its corners, and the changes of radius that are felt as a bump. */
import type { Profile } from './profile.js';
import { arcsWithJumps } from './radius-jumps.js';
import type { RunningSurface } from './running-surface.js';
import { runsOf } from './surface-runs.js';

export interface SurfaceShape {
  /** Longest flat, metres; 0 without one. */
  readonly flatLongest: number;
  /** Turn of the sharpest corner that is rolled over, radians; 0 without one. */
  readonly sharpestCorner: number;
  /** Largest relative change of radius that is undone again within 50 mm. */
  readonly radiusJump: number;
}

export function surfaceShape(profile: Profile, surface: RunningSurface): SurfaceShape {
  const runs = runsOf(profile, surface);
  const corners = runs.filter(({ radius }) => radius === 0);
  return {
    flatLongest: Math.max(0, ...runs.map(({ flatAfter }) => flatAfter)),
    sharpestCorner: Math.max(0, ...corners.map(({ turn }) => turn)),
    radiusJump: Math.max(0, ...arcsWithJumps(runs).map(({ jump }) => Math.abs(jump))),
  };
}
