/** A free swing of a free body: where its middle lies, how wide it is and its period. */
import type { Course } from '../rolling/scripted-place.js';
import { rollFreely, turnsOf, type Passing } from './free-roll.js';

export interface SwingSeen {
  /** The middle between its turning points, radians. */
  readonly middle: number;
  /** Of its turning points on the side of release the mean, radians. */
  readonly turn: number;
  /** Seconds from one passage of the middle to the next the same way, over three swings. */
  readonly period: number;
}

/** Finer facets than anything else: the middle is wanted to a thousandth of a degree. */
const share = 0.01;
/** The facets go on for so far beyond the turning points, radians. */
const margin = Math.PI / 180;
const swings = 3;
/** It is waited for so many times as long as it should take. */
const patience = 4;

export interface Release {
  /** Where it is let go, and about where it will turn on the other side, radians. */
  readonly lean: number;
  readonly other: number;
  /** About how long a swing takes, seconds. */
  readonly period: number;
}

/**
 * Three swings and what leads to them.
 * @param step seconds
 * @returns null: it did not swing so often in four times the time
 */
export function freeSwingSeen(course: Course, release: Release, step: number): SwingSeen | null {
  // Half a swing more than those that are timed, as the middle is first passed after a quarter.
  const expected = (swings + 0.5) * release.period;
  return (
    swingWithin(course, release, expected, step) ?? swingWithin(course, release, patience * expected, step)
  );
}

function swingWithin(
  course: Course,
  { lean, other }: Release,
  until: number,
  step: number,
): SwingSeen | null {
  const [from, to] = [Math.min(lean, other) - margin, Math.max(lean, other) + margin];
  const facets = { from, to, share, step };
  const roll = rollFreely({ ...course, until }, { lean, rate: 0 }, { facets, friction: Infinity });
  const turns = turnsOf(roll).slice(0, 2 * swings + 1);
  if (turns.length < 2 * swings) return null;
  const middle = middleOf(turns);
  const times = passagesOf(roll.passed, middle, lean > other ? -1 : 1);
  if (times.length <= swings) return null;
  const onSide = turns.filter((_, i) => i % 2 === 0);
  return { middle, turn: meanOf(onSide), period: (times[swings]! - times[0]!) / swings };
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length;

/** (a + 3b + 3c + d)/8 of four turns in a row, in which a loss steady from swing to swing falls out; the mean of all such. */
const middleOf = (turns: readonly number[]): number =>
  meanOf(turns.slice(3).map((d, i) => (turns[i]! + 3 * turns[i + 1]! + 3 * turns[i + 2]! + d) / 8));

/** Times at which it passes a lean one way: between two steps by a straight line, the rate being steadiest there. */
function passagesOf(passed: readonly Passing[], lean: number, way: 1 | -1): number[] {
  return passed.slice(1).flatMap((here, i) => {
    const before = passed[i]!;
    const [off, on] = [way * (before.lean - lean), way * (here.lean - lean)];
    return off < 0 && on >= 0 ? [before.time + ((here.time - before.time) * off) / (off - on)] : [];
  });
}
