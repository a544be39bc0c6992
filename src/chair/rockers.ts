/** What the chair rolls on: one profile of all parts, or the mean of two where the sides are unlike. */
import type { DesignInSI, PartInSI } from '../design/design.js';
import { millimetres } from '../geometry/flaw.js';
import { meanProfile } from '../geometry/mean-profile.js';
import { meanSurface, type Side } from '../geometry/mean-surface.js';
import type { Loop } from '../geometry/piece.js';
import type { Point } from '../geometry/point.js';
import { profileMaker } from '../geometry/profile.js';
import { awayFromHull, runningSurface } from '../geometry/running-surface.js';
import { surfaceShape, type SurfaceShape } from '../geometry/surface-shape.js';
import { keptWhileSame } from '../kept.js';
import type { Chair } from './chair.js';
import type { DrawingFault } from './drawing-fault.js';
import type { PartOutline } from './part-outline.js';

export type RolledOn = Pick<Chair, 'profile' | 'surface' | 'surfaceShape' | 'sides'>;

export interface Rolling {
  /** What is wrong with the sides and the stated ends of the parts that the chair runs on. */
  readonly faults: readonly DrawingFault[];
  /** When nothing is. */
  readonly rolledOn: () => RolledOn;
}

/** Makes one after the other for chairs that are mostly the same. */
export function rollingMaker(): (design: DesignInSI, outlines: readonly PartOutline[]) => Rolling {
  const [whole, right, left] = [sideMaker(null), sideMaker('right'), sideMaker('left')];
  return ({ parts }, outlines) => {
    const several = parts.flatMap(({ side, count }, part) =>
      side !== null && count !== 1
        ? [fault(part, 'side', 'a count of 1: it is on one side only', `${count}`)]
        : [],
    );
    if (parts.every(({ side }) => side === null)) {
      const side = whole(parts, outlines);
      return { faults: endsOff(side, parts), rolledOn: () => alike(side) };
    }
    if (parts.every(({ side }) => side === 'left') || parts.every(({ side }) => side === 'right'))
      return {
        faults: [...several, fault(0, 'side', 'parts on both sides', 'one side only')],
        rolledOn: never,
      };
    const sides = [right(parts, outlines), left(parts, outlines)] as const;
    return {
      faults: [...several, ...unpaired(sides, parts), ...sides.flatMap((side) => endsOff(side, parts))],
      rolledOn: () => unlike(...sides),
    };
  };
}

const never = (): never => {
  throw new RangeError('rolledOn: a chair with faults');
};

const fault = (part: number, key: string, expected: string, found: string, hint?: string): DrawingFault => ({
  path: ['parts', part, ...key.split('.')],
  flaw: { expected, found, ...(hint !== undefined && { hint }) },
});

/** A rocker of one side runs beside one of the other side, or beside itself when it says no side. */
function unpaired(sides: readonly Side[], parts: readonly PartInSI[]): DrawingFault[] {
  const sided = sides.map(({ surface }) => surface.owner).filter((owner) => parts[owner]!.side !== null);
  const [part, another] = sided;
  if (part === undefined || another !== undefined) return [];
  const other = parts[part]!.side === 'left' ? 'right' : 'left';
  return [fault(part, 'side', `a rocker with side: ${other} beside this one`, 'none that touches the floor')];
}

/** A stated end farther from the hull than this, metres, was meant for another place. */
const farOff = 0.005;

function endsOff({ profile, surface: { owner } }: Side, parts: readonly PartInSI[]): DrawingFault[] {
  const { runs } = parts[owner]!;
  if (runs === null) return [];
  return (['from', 'to'] as const).flatMap((end) => {
    const away = awayFromHull(profile, owner, runs[end]);
    const hint = 'it is where the bottom edge ends, in the chair’s frame';
    return away > farOff
      ? [fault(owner, `runs.${end}`, 'a place on the bottom edge', `one ${millimetres(away)} off it`, hint)]
      : [];
  });
}

const alike = ({ profile, surface, shape }: ShapedSide): RolledOn => ({
  profile,
  surface,
  surfaceShape: shape,
  sides: null,
});

function unlike(left: ShapedSide, right: ShapedSide): RolledOn {
  const profile = meanProfile(left.profile, right.profile);
  return {
    profile,
    surface: meanSurface(profile, left, right),
    surfaceShape: worse(left.shape, right.shape),
    sides: { left, right },
  };
}

interface ShapedSide extends Side {
  readonly shape: SurfaceShape;
}

/**
 * Profile and running surface of all parts but those of the other side; owners are indices of the design's parts. Worked
 * out anew only when another outline is given, or its part says otherwise where it ends.
 */
function sideMaker(
  without: PartInSI['side'],
): (parts: readonly PartInSI[], outlines: readonly PartOutline[]) => ShapedSide {
  const profileFor = profileMaker();
  const kept = keptWhileSame<ShapedSide>();
  return (parts, outlines) => {
    const profile = profileFor(
      outlines.map(({ solids }, i) => (without !== null && parts[i]!.side === without ? nothing : solids)),
    );
    const said = [...parts.map(({ runs }) => runs), ...outlines.map(({ ends }) => ends)];
    return kept([profile, ...said], () => {
      const surface = runningSurface(profile, (part) => statedEnds(parts[part]!, outlines[part]!));
      return { profile, surface, shape: surfaceShape(profile, surface) };
    });
  };
}

const nothing: readonly Loop[] = [];

const statedEnds = ({ runs }: PartInSI, { ends }: PartOutline): readonly [Point, Point] | null =>
  runs ? [runs.from, runs.to] : ends;

/** A flat, a corner or a bump on one side is there however the other side is. */
const worse = (a: SurfaceShape, b: SurfaceShape): SurfaceShape => ({
  flatLongest: Math.max(a.flatLongest, b.flatLongest),
  sharpestCorner: Math.max(a.sharpestCorner, b.sharpestCorner),
  radiusJump: Math.max(a.radiusJump, b.radiusJump),
});
