/**
 * Getting up: only the chair moves; the sitter is what presses on it. With W₀ the weight of all that rode,
 *
 *     W(τ) = W₀ (1 - σ(τ / leaveTime))      presses at b(τ) = b₀ + (b₁ - b₀) σ(τ / slideTime)
 *     2 armShare · body weight · 16 u² (1 - u)²,  u = (τ - 0.4 s)/0.8 s, at most W, on the arms
 *     seatPush · body weight · σ(τ / 0.2 s) (1 - σ(τ / leaveTime)) towards -x at the front of the seat
 *
 * b₀ is the centre of gravity of what rode, b₁ the seat line 0.10 m behind its front.
 */
import type { Chair } from '../chair/chair.js';
import { minus, plus, times, type Point } from '../geometry/point.js';
import { combineMasses, type MassProperties } from '../mass.js';
import { rootBetween } from '../numeric/root.js';
import { g } from '../rolling/gravity.js';
import type { Press, Push, Script } from '../rolling/script.js';
import { smoothStep } from '../rolling/smooth-step.js';
import { directionOf } from '../sitter/support-lines.js';

export const gettingUpDefaults = {
  leaveTime: 1.2,
  slideTime: 0.6,
  /** Of body weight, each hand. */
  armShare: 0.25,
  seatPush: 0.1,
} as const;
export type GettingUpSettings = Readonly<Record<keyof typeof gettingUpDefaults, number>>;

/** What is not for a design to change; seconds and metres. */
export const gettingUpFixed = {
  handsFrom: 0.4,
  handsFor: 0.8,
  pushRise: 0.2,
  /** Behind the front of the seat line and of the arms line. */
  leavesSeatAt: 0.1,
  handsAt: 0.15,
} as const;

export interface GettingUp {
  readonly kind: 'getting-up';
  readonly settings: GettingUpSettings;
  /** Only this moves. */
  readonly chair: MassProperties;
  /** W₀ and body weight, newton. */
  readonly weight: number;
  readonly bodyWeight: number;
  /** b₀, b₁, the front of the seat, and where the hands are; null: no arms. */
  readonly seated: Point;
  readonly leaving: Point;
  readonly edge: Point;
  readonly hands: Point | null;
}

export function gettingUp(
  { body: chair, seat, arms }: Chair,
  riders: readonly MassProperties[],
  bodyMass: number,
  settings: GettingUpSettings,
  leavesSeatAt: number = gettingUpFixed.leavesSeatAt,
): GettingUp {
  if (seat === null) throw new RangeError('gettingUp: nobody sits without a seat line');
  const rode = combineMasses(riders);
  return {
    kind: 'getting-up',
    settings,
    chair,
    weight: rode.mass * g,
    bodyWeight: bodyMass * g,
    seated: rode.centre,
    leaving: behindFront(seat, leavesSeatAt),
    edge: seat.front,
    hands: arms && behindFront(arms, gettingUpFixed.handsAt),
  };
}

/** A place on a line, so far behind its front. */
const behindFront = ({ rear, front }: { readonly rear: Point; readonly front: Point }, by: number): Point =>
  minus(front, times(directionOf(rear, front), by));

export function gettingUpScript(load: GettingUp): Script {
  const { leaveTime, slideTime, seatPush } = load.settings;
  const { handsFrom, handsFor, pushRise } = gettingUpFixed;
  const left = (time: number): number => 1 - smoothStep(time / leaveTime);
  const way = minus(load.leaving, load.seated);
  const sitting: Press = {
    place: (time) => plus(load.seated, times(way, smoothStep(time / slideTime))),
    force: (time) => load.weight * left(time),
  };
  const push: Push = {
    place: load.edge,
    force: (time) => seatPush * load.bodyWeight * smoothStep(time / pushRise) * left(time),
  };
  const hands = load.hands && handsOn(load, load.hands, left);
  const breaks = [pushRise, handsFrom, slideTime, handsFrom + handsFor, leaveTime, ...(hands?.breaks ?? [])];
  return {
    fixed: load.chair,
    moving: [],
    presses: hands ? [sitting, hands.press] : [sitting],
    pushes: [push],
    foot: null,
    breaks: breaks.toSorted((a, b) => a - b),
    end: leaveTime,
  };
}

/** At most W: where the hands would press more, the law changes. */
function handsOn(
  { settings: { armShare, leaveTime }, bodyWeight, weight }: GettingUp,
  place: Point,
  left: (time: number) => number,
): { readonly press: Press; readonly breaks: readonly number[] } {
  const { handsFrom, handsFor } = gettingUpFixed;
  const wish = (time: number): number => {
    const u = Math.min(Math.max((time - handsFrom) / handsFor, 0), 1);
    return 2 * armShare * bodyWeight * 16 * (u * (1 - u)) ** 2;
  };
  const over = (time: number): number => wish(time) - weight * left(time);
  return {
    press: { place: () => place, force: (time) => Math.min(wish(time), weight * left(time)) },
    breaks: crossings(over, Math.min(handsFrom, leaveTime), Math.min(handsFrom + handsFor, leaveTime)),
  };
}

/** Enough for a hump and a slope, which cross each other twice at most. */
const looks = 64;

/** Where a function changes its sign, its ends left out: both laws end there together. */
function crossings(f: (time: number) => number, from: number, to: number): number[] {
  const at = Array.from({ length: looks - 1 }, (_, i) => from + ((to - from) * (i + 1)) / looks);
  return at.slice(1).flatMap((time, i) => (f(at[i]!) * f(time) < 0 ? [rootBetween(f, at[i]!, time)] : []));
}
