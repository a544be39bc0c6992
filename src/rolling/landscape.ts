/**
 * The height of a body's centre of gravity G over the floor as the body rolls: H(θ), whose times m g is its energy.
 * On an arc of the profile with centre c and radius R (a corner: R = 0), with d = |G - c|:
 *
 *     H   = R - d cos ψ          ψ = θ - θ_low
 *     H'  = d sin ψ              = X_G - X_C, how far G is ahead of the contact
 *     H'' = d cos ψ = ρ - H
 *
 * θ_low is the lean at which G hangs plumb below c. On a curve with contact p(θ) and radius of curvature ρ(θ):
 *
 *     H   = (G - p)·(sin θ, cos θ),   H' = (G - p)·(cos θ, -sin θ),   H'' = ρ - H
 *
 * Passing a flat of length L, H' jumps up by L.
 */
import { parameterAt, placeAt, wayBetween } from '../geometry/convex-curve.js';
import {
  contactOn,
  radiusOn,
  touchOn,
  type CurveElement,
  type HullCarrier,
  type HullElement,
} from '../geometry/hull-element.js';
import { ahead, fullTurn, upward, withinTurn } from '../geometry/lean.js';
import { minus, type Point } from '../geometry/point.js';
import { indexAt, type Profile } from '../geometry/profile.js';

interface Between {
  /** Leans where the contact enters and leaves it. */
  readonly from: number;
  readonly to: number;
  /** Length of the flat after it (towards larger lean), metres. */
  readonly flatAfter: number;
}

/** An arc, or a corner. */
export interface RoundStretch extends Between {
  readonly kind: 'round';
  /** R, metres; 0 on a corner. */
  readonly radius: number;
  /** d, metres. */
  readonly arm: number;
  /** θ_low, radians, taken within half a turn of the stretch's middle. */
  readonly low: number;
}

export interface CurveStretch extends Between {
  readonly kind: 'curve';
  readonly element: CurveElement;
  /** G in the profile's frame. */
  readonly centre: Point;
}

export type Stretch = RoundStretch | CurveStretch;

/** A body on its profile: one stretch an element, in order of lean over one turn. */
export interface Landscape {
  readonly profile: Profile;
  readonly stretches: readonly Stretch[];
}

/** @param centre centre of gravity of what rolls, in the profile's frame */
export function landscapeOf(profile: Profile, centre: Point): Landscape {
  const stretches = profile.elements.map((element, i) => stretchOf(element, centre, profile.flatAfter[i]!));
  return { profile, stretches };
}

function stretchOf(element: HullElement, centre: Point, flatAfter: number): Stretch {
  const { from, to } = element;
  if (element.kind !== 'round') return { kind: 'curve', from, to, flatAfter, element, centre };
  const { radius } = element;
  const { x, y } = minus(centre, element.centre);
  const apart = Math.sqrt(x * x + y * y);
  const low = withinTurn(Math.atan2(-x, -y), (from + to) / 2 - Math.PI);
  return { kind: 'round', from, to, flatAfter, radius, arm: apart > concentric * radius ? apart : 0, low };
}

/** G nearer than this share of the radius to the centre of an arc is there but for rounding: H is the same all along it. */
const concentric = 1e-12;

/** H on a stretch, metres. */
export function heightOn(stretch: Stretch, lean: number): number {
  if (stretch.kind === 'round') return stretch.radius - stretch.arm * Math.cos(lean - stretch.low);
  return upward(minus(stretch.centre, contactOn(stretch.element, lean)), lean);
}

/** H' on a stretch, metres a radian. */
export function slopeOn(stretch: Stretch, lean: number): number {
  if (stretch.kind === 'round') return stretch.arm * Math.sin(lean - stretch.low);
  return ahead(minus(stretch.centre, contactOn(stretch.element, lean)), lean);
}

