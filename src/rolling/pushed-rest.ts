/**
 * Where a chair rests under presses and a steady level push P towards -x at a place p:
 *
 *     V' = (m + Σ w/g) g H*' - P Y_p = 0,      growing with θ
 */
import { ahead, upward } from '../geometry/lean.js';
import { minus, type Point } from '../geometry/point.js';
import { contactAt, type Profile } from '../geometry/profile.js';
import type { MassProperties } from '../mass.js';
import { signChanges } from '../numeric/root.js';
import { loadedCentre, type DeadLoad } from './dead-loads.js';
import { g } from './gravity.js';

export interface SteadyPush {
  readonly place: Point;
  /** Newton towards -x; negative: forward. */
  readonly force: number;
}

/** As far as it is looked for from a lean, radians, and in how many steps: half a degree each. */
const farthest = Math.PI / 2;
const steps = 180;

/**
 * The first rest that it comes to downhill from a lean; null: none within 90°.
 * @param from lean at which the loads are put on, slowly
 */
export function pushedRest(
  profile: Profile,
  body: MassProperties,
  loads: readonly DeadLoad[],
  push: SteadyPush,
  from: number,
): number | null {
  const centre = loadedCentre(body, loads);
  const weight = body.mass * g + loads.reduce((sum, { force }) => sum + force, 0);
  const slope = (lean: number): number => {
    const contact = contactAt(profile, lean);
    const reach = weight * ahead(minus(centre, contact), lean);
    return reach - push.force * upward(minus(push.place, contact), lean);
  };
  const sense = slope(from) > 0 ? -1 : 1;
  const rests = signChanges((way) => sense * slope(from + sense * way), 0, farthest, steps);
  const rest = rests[0];
  return rest === undefined ? null : from + sense * rest;
}
