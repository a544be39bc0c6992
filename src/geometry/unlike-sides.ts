/** Where two runners that were to be alike differ most. */
import { topOf } from '../numeric/maximum.js';
import type { Side } from './mean-surface.js';
import { lengthAt, supportAt } from './profile.js';

export interface Unlikeness {
  /** How much higher the left side stands on its runner than the right, metres; negative: lower. */
  readonly higher: number;
  /** Where on the left one, metres along it from its tail end. */
  readonly fromTail: number;
}

/** A hill of the difference may be an inch of runner wide. */
const samples = 64;

/** Over the leans at which both are on their running surfaces; null where they share none. */
export function unlikenessOf(left: Side, right: Side): Unlikeness | null {
  const from = Math.max(left.surface.nose.lean, right.surface.nose.lean);
  const to = Math.min(left.surface.tail.lean, right.surface.tail.lean);
  if (!(to > from)) return null;
  const higher = (lean: number): number => supportAt(left.profile, lean) - supportAt(right.profile, lean);
  const { x: at } = topOf((lean) => Math.abs(higher(lean)), from, to, samples);
  return { higher: higher(at), fromTail: left.surface.tail.length - lengthAt(left.profile, at) };
}
