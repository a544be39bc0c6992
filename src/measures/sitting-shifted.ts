/** Where the chair settles when the sitter sits a little forward or back: nobody sits twice in one place. */
import type { MassProperties } from '../mass.js';
import { plus, times } from '../geometry/point.js';
import { missing, type OrMissing } from '../numeric/missing.js';
import { restLean } from '../rolling/rest.js';
import { directionOf } from '../sitter/support-lines.js';
import { slopeOf } from '../chair/chair.js';
import { type LoadRecord } from './record.js';
import { restsNowhere } from './no-rest.js';

/** One inch along the seat (the contract's figure). */
export const shift = 0.0254;

/**
 * Seat slope at rest, radians, with all that rides moved along the seat line.
 * @param by metres, forward positive
 */
export function seatSlopeShifted({ chair, load }: LoadRecord, by: number): OrMissing<number> {
  const { seat, profile, surface } = chair;
  if (!seat) return missing('the design has no seat line');
  const lean = restLean(
    profile,
    surface,
    shiftedCentre(load.body, load.riders, by, directionOf(seat.rear, seat.front)),
  );
  if (lean === null) return missing(restsNowhere);
  return slopeOf(seat.rear, seat.front) + lean;
}

/** G moves by the riders' share of the whole mass. */
const shiftedCentre = (
  body: MassProperties,
  riders: number,
  by: number,
  along: MassProperties['centre'],
): MassProperties['centre'] => plus(body.centre, times(along, (by * riders) / body.mass));
