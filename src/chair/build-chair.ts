/** Design → Chair. After this nobody looks at the design file again. */
import type { DesignInSI, PartInSI } from '../design/design.js';
import { outlineMoments } from '../geometry/area-moments.js';
import { combineMasses } from '../mass.js';
import type { Chair, ChairPart } from './chair.js';
import type { DrawingFault } from './drawing-fault.js';
import { lineFaults } from './line-faults.js';
import { partOutline, type PartOutline } from './part-outline.js';
import { rockerFaults, rolledOn } from './rockers.js';

export type BuiltChair =
  | { readonly ok: true; readonly chair: Chair }
  | { readonly ok: false; readonly faults: readonly DrawingFault[] };

export function buildChair(design: DesignInSI): BuiltChair {
  const outlines = design.parts.map(({ outline }) => partOutline(outline));
  const faults = outlines.flatMap((made, part) =>
    made.ok ? [] : made.faults.map(({ outline, flaw }) => ({ path: pathTo(part, outline), flaw })),
  );
  if (faults.length > 0) return { ok: false, faults };
  const drawn = outlines as PartOutline[];
  const rolling = [...rockerFaults(design, drawn), ...lineFaults(design)];
  return rolling.length > 0 ? { ok: false, faults: rolling } : { ok: true, chair: assemble(design, drawn) };
}

const pathTo = (part: number, outline: number | null): (string | number)[] =>
  outline === null ? ['parts', part, 'outline'] : ['parts', part, 'outline', outline];

function assemble(design: DesignInSI, outlines: readonly PartOutline[]): Chair {
  const parts = design.parts.map((part, i) => weigh(part, outlines[i]!));
  const extras = design.extras.map(({ name, mass, at, inertia }) => ({
    name,
    count: 1,
    mass,
    centre: at,
    inertia,
  }));
  const body = combineMasses([...parts, ...extras]);
  const { seat, back, arms, spacing, wall } = design;
  const asideOfMiddle = (spacing ?? 0) / 2;
  const moment = parts.reduce(
    (sum, { mass }, i) => sum + mass * leftwards(design.parts[i]!) * asideOfMiddle,
    0,
  );
  return {
    parts,
    extras,
    body,
    offset: moment / body.mass,
    ...rolledOn(design, outlines),
    seat,
    back,
    arms,
    spacing,
    wall,
  };
}

const leftwards = ({ side }: PartInSI): number => ({ left: 1, right: -1, both: 0 })[side ?? 'both'];

/** A prism across the chair: m = ρ A b (or as weighed), I = m J / A, for all pieces of the part. */
function weigh(part: PartInSI, { outline }: PartOutline): ChairPart {
  const { name, count, across } = part;
  const { area, centroid, polar } = outlineMoments(outline);
  const one = part.mass ?? (part.density ?? NaN) * area * (across ?? NaN);
  if (!(one > 0)) throw new RangeError(`weigh: part ${name} of ${one} kg`);
  const mass = count * one;
  return { name, count, across, outline, mass, centre: centroid, inertia: (mass * polar) / area };
}
