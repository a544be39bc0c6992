/** A free swing of a free body: where it settles by the middle of its swings, and its period. */
import type { Course } from '../rolling/scripted-place.js';
import { rollFreely, turnsOf, type Passing } from './free-roll.js';

export interface SwingSeen {
  /** The middle between its turning points, radians. */
  readonly middle: number;
  /** Seconds from one passage of the middle to the next the same way, over three swings. */
  readonly period: number;
}

/** Finer facets than anything else: the middle is wanted to a thousandth of a degree. */
const share = 0.01;
/** The facets go on for so far beyond the turning points, radians. */
const margin = Math.PI / 180;
const swings = 3;

export interface Release {
  /** Where it is let go, and about where it will turn on the other side, radians. */
  readonly lean: number;
  readonly other: number;
  /** About how long a swing takes, seconds. */
  readonly period: number;
}

/** @param step seconds */
export function freeSwingSeen(
  course: Course,
  { lean, other, period }: Release,
  step: number,
): SwingSeen | null {
  const facets = {
    from: Math.min(lean, other) - margin,
    to: Math.max(lean, other) + margin,
    share,
    step,
  };
  // Half a swing more than those that are timed, as the middle is first passed after a quarter.
  const until = (swings + 0.5) * period;
  const roll = rollFreely({ ...course, until }, { lean, rate: 0 }, { facets, friction: Infinity });
  const turns = turnsOf(roll);
  if (turns.length < 2 * swings) return null;
  const middle = middleOf(turns);
  const times = passagesOf(roll.passed, middle, lean > other ? -1 : 1);
  if (times.length <= swings) return null;
  return { middle, period: (times[swings]! - times[0]!) / swings };
}

/** (a + 3b + 3c + d)/8 of four turns in a row, in which a loss steady from swing to swing falls out; the mean of all such. */
function middleOf(turns: readonly number[]): number {
  const middles = turns.slice(3).map((d, i) => (turns[i]! + 3 * turns[i + 1]! + 3 * turns[i + 2]! + d) / 8);
  return middles.reduce((sum, one) => sum + one, 0) / middles.length;
}

/** Times at which it passes a lean one way: between two steps by a straight line, the rate being steadiest there. */
function passagesOf(passed: readonly Passing[], lean: number, way: 1 | -1): number[] {
  return passed.slice(1).flatMap((here, i) => {
    const before = passed[i]!;
    const [off, on] = [way * (before.lean - lean), way * (here.lean - lean)];
    return off < 0 && on >= 0 ? [before.time + ((here.time - before.time) * off) / (off - on)] : [];
  });
}
