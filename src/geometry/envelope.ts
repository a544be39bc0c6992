/**
 * The upper envelope of the support functions of outlines over one turn of leans, by merging halves. A point is an arc of
 * radius 0; arcs and curves hold on the directions of their own normals only. Two arcs are equally low where
 *
 *     |Δc| cos(θ - δ) = ΔR
 *
 * at most twice a turn, in closed form; a curve and another carrier where their supports cross, by Brent's method.
 * Every piece counts as the set of its points, so a hollow edge does no harm.
 */
import { signChanges } from '../numeric/root.js';
import { convexCurves, placeAt } from './convex-curve.js';
import { isCorner, supportOn, type Carrier } from './hull-element.js';
import { fullTurn, leanFacingDown, withinTurn } from './lean.js';
import { startOf, type Loop, type Piece } from './piece.js';
import { distance, minus } from './point.js';

export interface Span {
  readonly from: number;
  readonly to: number;
  readonly carrier: Carrier | null;
}

/**
 * Support values closer than this share of the size are one: some 20 roundings. An arc then keeps the last 1e-7 rad
 * before its end, where its end point is as low as itself to the last digit.
 */
export const tie = 4e-15;

/** The upper envelope of the supports of some outlines, over one turn of leans. */
export interface Envelope {
  readonly spans: readonly Span[];
  /** The farthest that anything of it lies from the origin, roughly, metres. */
  readonly size: number;
}

/** The outline of a body as its loops. */
export type Body = readonly Loop[];

/** @throws RangeError on numbers that are not finite */
export function envelopeOfBody(body: Body, owner: number): Envelope {
  const single = body.flatMap((loop) => spansOfLoop(loop, owner, -Math.PI));
  const size = single.flat().reduce((largest, { carrier }) => Math.max(largest, extent(carrier)), 0);
  if (!Number.isFinite(size)) throw new RangeError(`convexHull: an outline of size ${size}`);
  return { spans: envelopeOf(single, tie * size), size };
}

/** On a tie what comes first. */
export function envelopeOfBoth(first: Envelope, second: Envelope): Envelope {
  const size = Math.max(first.size, second.size);
  return { spans: merge(first.spans, second.spans, tie * size), size };
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
  const ratio = (a.radius - b.radius) / distance(a.centre, b.centre);
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
