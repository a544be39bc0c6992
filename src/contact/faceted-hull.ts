/**
 * The hull as a polygon that a contact engine can take: its corners and flats as they are, its curves as facets so short
 * that many of them lie within the depth to which the engine lets a body sink.
 *
 * Standing still a body sinks 2 g Δt² at a time step Δt. Facets of
 *
 *     φ = s Δt sqrt(2 g / R)     radians of turning,  s < 0.1
 *
 * are then rolled over without an impact at each. Longer ones are a rolling resistance, worst where a facet is about
 * as long as the depth.
 */
import { contactOn, isCorner, radiusOn, type HullElement } from '../geometry/hull-element.js';
import { withinTurn } from '../geometry/lean.js';
import { distance, type Point } from '../geometry/point.js';
import type { Profile } from '../geometry/profile.js';
import { g } from '../rolling/gravity.js';

/** What is rolled on, and how finely. */
export interface Facets {
  /** Leans between which it is rolled on, radians. */
  readonly from: number;
  readonly to: number;
  /** s */
  readonly share: number;
  /** Δt, seconds. */
  readonly step: number;
}

/** Elsewhere, radians. */
const coarse = (5 * Math.PI) / 180;

/** Vertices nearer than this, metres, are one. */
const apart = 1e-9;

/** φ, radians, on an arc. */
export const facetOn = (radius: number, { share, step }: Pick<Facets, 'share' | 'step'>): number =>
  share * step * Math.sqrt((2 * g) / radius);

/** The vertices in order of lean, clockwise with x forward and y up. In the chair’s frame, metres. */
export function facetedHull({ elements }: Profile, facets: Facets): Point[] {
  const vertices = elements.flatMap((element) =>
    leansOn(element, facets).map((lean) => contactOn(element, lean)),
  );
  return vertices.filter((vertex, i) => distance(vertex, vertices.at(i - 1)!) > apart);
}

/** A curve’s ends and the joints of its facets. */
function leansOn(element: HullElement, facets: Facets): number[] {
  const leans = [element.from];
  if (isCorner(element)) return leans;
  for (let lean = element.from; lean < element.to;) {
    const facet = isRolledOn(lean, facets)
      ? facetOn(Math.max(radiusOn(element, lean), apart), facets)
      : Math.min(coarse, withinTurn(facets.from, lean) - lean);
    lean = Math.min(lean + facet, element.to);
    leans.push(lean);
  }
  return leans;
}

const isRolledOn = (lean: number, { from, to }: Facets): boolean =>
  withinTurn(lean, from - facetEnd) <= to + facetEnd;

/** The first and the last facet may begin a little beyond. */
const facetEnd = 1e-3;
