/** How far limits are from being met. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { JudgedSteps } from './stepped-design.js';

/**
 * Below negative, above positive, over the size of the bound; 0 when it is met. Infinite without a number, on the side of
 * the bound where there is one only: what goes over leaves less than any number, and leans farther than any.
 */
function offOf({ verdict, value, range: { min, max } }: JudgedLimit): number {
  if (verdict === 'pass') return 0;
  if (value === null) return min !== null && max === null ? -Infinity : Infinity;
  const size = Math.max(Math.abs(min ?? 0), Math.abs(max ?? 0)) || 1;
  if (min !== null && value < min) return (value - min) / size;
  return max !== null && value > max ? (value - max) / size : Infinity;
}

/**
 * Of the worst of some limits, as they are judged now. Of a chair that comes to rest the limit that it does is not judged
 * at all; of one that does not, limits on where it rests are not.
 */
export function worstOff(goals: readonly JudgedLimit[], now: JudgedSteps): number {
  const judged = new Map(now.limits.map((limit) => [limit.id, limit]));
  const off = goals.map((goal) => {
    const { id, measure, load } = goal;
    const limit = judged.get(id);
    if (limit) return offOf(limit);
    if (!now.rolled.has(load)) throw new RangeError(`worstOff: ${load} was not rolled for ${id}`);
    return measure === null ? 0 : offOf({ ...goal, verdict: 'unknown', value: null });
  });
  return off.reduce((worst, one) => (Math.abs(one) > Math.abs(worst) ? one : worst), 0);
}

/** The sum over all, what has no number counted as one: fewer and smaller misses come closer. */
export const missedInAll = (limits: readonly JudgedLimit[]): number =>
  limits.reduce((sum, limit) => sum + Math.min(1, Math.abs(offOf(limit))), 0);
