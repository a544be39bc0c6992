/** Lets a chair go on a floor of a friction and follows it step by step through a script. */
import { plus, times } from '../geometry/point.js';
import { floorPlace } from '../rolling/floor-place.js';
import type { Script } from '../rolling/script.js';
import { guardAt, type Course } from '../rolling/scripted-place.js';
import type { Sense } from '../rolling/tip.js';
import type { Put } from './engine-world.js';
import { facetedHull, type Facets } from './faceted-hull.js';
import { freeBody, type FreeMotion } from './free-body.js';
import { innerMotion, putOn, reachLeft } from './inner-motion.js';

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
  /** A moment against its turning, newton metre for each radian a second; none unless it is to settle. */
  readonly damping?: number;
}

/** So high over the floor, metres, it has left it: under the heaviest presses the engine’s own hops reach half of that. */
const lifted = 2e-3;

/**
 * The engine moves a body before the floor pushes it, θ_n = ½ θ̈ Δt² ((n - ½)² - ¼): what it calls step n is half a step
 * earlier.
 */
const begun = 0.5;

export function rollFreely(
  course: Course,
  start: { readonly lean: number; readonly rate: number },
  { facets, friction, damping = 0 }: FloorUnder,
): FreeRoll {
  const { profile, script, until } = course;
  const { step } = facets;
  let inner = innerMotion(script, 0);
  const x = floorPlace(profile, inner.centre, start.lean).x;
  const body = freeBody(facetedHull(profile, facets), inner, step, { ...start, x });
  const passed: Passing[] = [{ time: 0, ...body.now() }];
  let [slid, slide, lifts] = [0, 0, false];
  let foot: Footing = { share: 1, left: Infinity };
  for (let n = 0; ; n++) {
    const here = passed.at(-1)!;
    const goesOver = gone(course, here);
    if (goesOver !== null || here.time >= until || isOver(course, here, foot))
      return { passed, goesOver, slide, lifts };
    const time = (n + begun) * step;
    foot = footOver(script, foot, reachLeft(script, inner, here), n * step, step);
    const parts = smoothParts(script, n * step, step);
    // Where it has moved to, before the floor pushes it there.
    body.advance((pose) => {
      const puts = parts.map(({ middle, share }) => {
        const moves = { ...innerMotion(script, middle), centre: inner.centre };
        return sharedPut(putOn(script, moves, pose, middle, foot.share), share);
      });
      return puts.reduce(together, turnedAgainst(damping * pose.rate));
    }, friction);
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

const turnedAgainst = (moment: number): Put => ({ force: { x: 0, y: 0 }, moment: -moment });

const sharedPut = ({ force, moment }: Put, share: number): Put => ({
  force: times(force, share),
  moment: moment * share,
});

const together = (one: Put, other: Put): Put => ({
  force: plus(one.force, other.force),
  moment: one.moment + other.moment,
});

/** A step cut where the script changes its law: what jumps there would else be taken for a whole step or for none. */
function smoothParts({ breaks }: Script, from: number, step: number): { middle: number; share: number }[] {
  const cuts = [from, ...breaks.filter((time) => time > from && time < from + step), from + step];
  return cuts.slice(1).map((to, i) => ({
    middle: (cuts[i]! + to) / 2,
    share: (to - cuts[i]!) / step,
  }));
}

function gone(course: Course, { time, lean }: Passing): Sense | null {
  const { back, forward } = guardAt(course, time);
  if (lean >= back) return 'back';
  return lean <= forward ? 'forward' : null;
}

const isOver = ({ script, endsFalling }: Course, { time, rate }: Passing, { share }: Footing): boolean =>
  endsFalling && time > 0 && time >= script.end && !(share === 1 && script.foot !== null) && rate <= 0;

interface Footing {
  /** Of a step: for how much of it the feet pushed the floor. */
  readonly share: number;
  /** How much of their reach was left before it, metres. */
  readonly left: number;
}

/** Over the step from a time on. Once they have left they do not come back. */
function footOver({ foot }: Script, before: Footing, left: number, from: number, step: number): Footing {
  if (foot === null || before.share < 1) return { share: 0, left };
  const loss = before.left - left;
  // What is left was so half a step ago.
  const reaches = loss > 0 && loss < Infinity ? left / loss - begun : Math.sign(left);
  const share = Math.max(0, Math.min(1, reaches, (foot.until - from) / step));
  return { share, left };
}

/** Leans at which it turns, radians, the first being where it was let go. */
export function turnsOf({ passed }: FreeRoll): number[] {
  const turns = [passed[0]!.lean];
  for (let i = 2; i < passed.length - 1; i++) {
    const [a, b, c] = [passed[i - 1]!.lean, passed[i]!.lean, passed[i + 1]!.lean];
    if ((b - a) * (c - b) < 0 || (b !== a && b === c)) turns.push(topOfThree(a, b, c));
  }
  return turns;
}

/** Of the parabola through three leans a step apart. */
export function topOfThree(a: number, b: number, c: number): number {
  const bend = a - 2 * b + c;
  return bend === 0 ? b : b - (a - c) ** 2 / (8 * bend);
}
