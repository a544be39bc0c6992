/**
 * The convex hull of outlines, exact: the upper envelope over all leans θ of the support functions of their points,
 * arcs and convex curves (a point is an arc of radius 0; arcs and curves hold on the directions of their own normals
 * only), found by merging halves. Two arcs are equally low where
 *
 *     |Δc| cos(θ - δ) = ΔR
 *
 * at most twice a turn, in closed form; a curve and another carrier where their supports cross, by Brent's method.
 * There a common tangent touches both: a flat. Every piece counts as the set of its points, so a hollow edge does no harm.
 */
import { signChanges } from '../numeric/root.js';
import { convexCurves, placeAt } from './convex-curve.js';
import { contactOn, isCorner, supportOn, type Carrier, type OutlineElement } from './hull-element.js';
import { fullTurn, leanFacingDown, upward, withinTurn } from './lean.js';
import { startOf, type Loop, type Piece } from './piece.js';
import { distance, minus } from './point.js';

interface Span {
  readonly from: number;
  readonly to: number;
  readonly carrier: Carrier | null;
}

/**
 * Support values closer than this share of the size are one: some 20 roundings. An arc then keeps the last 1e-7 rad
 * before its end, where its end point is as low as itself to the last digit.
 */
const tie = 4e-15;
/** A span of leans narrower than this comes from rounding a meeting point; leaving it out moves S by less than 1e-13 m. */
const sliver = 1e-13;
/** Corners nearer than this share of the size are one corner drawn twice. */
const hair = 1e-12;

/** The upper envelope of the supports of some outlines, over one turn of leans. */
interface Envelope {
  readonly spans: readonly Span[];
  /** The farthest that anything of it lies from the origin, roughly, metres. */
  readonly size: number;
}

/** The outline of a body as its loops. */
type Body = readonly Loop[];

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
  const ofBody = leafMaker();
  const merged: (Merged | undefined)[] = [];
  return (bodies) => {
    const leaves = bodies.flatMap((body, owner) => (body.length === 0 ? [] : [ofBody(body, owner)]));
    if (leaves.length === 0) throw new RangeError('convexHull: no outline');
    const { spans, size } = mergedAll(leaves, 0, leaves.length, 1, merged);
    return closeTurn(withoutRounding(spans, size), size);
  };
}

function leafMaker(): (body: Body, owner: number) => Envelope {
  const kept: ({ readonly body: Body; readonly envelope: Envelope } | undefined)[] = [];
  return (body, owner) => {
    const before = kept[owner];
    if (before?.body === body) return before.envelope;
    const envelope = envelopeOfBody(body, owner);
    kept[owner] = { body, envelope };
    return envelope;
  };
}

function envelopeOfBody(body: Body, owner: number): Envelope {
  const single = body.flatMap((loop) => spansOfLoop(loop, owner, -Math.PI));
  const size = single.flat().reduce((largest, { carrier }) => Math.max(largest, extent(carrier)), 0);
  if (!Number.isFinite(size)) throw new RangeError(`convexHull: an outline of size ${size}`);
  return { spans: envelopeOf(single, tie * size), size };
}

interface Merged {
  readonly first: Envelope;
  readonly second: Envelope;
  readonly both: Envelope;
}

/** Halves and quarters of the list, each merged anew only where one of its two halves is another than before. */
function mergedAll(
  leaves: readonly Envelope[],
  from: number,
  to: number,
  node: number,
  kept: (Merged | undefined)[],
): Envelope {
  if (to - from === 1) return leaves[from]!;
  const middle = (from + to) >> 1;
  const first = mergedAll(leaves, from, middle, 2 * node, kept);
  const second = mergedAll(leaves, middle, to, 2 * node + 1, kept);
  const before = kept[node];
  if (before?.first === first && before.second === second) return before.both;
  const size = Math.max(first.size, second.size);
  const both = { spans: merge(first.spans, second.spans, tie * size), size };
  kept[node] = { first, second, both };
  return both;
}

/** The farthest that anything of it lies from the origin, roughly. */
function extent(carrier: Carrier | null): number {
  if (carrier === null) return 0;
  const { x, y } =
    carrier.kind === 'round' ? carrier.centre : placeAt(carrier.curve.form, carrier.curve.start);
  return Math.abs(x) + Math.abs(y) + (carrier.kind === 'round' ? carrier.radius : 0);
}

function spansOfLoop(loop: Loop, owner: number, start: number): Span[][] {
  return loop.flatMap((piece) => {
    const carrier: Carrier = { kind: 'round', centre: startOf(piece), radius: 0, owner };
    return [everywhere(carrier, start), ...spansOfPiece(piece, owner, start)];
  });
}

