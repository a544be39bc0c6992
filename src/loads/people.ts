/** Who sits in the chair, and how: the design's sitters with their sizes and their pose as drawn. */
import type { DesignInSI } from '../design/design.js';
import { isMissing, type Missing } from '../numeric/missing.js';
import { childMass, type ChildMass } from '../sitter/child-mass.js';
import { seatedPose, type SeatedPose } from '../sitter/seated-pose.js';
import { sitterSize, type Sitter, type SitterSize } from '../sitter/sitter-size.js';
import { standardSitters } from '../sitter/standard-sitters.js';

export interface Person {
  readonly name: string;
  readonly size: SitterSize;
  readonly pose: SeatedPose;
}

export interface People {
  /** The chair is made for the first. */
  readonly persons: readonly Person[];
  /** In the arms of each in turn; null: none. */
  readonly child: ChildMass | null;
}

/** Why somebody cannot be seated, and the path in the design file to what is at fault. */
export interface SeatingFault {
  readonly path: readonly (string | number)[];
  readonly expected: string;
  readonly found: string;
}

export type Seated =
  | { readonly ok: true; readonly people: People }
  | { readonly ok: false; readonly faults: readonly SeatingFault[] };

export function seatPeople(design: DesignInSI): Seated {
  const standard = design.sitters === 'standard' ? standardSitters(design.kind) : null;
  const sitters = standard?.sitters ?? (design.sitters as Exclude<DesignInSI['sitters'], 'standard'>);
  const found = sitters.map((sitter, index) =>
    seat(sitter, design, standard ? ['sitters'] : ['sitters', index]),
  );
  const child = childOf(design, standard?.child ?? null);
  const faults = [...found, ...(child === null ? [] : [child])].flatMap((one) =>
    'faults' in one ? one.faults : [],
  );
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, people: { persons: found as Person[], child: child as People['child'] } };
}

type Faults = { readonly faults: readonly SeatingFault[] };

const faultAt = ({ missing }: Missing, path: SeatingFault['path']): Faults => ({
  faults: [{ path, expected: 'somebody who can be seated', found: missing }],
});

/** From least to greatest; metres, kilograms. */
type Sizes = Readonly<
  Partial<Record<'stature' | 'mass', readonly [least: number, most: number, unit: string]>>
>;

/** Nobody is smaller or larger than this: a number in another unit was meant. */
const ofPeople: Sizes = { stature: [0.5, 2.5, 'm'], mass: [3, 400, 'kg'] };
/** Nor is a child that sits in somebody's arms (judgement of this project). */
const ofChildren: Sizes = { mass: [0.5, 60, 'kg'] };

function sizeFaults(
  sized: { readonly stature?: number | null; readonly mass: number | null },
  sizes: Sizes,
  path: SeatingFault['path'],
): SeatingFault[] {
  return (['stature', 'mass'] as const).flatMap((size) => {
    const value = sized[size] ?? null;
    if (value === null || sizes[size] === undefined) return [];
    const [least, most, unit] = sizes[size];
    if (value >= least && value <= most) return [];
    const found = `${Number(value.toPrecision(6))} ${unit}`;
    return [{ path: [...path, size], expected: `a ${size} of ${least} to ${most} ${unit}`, found }];
  });
}

/** What is wrong with the size of somebody who is to sit in a chair. */
export const peopleFaults = (sized: { readonly stature: number; readonly mass: number }): SeatingFault[] =>
  sizeFaults(sized, ofPeople, []);

/** Sizes are looked at first: nobody of no mass is given a pose. */
function seat(
  sitter: Sitter & { readonly name: string },
  { seat, back, arms }: DesignInSI,
  path: SeatingFault['path'],
): Person | Faults {
  const faults = sizeFaults(sitter, ofPeople, path);
  if (faults.length > 0) return { faults };
  if (!seat || !back) return faultAt({ missing: 'no seat line or no back line to sit by' }, path);
  const size = sitterSize(sitter);
  if (isMissing(size)) return faultAt(size, path);
  const pose = seatedPose(size, { seat, back, arms });
  return isMissing(pose) ? faultAt(pose, path) : { name: sitter.name, size, pose };
}

type Child = NonNullable<DesignInSI['child']>;

function childOf({ child, sitters }: DesignInSI, standard: Child | null): ChildMass | Faults | null {
  const held = child ?? standard;
  if (!held || sitters.length === 0) return null;
  const faults = sizeFaults(held, ofChildren, ['child']);
  if (faults.length > 0) return { faults };
  const mass = childMass(held);
  return isMissing(mass) ? faultAt(mass, ['child']) : mass;
}