/** H'' = ρ - H on a stretch, metres: how far G hangs below the centre of curvature. */
export function hangOn(stretch: Stretch, lean: number): number {
  if (stretch.kind === 'round') return stretch.arm * Math.cos(lean - stretch.low);
  return radiusOn(stretch.element, lean) - heightOn(stretch, lean);
}

/** H, H' and ρ at once: on a curve the contact is looked for once. */
export interface Shape {
  readonly height: number;
  readonly slope: number;
  readonly radius: number;
}

export function shapeOn(stretch: Stretch, lean: number): Shape {
  if (stretch.kind === 'round') {
    const { radius, arm, low } = stretch;
    return { height: radius - arm * Math.cos(lean - low), slope: arm * Math.sin(lean - low), radius };
  }
  const { contact, radius } = touchOn(stretch.element, lean);
  const over = minus(stretch.centre, contact);
  return { height: upward(over, lean), slope: ahead(over, lean), radius };
}

/**
 * H(b) - H(a) on one stretch as a function of b, without cancellation. On an arc
 *
 *     2 d sin((ψ_a + ψ_b)/2) sin((ψ_b - ψ_a)/2)
 *
 * on a curve, with s = (sin θ, cos θ),  (G - p_a)·(s_b - s_a) - (p_b - p_a)·s_b.
 */
export function riseFrom(stretch: Stretch, a: number): (b: number) => number {
  if (stretch.kind === 'curve') return riseOver(stretch.element, stretch.centre, a);
  const { arm, low } = stretch;
  return (b) => 2 * arm * Math.sin((a + b) / 2 - low) * Math.sin((b - a) / 2);
}

function riseOver(carrier: HullCarrier, centre: Point, a: number): (b: number) => number {
  switch (carrier.kind) {
    case 'round': {
      const over = minus(centre, carrier.centre);
      return (b) => turnedUpward(over, a, b);
    }
    case 'curve': {
      const { form } = carrier.curve;
      const start = parameterAt(carrier.curve, a);
      const over = minus(centre, placeAt(form, start));
      return (b) =>
        turnedUpward(over, a, b) - upward(wayBetween(form, start, parameterAt(carrier.curve, b)), b);
    }
    case 'mean': {
      const [left, right] = [riseOver(carrier.left, centre, a), riseOver(carrier.right, centre, a)];
      return (b) => (left(b) + right(b)) / 2;
    }
  }
}

/** q·(s_b - s_a), s_b - s_a = 2 sin((b - a)/2) (cos m, -sin m), m = (a + b)/2. */
const turnedUpward = (q: Point, a: number, b: number): number =>
  2 * Math.sin((b - a) / 2) * ahead(q, (a + b) / 2);

/** The stretch of an index counted on past whole turns (`indexAt` of the profile), its leans counted on alike. */
export function stretchAt({ stretches }: Landscape, index: number): Stretch {
  const turns = Math.floor(index / stretches.length);
  const stretch = stretches[index - turns * stretches.length]!;
  if (turns === 0) return stretch;
  const turned = turns * fullTurn;
  const [from, to] = [stretch.from + turned, stretch.to + turned];
  return stretch.kind === 'round'
    ? { ...stretch, from, to, low: stretch.low + turned }
    : { ...stretch, from, to };
}

/** H(θ), metres. */
export const heightAt = (landscape: Landscape, lean: number): number =>
  heightOn(stretchAt(landscape, indexAt(landscape.profile, lean)), lean);

/** H(b) - H(a) over as many stretches as lie between, each difference formed without cancellation. */
export function riseBetween(landscape: Landscape, a: number, b: number): number {
  if (b < a) return -riseBetween(landscape, b, a);
  let rise = 0;
  let from = a;
  for (let index = indexAt(landscape.profile, a); from < b; index++) {
    const stretch = stretchAt(landscape, index);
    const to = Math.min(stretch.to, b);
    rise += riseFrom(stretch, from)(to);
    from = to;
  }
  return rise;
}