function spansOfPiece(piece: Piece, owner: number, start: number): Span[][] {
  switch (piece.kind) {
    case 'line':
      return [];
    case 'arc': {
      const { centre, radius, sweep } = piece;
      const from = leanFacingDown(piece.start + Math.max(sweep, 0));
      return [onOwnLeans({ kind: 'round', centre, radius, owner }, from, Math.abs(sweep), start)];
    }
    default: {
      const { curves, places } = convexCurves(piece);
      return [
        ...curves.map((curve) =>
          onOwnLeans({ kind: 'curve', curve, owner }, curve.from, curve.to - curve.from, start),
        ),
        ...places.map((centre) => everywhere({ kind: 'round', centre, radius: 0, owner }, start)),
      ];
    }
  }
}

const everywhere = (carrier: Carrier, start: number): Span[] => [
  { from: start, to: start + fullTurn, carrier },
];

/** A carrier that holds over some leans, within the turn that begins at `start`. */
function onOwnLeans(carrier: Carrier, first: number, width: number, start: number): Span[] {
  const end = start + fullTurn;
  if (width >= fullTurn) return [{ from: start, to: end, carrier }];
  const from = withinTurn(first, start);
  const to = from + width;
  const spans =
    to <= end
      ? [absent(start, from), { from, to, carrier }, absent(to, end)]
      : [
          { from: start, to: to - fullTurn, carrier },
          absent(to - fullTurn, from),
          { from, to: end, carrier },
        ];
  return spans.filter((span) => span.to > span.from);
}

const absent = (from: number, to: number): Span => ({ from, to, carrier: null });

function envelopeOf(parts: readonly Span[][], tolerance: number): Span[] {
  if (parts.length === 1) return parts[0]!;
  const middle = parts.length >> 1;
  return merge(
    envelopeOf(parts.slice(0, middle), tolerance),
    envelopeOf(parts.slice(middle), tolerance),
    tolerance,
  );
}

/** The higher of two envelopes over the same turn; on a tie the arc, then the first. */
function merge(first: readonly Span[], second: readonly Span[], tolerance: number): Span[] {
  const merged: Span[] = [];
  const add = (from: number, to: number, carrier: Carrier | null): void => {
    const last = merged.at(-1);
    if (last?.carrier === carrier) merged[merged.length - 1] = { from: last.from, to, carrier };
    else merged.push({ from, to, carrier });
  };
  let i = 0;
  let j = 0;
  let from = first[0]!.from;
  while (i < first.length && j < second.length) {
    const [a, b] = [first[i]!, second[j]!];
    const to = Math.min(a.to, b.to);
    const cuts = a.carrier && b.carrier ? meetings(a.carrier, b.carrier, from, to, tolerance) : [];
    for (const cut of [...cuts, to]) {
      add(from, cut, higher(a.carrier, b.carrier, (from + cut) / 2, tolerance));
      from = cut;
    }
    if (a.to === to) i++;
    if (b.to === to) j++;
  }
  return merged;
}

function higher(a: Carrier | null, b: Carrier | null, lean: number, tolerance: number): Carrier | null {
  if (a === null || b === null) return a ?? b;
  const difference = supportOn(a, lean) - supportOn(b, lean);
  if (Math.abs(difference) > tolerance) return difference > 0 ? a : b;
  return isCorner(a) && !isCorner(b) ? b : a;
}

/** Leans inside (from, to) where both are equally low, in order. */
function meetings(a: Carrier, b: Carrier, from: number, to: number, tolerance: number): number[] {
  if (a.kind === 'curve' || b.kind === 'curve')
    return signChanges((lean) => supportOn(a, lean) - supportOn(b, lean), from, to, curveSteps, tolerance);
  const apart = minus(a.centre, b.centre);
  const ratio = (a.radius - b.radius) / Math.hypot(apart.x, apart.y);
  if (!(Math.abs(ratio) <= 1)) return [];
  const towards = Math.atan2(apart.x, apart.y);
  const half = Math.acos(ratio);
  return [towards - half, towards + half]
    .map((lean) => withinTurn(lean, from))
    .filter((lean) => lean > from && lean < to)
    .sort((p, q) => p - q);
}

/**
 * A curve turns by at most 90° with a curvature that only grows or only falls: against a point or an arc its support
 * crosses at most a few times, seldom closer together than 3°.
 */
const curveSteps = 32;

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
