/**
 * A second calculation of a load: the same hull, masses and script given to a contact engine as a body that is free to
 * slide, lift and tip, and what it does beside what the exact model of rolling says. It checks the motion, not what goes
 * into it: an outline, a density, a script that are wrong are wrong in both. Where the two differ by more than the
 * engine’s own error, one of them is wrong about this chair.
 */
import type { MassProperties } from '../mass.js';
import type { MeasureKey } from '../names.js';
import { g } from '../rolling/gravity.js';
import type { Course } from '../rolling/scripted-place.js';

/** What both say of one measure, SI. */
export interface Compared {
  readonly measure: MeasureKey;
  readonly second: number;
  readonly exact: number;
  /** By how much they may differ: about twice what they were found to where the exact answer is known. */
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

/** A part of it. */
export type Part = Pick<SecondOpinion, 'compared' | 'notCovered'>;

export const notCovered = (what: string, why: string): Part => ({
  compared: [],
  notCovered: [`${what}: ${why}`],
});

export const disagreementOf = ({ second, exact }: Compared): number => Math.abs(second - exact);

/** Whether the two calculations may be told from each other. A number that is none agrees with nothing. */
export const agrees = ({ compared }: Pick<SecondOpinion, 'compared'>): boolean =>
  compared.every((one) => disagreementOf(one) <= one.tolerance);

export const allAgree = (opinions: Iterable<SecondOpinion>): boolean => [...opinions].every(agrees);

/** Seconds: short enough for an ordinary chair; a small model is faster. */
const longestStep = 1 / 240;
/** To a swing, and to √(H / g), about what a thing takes to fall as far as G stands high. */
const steps = { swing: 480, fall: 60 };

/**
 * Seconds.
 * @param period of a swing, seconds; null: it has none
 * @param height H, metres
 */
export const stepFor = (period: number | null, height: number): number =>
  Math.min(longestStep, (period ?? Infinity) / steps.swing, Math.sqrt(height / g) / steps.fall);

/**
 * Of a number found at a step and at twice that step, what it is without: the engine takes its velocities anew from the
 * floor at every step, a loss that goes with Δt.
 */
export const withoutStep = (atStep: number, atTwice: number): number => 2 * atStep - atTwice;

/** How many times as short the steps are of which an alarm must be true. */
const closer = 2.5;

/** Before the two are said to disagree it is looked at more closely: an engine has its noise. */
export function surely(opinionWith: (finer: number) => SecondOpinion): SecondOpinion {
  const first = opinionWith(1);
  return agrees(first) ? first : opinionWith(closer);
}

/** A body by itself, until a time. */
export const courseAlone = (
  { profile, body }: Pick<Course, 'profile'> & { readonly body: MassProperties },
  more: Pick<Course, 'until'> & Partial<Course>,
): Course => ({
  profile,
  script: { fixed: body, moving: [], presses: [], pushes: [], foot: null, breaks: [], end: 0 },
  guards: [{ from: 0, back: Infinity, forward: -Infinity }],
  endsFalling: false,
  ...more,
});
