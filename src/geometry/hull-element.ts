/**
 * What carries a hull over a range of leans θ: an arc, a corner (an arc of radius 0), a convex curve, or the mean of two.
 *
 *     S(θ) = p·d(θ)                     of an arc: R - (c_x sin θ + c_y cos θ)
 *     ∫ ρ dθ                            length along it
 *
 * Of a mean, S, p, ρ and length are the means of both, each for the same θ.
 */
import { curvatureRadius, lengthOver, parameterAt, placeAt, type ConvexCurve } from './convex-curve.js';
import { upward } from './lean.js';
import { midpoint, type Point } from './point.js';

interface Round {
  readonly kind: 'round';
  readonly centre: Point;
  /** 0: a corner. */
  readonly radius: number;
}

interface Curved {
  readonly kind: 'curve';
  readonly curve: ConvexCurve;
}

/** Of rockers unlike on both sides (mean-profile.ts). */
interface Mean {
  readonly kind: 'mean';
  readonly left: HullCarrier;
  readonly right: HullCarrier;
}

interface Owned {
  /** Which body of the input it belongs to. */
  readonly owner: number;
}

/** What outlines are made of that carries their hull. */
export type Carrier = (Round | Curved) & Owned;

export type HullCarrier = Carrier | (Mean & Owned);

interface Carrying {
  /** The leans from which and to which the contact is on it. */
  readonly from: number;
  readonly to: number;
}

export type HullElement = HullCarrier & Carrying;

/** An element of the hull of outlines: no mean. */
export type OutlineElement = Carrier & Carrying;

/** An element whose contact has to be looked for. */
export type CurveElement = Exclude<HullElement, { kind: 'round' }>;

export const isCorner = (carrier: HullCarrier): boolean => carrier.kind === 'round' && carrier.radius === 0;

/** p(θ): for an arc c + R d(θ). */
export function contactOn(carrier: HullCarrier, lean: number): Point {
  switch (carrier.kind) {
    case 'round': {
      const { centre, radius } = carrier;
      return { x: centre.x - radius * Math.sin(lean), y: centre.y - radius * Math.cos(lean) };
    }
    case 'curve':
      return placeAt(carrier.curve.form, parameterAt(carrier.curve, lean));
    case 'mean':
      return midpoint(contactOn(carrier.left, lean), contactOn(carrier.right, lean));
  }
}

/** S(θ), metres. */
export function supportOn(carrier: HullCarrier, lean: number): number {
  switch (carrier.kind) {
    case 'round':
      return carrier.radius - upward(carrier.centre, lean);
    case 'curve':
      return -upward(contactOn(carrier, lean), lean);
    case 'mean':
      return (supportOn(carrier.left, lean) + supportOn(carrier.right, lean)) / 2;
  }
}

/** ρ(θ), metres. */
export function radiusOn(carrier: HullCarrier, lean: number): number {
  switch (carrier.kind) {
    case 'round':
      return carrier.radius;
    case 'curve':
      return curvatureRadius(carrier.curve.form, parameterAt(carrier.curve, lean));
    case 'mean':
      return (radiusOn(carrier.left, lean) + radiusOn(carrier.right, lean)) / 2;
  }
}

export interface Touch {
  readonly contact: Point;
  readonly radius: number;
}

/** p(θ) and ρ(θ), the parameter of a curve found once. */
export function touchOn(carrier: HullCarrier, lean: number): Touch {
  switch (carrier.kind) {
    case 'round':
      return { contact: contactOn(carrier, lean), radius: carrier.radius };
    case 'curve': {
      const { form } = carrier.curve;
      const t = parameterAt(carrier.curve, lean);
      return { contact: placeAt(form, t), radius: curvatureRadius(form, t) };
    }
    case 'mean': {
      const [left, right] = [touchOn(carrier.left, lean), touchOn(carrier.right, lean)];
      return { contact: midpoint(left.contact, right.contact), radius: (left.radius + right.radius) / 2 };
    }
  }
}

/** Length along an element from its beginning to a lean of it, metres. */
export const lengthTo = (element: HullElement, lean: number): number =>
  lengthBetween(element, element.from, lean);

function lengthBetween(carrier: HullCarrier, from: number, to: number): number {
  switch (carrier.kind) {
    case 'round':
      return carrier.radius * (to - from);
    case 'curve':
      return lengthOver(carrier.curve, from, to);
    case 'mean':
      return (lengthBetween(carrier.left, from, to) + lengthBetween(carrier.right, from, to)) / 2;
  }
}
