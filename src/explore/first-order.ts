/** How much each dimension moves each limit's measure, about the chair as drawn. */
import { deviationOf, type ShopError } from './shop-errors.js';
import type { Judged, Trial } from './trial.js';

export interface Effect {
  /** Of the dimension. */
  readonly name: string;
  /** ∂f/∂x, SI; null: the measure has no value on either side. */
  readonly slope: number | null;
  /** The two sides differ: the measure is the larger or smaller of two things here. The steeper side is taken. */
  readonly kinked: boolean;
  /** Of the variance, to first order: (∂f/∂x σ_x)² / Σ (∂f/∂x σ_x)². */
  readonly share: number;
}

/** Of one measure. */
export interface FirstOrder {
  readonly effects: readonly Effect[];
  /** σ_f = sqrt(Σ (∂f/∂x σ_x)²), errors independent and small (Gauss 1823). */
  readonly deviation: number;
}

type Slope = Omit<Effect, 'name' | 'share'>;

/**
 * By id of the limit. Central differences over a step of the error's own standard deviation: no finer than what the shop
 * does, and far coarser than the rounding of a run.
 */
export function firstOrders(
  tryOut: (off: readonly number[]) => Trial,
  errors: readonly ShopError[],
  drawn: Judged,
): ReadonlyMap<string, FirstOrder> {
  const steps = errors.map(deviationOf);
  const sides = steps.map((step, i) =>
    [-step, step].map((by) => tryOut(steps.map((_, j) => (j === i ? by : 0)))),
  );
  const valueIn = (trial: Trial, id: string): number | null => trial.judged?.get(id)?.value ?? null;
  return new Map(
    [...drawn].flatMap(([id, { value }]) => {
      if (value === null) return [];
      const slopes = sides.map(([less, more], i) =>
        slopeAt(valueIn(less!, id), value, valueIn(more!, id), steps[i]!),
      );
      return [[id, firstOrderOf(slopes, errors)] as const];
    }),
  );
}

/** Sides that differ by more than this share of the steeper are no curve any more: over so short a step it bends by little. */
const kink = 0.25;

export function slopeAt(less: number | null, here: number, more: number | null, step: number): Slope {
  const behind = less === null ? null : (here - less) / step;
  const ahead = more === null ? null : (more - here) / step;
  if (behind === null || ahead === null) return { slope: behind ?? ahead, kinked: false };
  const steeper = Math.abs(behind) > Math.abs(ahead) ? behind : ahead;
  const kinked = Math.abs(ahead - behind) > kink * Math.abs(steeper) && steeper !== 0;
  return { slope: kinked ? steeper : (ahead + behind) / 2, kinked };
}

function firstOrderOf(slopes: readonly Slope[], errors: readonly ShopError[]): FirstOrder {
  const parts = slopes.map(({ slope }, i) => ((slope ?? 0) * deviationOf(errors[i]!)) ** 2);
  const variance = parts.reduce((sum, part) => sum + part, 0);
  const effects = slopes.map((slope, i) => ({
    name: errors[i]!.variable.name,
    ...slope,
    share: variance > 0 ? parts[i]! / variance : 0,
  }));
  return { effects, deviation: Math.sqrt(variance) };
}
