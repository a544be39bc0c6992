/** What the chair rolls on: one profile of all parts, or the mean of two where the sides are unlike. */
import type { DesignInSI, PartInSI } from '../design/design.js';
import { meanProfile } from '../geometry/mean-profile.js';
import { meanSurface, type Side } from '../geometry/mean-surface.js';
import type { Point } from '../geometry/point.js';
import { profileOf } from '../geometry/profile.js';
import { runningSurface } from '../geometry/running-surface.js';
import { surfaceShape, type SurfaceShape } from '../geometry/surface-shape.js';
import type { Chair } from './chair.js';
import type { PartOutline } from './part-outline.js';

type RolledOn = Pick<Chair, 'profile' | 'surface' | 'surfaceShape' | 'sides'>;

export function rolledOn({ parts }: DesignInSI, outlines: readonly PartOutline[]): RolledOn {
  if (parts.every(({ side }) => side === null)) {
    const { profile, surface } = sideOf(parts, outlines, null);
    return { profile, surface, surfaceShape: surfaceShape(profile, surface), sides: null };
  }
  const [left, right] = [sideOf(parts, outlines, 'right'), sideOf(parts, outlines, 'left')];
  const profile = meanProfile(left.profile, right.profile);
  return {
    profile,
    surface: meanSurface(profile, left, right),
    surfaceShape: worse(surfaceShape(left.profile, left.surface), surfaceShape(right.profile, right.surface)),
    sides: { left: left.profile, right: right.profile },
  };
}

/** Profile and running surface of all parts but those of the other side; owners are indices of the design's parts. */
function sideOf(
  parts: readonly PartInSI[],
  outlines: readonly PartOutline[],
  without: PartInSI['side'],
): Side {
  const loops = outlines.map(({ outline }, i) =>
    without !== null && parts[i]!.side === without ? [] : outline.map(({ boundary }) => boundary),
  );
  const profile = profileOf(loops);
  return { profile, surface: runningSurface(profile, (part) => statedEnds(parts[part]!, outlines[part]!)) };
}

const statedEnds = ({ runs }: PartInSI, { ends }: PartOutline): readonly [Point, Point] | null =>
  runs ? [runs.from, runs.to] : ends;

/** A flat, a corner or a bump on one side is there however the other side is. */
const worse = (a: SurfaceShape, b: SurfaceShape): SurfaceShape => ({
  flatLongest: Math.max(a.flatLongest, b.flatLongest),
  sharpestCorner: Math.max(a.sharpestCorner, b.sharpestCorner),
  radiusJump: Math.max(a.radiusJump, b.radiusJump),
});
