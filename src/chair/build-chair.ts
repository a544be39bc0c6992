/** Design → Chair. After this nobody looks at the design file again. */
import type { DesignInSI, PartInSI } from '../design/design.js';
import { outlineMoments, type AreaMoments } from '../geometry/area-moments.js';
import { movedMoments, movedOutline, movedPoint, type RigidMotion } from '../geometry/rigid-motion.js';
import { keptByPlace } from '../kept.js';
import { combineMasses } from '../mass.js';
import type { Chair, ChairPart } from './chair.js';
import type { DrawingFault } from './drawing-fault.js';
import { lineFaults } from './line-faults.js';
import { partOutline, type PartOutline } from './part-outline.js';
import { rollingMaker, type RolledOn } from './rockers.js';

export type BuiltChair =
  | { readonly ok: true; readonly chair: Chair }
  | { readonly ok: false; readonly faults: readonly DrawingFault[] };

export const buildChair = (design: DesignInSI): BuiltChair => chairBuilder()(design);

/**
 * Builds chair after chair of designs that are mostly the same: of a part that is the very same object as the last time
 * nothing is worked out again.
 */
export function chairBuilder(): (design: DesignInSI) => BuiltChair {
  const [drawnAt, movedAt] = [keptByPlace<Outlined>(), keptByPlace<Outlined>()];
  const weighedAt = keptByPlace<ChairPart>();
  const rollingOf = rollingMaker();
  return (design) => {
    const outlines = design.parts.map(({ outline, moved }, i) => {
      const own = drawnAt(i, [outline], () => outlined(i, outline));
      return moved === undefined ? own : movedAt(i, [own, moved], () => movedBy(own, moved));
    });
    const faults = outlines.flatMap((one) => one.faults);
    if (faults.length > 0) return { ok: false, faults };
    const drawn = outlines.map(({ shape }) => shape!);
    const { faults: ofRockers, rolledOn } = rollingOf(design, drawn);
    const others = [...ofRockers, ...lineFaults(design)];
    if (others.length > 0) return { ok: false, faults: others };
    const parts = design.parts.map((part, i) =>
      weighedAt(i, [part, outlines[i]], () => weigh(part, drawn[i]!)),
    );
    return { ok: true, chair: assemble(design, parts, rolledOn()) };
  };
}

/** The outline of a part with its moments, or what is wrong with it. */
interface Outlined {
  readonly shape: (PartOutline & { readonly moments: AreaMoments }) | null;
  readonly faults: readonly DrawingFault[];
}

function outlined(part: number, words: PartInSI['outline']): Outlined {
  const made = partOutline(words);
  if (made.ok) return { shape: { ...made, moments: outlineMoments(made.outline) }, faults: [] };
  return {
    shape: null,
    faults: made.faults.map(({ outline, flaw }) => ({ path: pathTo(part, outline), flaw })),
  };
}

function movedBy({ shape, faults }: Outlined, motion: RigidMotion): Outlined {
  if (shape === null) return { shape, faults };
  const outline = movedOutline(shape.outline, motion);
  const [one, other] = shape.ends?.map((end) => movedPoint(end, motion)) ?? [];
  return {
    faults,
    shape: {
      outline,
      solids: outline.map(({ boundary }) => boundary),
      ends: one && other ? [one, other] : null,
      drawn: shape.drawn,
      moments: movedMoments(shape.moments, motion),
    },
  };
}

const pathTo = (part: number, outline: number | null): (string | number)[] =>
  outline === null ? ['parts', part, 'outline'] : ['parts', part, 'outline', outline];

function assemble(design: DesignInSI, parts: readonly ChairPart[], rolledOn: RolledOn): Chair {
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
    ...rolledOn,
    seat,
    back,
    arms,
    spacing,
    wall,
  };
}

const leftwards = ({ side }: PartInSI): number => ({ left: 1, right: -1, both: 0 })[side ?? 'both'];

/** A prism across the chair: m = ρ A b (or as weighed), I = m J / A, for all pieces of the part. */
function weigh(
  part: PartInSI,
  { outline, drawn, moments: { area, centroid, polar } }: NonNullable<Outlined['shape']>,
): ChairPart {
  const { name, count, across } = part;
  const one = part.mass ?? (part.density ?? NaN) * area * (across ?? NaN);
  if (!(one > 0)) throw new RangeError(`weigh: part ${name} of ${one} kg`);
  const mass = count * one;
  return { name, count, across, outline, drawn, mass, centre: centroid, inertia: (mass * polar) / area };
}
