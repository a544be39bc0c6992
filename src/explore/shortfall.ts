/** How far limits are from being met. */
import type { JudgedLimit } from '../checks/verdict.js';

/** Below negative, above positive, over the size of the bound; infinite without a number, 0 when it is met. */
export function offOf({ verdict, value, range: { min, max } }: JudgedLimit): number {
  if (verdict === 'pass') return 0;
  if (value === null) return Infinity;
  const size = Math.max(Math.abs(min ?? 0), Math.abs(max ?? 0)) || 1;
  if (min !== null && value < min) return (value - min) / size;
  return max !== null && value > max ? (value - max) / size : Infinity;
}

/** Of the worst of them. */
export const worstOff = (limits: readonly JudgedLimit[]): number =>
  limits.map(offOf).reduce((worst, off) => (Math.abs(off) > Math.abs(worst) ? off : worst), 0);

/** The sum over all, what has no number counted as one: fewer and smaller misses come closer. */
export const shortfallIn = (limits: readonly JudgedLimit[]): number =>
  limits.reduce((sum, limit) => sum + Math.min(1, Math.abs(offOf(limit))), 0);
