/** Builds a chair as it is drawn, and where the design alters it, as it is then. */
import type { DesignInSI } from '../design/design.js';
import { altered, alterationFaults, isAltered } from './alter.js';
import { chairBuilder } from './build-chair.js';
import type { Chair } from './chair.js';
import type { DrawingFault } from './drawing-fault.js';

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
  const [draw, build] = [chairBuilder(), chairBuilder()];
  return (design) => {
    const drawn = draw(design);
    if (!drawn.ok) return drawn;
    if (!isAltered(design)) return { ok: true, chair: drawn.chair, design, drawn: drawn.chair };
    const faults = alterationFaults(design, drawn.chair);
    if (faults.length > 0) return { ok: false, faults };
    const then = altered(design, drawn.chair);
    const built = build(then);
    return built.ok ? { ok: true, chair: built.chair, design: then, drawn: drawn.chair } : built;
  };
}
