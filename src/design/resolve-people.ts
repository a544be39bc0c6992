/** Sitters and the child in SI. */
import type { DesignInSI, SitterInSI } from './design.js';
import { orNull, type InSI } from './resolve-parts.js';
import type { WrittenDesign } from './schema.js';

type WrittenSitters = NonNullable<WrittenDesign['sitters']>;

export function sittersInSI(sitters: WrittenSitters | undefined, si: InSI): DesignInSI['sitters'] {
  if (sitters === 'standard') return sitters;
  return (sitters ?? []).map((sitter) => sitterInSI(sitter, si));
}

function sitterInSI(sitter: Exclude<WrittenSitters, string>[number], si: InSI): SitterInSI {
  return {
    name: sitter.name,
    body: sitter.body,
    stature: orNull(sitter.stature ?? sitter.height, si),
    mass: orNull(sitter.mass ?? sitter.weight, si),
    percentile: orNull(sitter.percentile, si),
    measured: {
      kneeHollow: orNull(sitter.measured?.kneeHollow, si),
      buttockToKneeHollow: orNull(sitter.measured?.buttockToKneeHollow, si),
      elbowAboveSeat: orNull(sitter.measured?.elbowAboveSeat, si),
    },
  };
}

export function childInSI(child: WrittenDesign['child'], si: InSI): DesignInSI['child'] {
  if (!child) return null;
  return {
    body: child.body ?? null,
    age: orNull(child.age, si),
    mass: orNull(child.mass ?? child.weight, si),
  };
}
