/** Builds a chair as it is drawn, and where the design alters it, as it is then. */
import type { DesignInSI } from '../design/design.js';
import { keptWhileSame } from '../kept.js';
import { isAltered, needsRockers, rockerAlterer, upperAlterer } from './alter.js';
import { alterationFaults, faultsAltered, faultThrough } from './alteration-faults.js';
import { movedTooFar } from './as-far-as.js';
import { chairBuilder } from './build-chair.js';
import type { Chair } from './chair.js';
import type { DrawingFault } from './drawing-fault.js';
import { partThrough, standingOf, type Standing } from './standing.js';

export type AlteredChair =
  | {
      readonly ok: true;
      readonly chair: Chair;
      /** With parts, extras and lines where they then are: people sit by these. */
      readonly design: DesignInSI;
      /** As it is drawn. */
      readonly drawn: Chair;
    }
  | { readonly ok: false; readonly faults: readonly DrawingFault[] };

export const alteredChair = (design: DesignInSI): AlteredChair => alteredChairBuilder()(design);

/** For designs that are mostly the same, like `chairBuilder`. */
export function alteredChairBuilder(): typeof alteredChair {
  const [draw, shape, build] = [chairBuilder(), chairBuilder(), chairBuilder()];
  const [ofRockers, ofUpper] = [rockerAlterer(), upperAlterer()];
  const standingKept = keptWhileSame<Standing>();
  return (design) => {
    const made = draw(design);
    if (!made.ok) return made;
    const { chair: drawn } = made;
    if (!isAltered(design)) return { ok: true, chair: drawn, design, drawn };
    const standing = standingKept([drawn.profile, ...drawn.parts], () => standingOf(drawn));
    const faults = alterationFaults(design, drawn, standing);
    if (faults.length > 0) return { ok: false, faults };
    const shaped = ofRockers(design);
    const rockers = shaped === design || !needsRockers(design) ? made : shape(shaped);
    if (!rockers.ok) return { ok: false, faults: faultsAltered(design, rockers.faults) };
    const far = movedTooFar(design, standing, rockers.chair);
    if (far !== null) return { ok: false, faults: [far] };
    const then = ofUpper(shaped, standing, rockers.chair);
    const built = build(then);
    if (!built.ok) return { ok: false, faults: faultsAltered(design, built.faults) };
    const through = partThrough(built.chair, standing);
    if (through !== null) return { ok: false, faults: [faultThrough(design, through)] };
    return { ok: true, chair: built.chair, design: then, drawn };
  };
}
