/**
 * A second calculation of a load by other means: the same hull, mass and centre given to a contact engine as a body that
 * is free to slide, lift and tip, and what it does beside what the exact model of rolling says. Where the two differ by
 * more than the engine’s own error, one of them is wrong about this chair.
 */
import type { MassProperties } from '../mass.js';
import type { MeasureKey } from '../names.js';

/** What both say of one measure, SI. */
export interface Compared {
  readonly measure: MeasureKey;
  readonly second: number;
  readonly exact: number;
  /** By how much they may differ: more than they were found to where the exact answer is known. */
  readonly tolerance: number;
}

export interface SecondOpinion {
  readonly compared: readonly Compared[];
  /** On the floor of the design: how far it slides from where it would have rolled to, metres, positive forward. */
  readonly slide: number | null;
  /** It leaves that floor. */
  readonly lifts: boolean | null;
  /** What was not calculated a second time, and why. */
  readonly notCovered: readonly string[];
}

export const disagreementOf = ({ second, exact }: Compared): number => Math.abs(second - exact);

/** Whether the two calculations may be told from each other. A number that is none agrees with nothing. */
export const agrees = ({ compared }: SecondOpinion): boolean =>
  compared.every((one) => disagreementOf(one) <= one.tolerance);

/** Of an energy: 0.4 % of the speed was measured on ordinary chairs, up to 0.8 % on very large radii. */
export const energyTolerance = 0.02;

export const allAgree = (opinions: Iterable<SecondOpinion>): boolean => [...opinions].every(agrees);

/** Seconds: short enough for an ordinary chair; a small model rocks faster. */
const longestStep = 1 / 240;
/** To a swing. */
const stepsToASwing = 480;

export const stepFor = (period: number | null): number =>
  Math.min(longestStep, (period ?? Infinity) / stepsToASwing);

/** Coarser than this nothing was measured, finer costs more. */
export const coarseShare = 0.05;

/** A body by itself. */
export const unmoved = (body: MassProperties) =>
  ({ fixed: body, moving: [], presses: [], pushes: [], foot: null, breaks: [], end: 0 }) as const;
