/**
 * The convex hull of outlines, exact: the upper envelope over all leans θ of their support functions (envelope.ts), of
 * which roundings are taken away. Where two arcs or points are equally low a common tangent touches both: a flat.
 */
import { keptByPlace } from '../kept.js';
import { envelopeOfBody, envelopeOfBoth, tie, type Body, type Envelope, type Span } from './envelope.js';
import { contactOn, isCorner, type Carrier, type OutlineElement } from './hull-element.js';
import { upward } from './lean.js';
import { distance, minus } from './point.js';

/** A span of leans narrower than this comes from rounding a meeting point; leaving it out moves S by less than 1e-13 m. */
const sliver = 1e-13;
/** Corners nearer than this share of the size are one corner drawn twice. */
const hair = 1e-12;

/**
 * The hull as elements in order of lean, covering one turn from the first `from`. Between two elements whose
 * contacts differ lies a flat.
 * @param bodies one list of loops for each body; equal boundaries go to the body that comes first.
 * @throws RangeError on numbers that are not finite, or when there is nothing.
 */
export const convexHull = (bodies: readonly Body[]): OutlineElement[] => hullMaker()(bodies);

/**
 * Makes hull after hull of bodies that are mostly the same: of what is the very same object as the last time, alone or
 * with its neighbours, the envelope is kept.
 */
export function hullMaker(): typeof convexHull {
  const [single, merged] = [keptByPlace<Envelope>(), keptByPlace<Envelope>()];
  return (bodies) => {
    const leaves = bodies.flatMap((body, owner) =>
      body.length === 0 ? [] : [single(owner, [body], () => envelopeOfBody(body, owner))],
    );
    if (leaves.length === 0) throw new RangeError('convexHull: no outline');
    const { spans, size } = mergedAll(leaves, 0, leaves.length, 1, merged);
    return closeTurn(withoutRounding(spans, size), size);
  };
}

/** Halves and quarters of the list, each merged anew only where one of its two halves is another than before. */
function mergedAll(
  leaves: readonly Envelope[],
  from: number,
  to: number,
  node: number,
  kept: ReturnType<typeof keptByPlace<Envelope>>,
): Envelope {
  if (to - from === 1) return leaves[from]!;
  const middle = (from + to) >> 1;
  const first = mergedAll(leaves, from, middle, 2 * node, kept);
  const second = mergedAll(leaves, middle, to, 2 * node + 1, kept);
  return kept(node, [first, second], () => envelopeOfBoth(first, second));
}

function withoutRounding(spans: readonly Span[], size: number): OutlineElement[] {
  const kept: OutlineElement[] = [];
  for (const { from, to, carrier } of spans) {
    if (carrier === null) throw new RangeError('convexHull: nothing below at some lean');
    const last = kept.at(-1);
    if (last !== undefined && to - from < sliver) kept[kept.length - 1] = carrying(last, last.from, to);
    else append(kept, carrying(carrier, from, to), size);
  }
  return kept;
}

/** Written out: a sweep makes some twenty of them for every hull. */
const carrying = (carrier: Carrier, from: number, to: number): OutlineElement =>
  carrier.kind === 'round'
    ? { kind: 'round', centre: carrier.centre, radius: carrier.radius, owner: carrier.owner, from, to }
    : { ...carrier, from, to };

function append(kept: OutlineElement[], element: OutlineElement, size: number): void {
  const [before, last] = [kept.at(-2), kept.at(-1)];
  if (last !== undefined && isSame(last, element, size))
    kept[kept.length - 1] = carrying(last, last.from, element.to);
  else if (before !== undefined && last !== undefined && isHidden(last, before, element, size)) {
    const middle = (last.from + last.to) / 2;
    kept.splice(-2, 2, { ...before, to: middle });
    append(kept, { ...element, from: middle }, size);
  } else kept.push(element);
}

/** A corner between two flats that stands out by rounding, such as a point on an edge that does not lie level. */
function isHidden(
  corner: OutlineElement,
  before: OutlineElement,
  after: OutlineElement,
  size: number,
): boolean {
  if (!isCorner(corner)) return false;
  const middle = (corner.from + corner.to) / 2;
  const [here, ...beside] = [
    contactOn(corner, middle),
    contactOn(before, before.to),
    contactOn(after, after.from),
  ] as const;
  if (beside.some((place) => distance(place, here) <= hair * size)) return false;
  return beside.some((place) => upward(minus(place, here), middle) <= tie * size);
}

/** The same corner, circle or curve met twice, such as the corner that two loops share but for rounding. */
function isSame(a: Carrier, b: Carrier, size: number): boolean {
  if (a.owner !== b.owner) return false;
  if (a.kind === 'curve' || b.kind === 'curve')
    return a.kind === 'curve' && b.kind === 'curve' && a.curve === b.curve;
  const apart = distance(a.centre, b.centre);
  return a.radius === b.radius && apart <= (a.radius === 0 ? hair * size : 0);
}

/** The turn was cut open at -π: join what was cut there. */
function closeTurn(elements: OutlineElement[], size: number): OutlineElement[] {
  const [first, last] = [elements[0]!, elements.at(-1)!];
  if (elements.length === 1) return elements;
  if (isSame(first, last, size) || first.to - first.from < sliver)
    return [...elements.slice(1, -1), { ...last, to: last.to + (first.to - first.from) }];
  return elements;
}
