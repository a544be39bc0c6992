/**
 * How much room a limit leaves: 1 in the middle of a range and 0 at its ends, with one end 1 where the value is twice as
 * far as asked; negative where it is not met. What has its bound at 0, or one value only, leaves no such measure.
 */
import type { JudgedLimit } from '../checks/verdict.js';
import type { LoadId, MeasureKey } from '../names.js';

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

interface Felt {
  /** On which the limits of a kind look at it. */
  readonly load: LoadId;
  /** The share of room that it keeps in a comfortable chair (judgement of this project). */
  readonly room: number;
}

/** What a sitter feels. */
const felt: Readonly<Partial<Record<MeasureKey, Felt>>> = {
  periodS: { load: 'seated', room: 0.25 },
  seatSlopeDeg: { load: 'seated', room: 0.25 },
  backAngleDeg: { load: 'seated', room: 0.25 },
  rockerLeftBackM: { load: 'leaning-back-hard', room: 0.5 },
};
const feltOn = [...new Set(Object.values(felt).map(({ load }) => load))];

/**
 * Comfortable: every limit is met, one full rock, seat slope and back lie in the middle three quarters of their ranges,
 * and a hard lean leaves half as much rocker again as it must; for everybody. With nobody in it no chair is, nor is one
 * that was not put through the loads in which all that is felt.
 * @param rolled the loads that it was put through
 */
export function isComfortable(limits: readonly JudgedLimit[], rolled: readonly LoadId[]): boolean {
  if (!feltOn.every((load) => rolled.includes(load))) return false;
  const ofSitters = limits.filter(
    ({ measure, sitter }) => sitter !== null && measure !== null && measure in felt,
  );
  return (
    ofSitters.length > 0 &&
    limits.every(({ verdict }) => verdict === 'pass') &&
    ofSitters.every((limit) => (roomOf(limit) ?? 1) >= felt[limit.measure!]!.room)
  );
}
