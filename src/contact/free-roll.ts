/** Lets a chair go on a floor of a friction and follows it step by step through a script. */
import type { Point } from '../geometry/point.js';
import { floorPlace } from '../rolling/floor-place.js';
import { guardAt, type Course } from '../rolling/scripted-place.js';
import type { Sense } from '../rolling/tip.js';
import { facetedHull, type Facets } from './faceted-hull.js';
import { freeBody, type FreeMotion } from './free-body.js';
import { footReaches, innerMotion, putOn } from './inner-motion.js';

export interface Passing extends FreeMotion {
  readonly time: number;
}

export interface FreeRoll {
  /** After every step, and at the start. */
  readonly passed: readonly Passing[];
  /** null: it does not. */
  readonly goesOver: Sense | null;
  /** The farthest that it slid from where it would have rolled to, metres, positive forward. */
  readonly slide: number;
  /** It left the floor. */
  readonly lifts: boolean;
}

export interface FloorUnder {
  readonly facets: Facets;
  /** Infinity: it never slides. */
  readonly friction: number;
}

/** So high over the floor, metres, it has left it: the engine’s own hops are a fifth of that. */
const lifted = 1e-3;

/**
 * The engine moves a body before the floor pushes it, θ_n = ½ θ̈ Δt² ((n - ½)² - ¼): what it calls step n is half a step
 * earlier.
 */
const begun = 0.5;

export function rollFreely(
  course: Course,
  start: { readonly lean: number; readonly rate: number },
  { facets, friction }: FloorUnder,
): FreeRoll {
  const { profile, script, until } = course;
  const { step } = facets;
  let inner = innerMotion(script, 0);
  const x = floorPlace(profile, inner.centre, start.lean).x;
  const body = freeBody(facetedHull(profile, facets), inner, step, { ...start, x });
  const passed: Passing[] = [{ time: 0, ...body.now() }];
  let [slid, slide, lifts, footOn] = [0, 0, false, true];
  for (let n = 0; ; n++) {
    const here = passed.at(-1)!;
    const goesOver = gone(course, here);
    if (goesOver !== null || here.time >= until || isOver(course, here, footOn))
      return { passed, goesOver, slide, lifts };
    const time = (n + begun) * step;
    footOn &&= footReaches(script, inner, here, here.time);
    // Moved, and not yet pushed by the floor: it stands where it will stand at the end of the step.
    body.advance((pose) => putOn(script, inner, pose, time, footOn), friction);
    if (script.moving.length > 0) {
      inner = innerMotion(script, time);
      body.redistribute(inner.centre, inner.inertia);
    }
    const there = { time, ...body.now() };
    passed.push(there);
    slid += there.slip * step;
    if (Math.abs(slid) > Math.abs(slide)) slide = slid;
    lifts ||= there.lowest > lifted;
  }
}

function gone(course: Course, { time, lean }: Passing): Sense | null {
  const { back, forward } = guardAt(course, time);
  if (lean >= back) return 'back';
  return lean <= forward ? 'forward' : null;
}

const isOver = ({ script, endsFalling }: Course, { time, rate }: Passing, footOn: boolean): boolean =>
  endsFalling && time > 0 && time >= script.end && !(footOn && script.foot !== null) && rate <= 0;

/** Leans at which it turns, radians, the first being where it was let go. */
export function turnsOf({ passed }: FreeRoll): number[] {
  const turns = [passed[0]!.lean];
  for (const [i, here] of passed.entries()) {
    const before = passed[i - 1];
    if (before === undefined || before.rate === 0 || before.rate * here.rate > 0) continue;
    turns.push(leanAtTurn(before, here));
  }
  return turns;
}

/** Between two steps the rate is nearly straight. */
function leanAtTurn(before: Passing, here: Passing): number {
  const share = before.rate / (before.rate - here.rate);
  return before.lean + (here.time - before.time) * share * (before.rate / 2);
}

/** A place of the chair on the floor while it passes. */
export type OnFloor = (passing: Passing) => Point;
