/**
 * How much room a limit leaves: 1 in the middle of a range and 0 at its ends, with one end 1 where the value is twice as
 * far as asked; negative where it is not met. What has its bound at 0, or one value only, leaves no such measure.
 */
import type { JudgedLimit } from '../checks/verdict.js';
import type { MeasureKey } from '../names.js';

export function roomOf({ range: { min, max }, margin }: JudgedLimit): number | null {
  if (margin === null) return null;
  const whole = min !== null && max !== null ? (max - min) / 2 : Math.abs(min ?? max ?? 0);
  return whole > 0 ? Math.min(margin / whole, 1) : null;
}

/** The limit with the least room; null without one that has a measure of it. */
export function tightest(
  limits: readonly JudgedLimit[],
): { readonly id: string; readonly room: number } | null {
  let least: { id: string; room: number } | null = null;
  for (const limit of limits) {
    const room = roomOf(limit);
    if (room !== null && (least === null || room < least.room)) least = { id: limit.id, room };
  }
  return least;
}

/** What a sitter feels, and the share of room that it keeps in a comfortable chair (judgement of this project). */
const felt: Readonly<Partial<Record<MeasureKey, number>>> = {
  periodS: 0.25,
  seatSlopeDeg: 0.25,
  backAngleDeg: 0.25,
  rockerLeftBackM: 0.5,
};

/**
 * Comfortable: every limit is met, one full rock, seat slope and back lie in the middle three quarters of their ranges,
 * and a hard lean leaves half as much rocker again as it must; for everybody. With nobody in it no chair is.
 */
export function isComfortable(limits: readonly JudgedLimit[]): boolean {
  const ofSitters = limits.filter(
    ({ measure, sitter }) => sitter !== null && measure !== null && measure in felt,
  );
  return (
    ofSitters.length > 0 &&
    limits.every(({ verdict }) => verdict === 'pass') &&
    ofSitters.every((limit) => (roomOf(limit) ?? 1) >= felt[limit.measure!]!)
  );
}
