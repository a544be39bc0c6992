/** Who sits in the chair, and how: the design's sitters with their sizes and their pose as drawn. */
import type { DesignInSI } from '../design/design.js';
import { isMissing, type OrMissing } from '../numeric/missing.js';
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
  const seated = sitters.map((sitter) => seat(sitter, design));
  const faults = seated.flatMap((person, index) =>
    faultAt(person, standard ? ['sitters'] : ['sitters', index]),
  );
  faults.push(...sitters.flatMap((sitter, index) => sizeFaults(sitter, ['sitters', index])));
  const child = childOf(design, standard?.child ?? null);
  faults.push(...(child ? faultAt(child, ['child']) : []));
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, people: { persons: seated as Person[], child: child as People['child'] } };
}

/** Nobody is smaller or larger than this: a number in another unit was meant. Metres, kilograms. */
const people = { stature: [0.5, 2.5, 'm'], mass: [3, 400, 'kg'] } as const;

function sizeFaults(sitter: Sitter, path: SeatingFault['path']): SeatingFault[] {
  return (['stature', 'mass'] as const).flatMap((size) => {
    const [least, most, unit] = people[size];
    const value = sitter[size];
    if (value === null || (value >= least && value <= most)) return [];
    const found = `${Number(value.toPrecision(6))} ${unit}`;
    return [{ path: [...path, size], expected: `a ${size} of ${least} to ${most} ${unit}`, found }];
  });
}

function faultAt(found: OrMissing<unknown>, path: SeatingFault['path']): SeatingFault[] {
  return isMissing(found) ? [{ path, expected: 'somebody who can be seated', found: found.missing }] : [];
}

function seat(
  sitter: Sitter & { readonly name: string },
  { seat, back, arms }: DesignInSI,
): OrMissing<Person> {
  if (!seat || !back) return { missing: 'no seat line or no back line to sit by' };
  const size = sitterSize(sitter);
  if (isMissing(size)) return size;
  const pose = seatedPose(size, { seat, back, arms });
  return isMissing(pose) ? pose : { name: sitter.name, size, pose };
}

type Child = NonNullable<DesignInSI['child']>;

function childOf({ child, sitters }: DesignInSI, standard: Child | null): OrMissing<ChildMass> | null {
  const held = child ?? standard;
  return held && sitters.length > 0 ? childMass(held) : null;
}
