/** Loose curves joined where their ends meet: closed outlines, and what stays open. */
import { endOf, pointOn, startOf, type Loop, type Piece } from '../../geometry/piece.js';
import { distance, type Point } from '../../geometry/point.js';
import { reversedPiece } from '../../geometry/reversed.js';
import { closedUp } from './closed-up.js';
import type { DrawnCurve } from './drawn.js';
import { placeGrid } from './place-grid.js';
import { withoutTwins } from './twins.js';

export interface DrawnLoop {
  readonly boundary: Loop;
  /** The first of its curves in the file. */
  readonly line: number;
}

/** A chain of curves that does not close. */
export interface OpenChain {
  readonly pieces: readonly Piece[];
  readonly from: Point;
  readonly to: Point;
  readonly line: number;
}

/** Where three ends or more meet: which of them go on is not for a reader to guess. */
export interface Branching {
  readonly at: Point;
  readonly ends: number;
  readonly line: number;
}

export interface Joined {
  readonly loops: readonly DrawnLoop[];
  readonly open: readonly OpenChain[];
  readonly branchings: readonly Branching[];
  /** Curves drawn twice, the second left out. */
  readonly duplicates: number;
}

/** An end of a curve: the other is the same curve’s. */
interface End {
  readonly curve: number;
  readonly side: 0 | 1;
  readonly at: Point;
}

/** @param within how far apart two ends may lie and be one, in the unit of the curves */
export function joined(curves: readonly DrawnCurve[], within: number): Joined {
  const kept = withoutTwins(curves, within);
  const loops: DrawnLoop[] = [];
  const loose: DrawnCurve[] = [];
  for (const curve of kept) {
    if (closes(curve, within)) loops.push({ boundary: closedUp(curve.pieces), line: curve.line });
    else loose.push(curve);
  }
  const knots = knotsOf(loose, within);
  const branchings = [...new Set(knots.flat())]
    .filter((ends) => ends.length > 2)
    .map((ends) => ({ at: ends[0]!.at, ends: ends.length, line: loose[ends[0]!.curve]!.line }));
  const used = new Set<number>();
  const open: OpenChain[] = [];
  const follow = (curve: number, side: 0 | 1): void => {
    const chain = chainFrom(loose, knots, used, curve, side);
    if (chain === null) return;
    const { pieces, line } = chain;
    const [from, to] = [startOf(pieces[0]!), endOf(pieces.at(-1)!)];
    if (chain.closed) loops.push({ boundary: closedUp(pieces), line });
    else open.push({ pieces, from, to, line });
  };
  // Chains with two ends first: what is left then is round.
  for (const curve of loose.keys())
    for (const side of [0, 1] as const) if (knots[curve]![side].length !== 2) follow(curve, side);
  for (const curve of loose.keys()) follow(curve, 0);
  return { loops, open, branchings, duplicates: curves.length - kept.length };
}

/** By itself, or its ends meet and it has been somewhere. */
function closes({ pieces, closed }: DrawnCurve, within: number): boolean {
  if (closed) return true;
  const from = startOf(pieces[0]!);
  if (distance(from, endOf(pieces.at(-1)!)) > within) return false;
  return pieces.some((piece) => distance(pointOn(piece, 0.5), from) > within);
}

/** Per curve the ends that meet its start and its end, itself among them. */
function knotsOf(curves: readonly DrawnCurve[], within: number): readonly (readonly [End[], End[]])[] {
  const grid = placeGrid<End[]>(within);
  const knotAt = (end: End): End[] => {
    const knot = grid.near(end.at, () => true) ?? [];
    knot.push(end);
    grid.add(end.at, knot);
    return knot;
  };
  return curves.map(({ pieces }, curve) => [
    knotAt({ curve, side: 0, at: startOf(pieces[0]!) }),
    knotAt({ curve, side: 1, at: endOf(pieces.at(-1)!) }),
  ]);
}

/** From an end of a curve through curve after curve, as long as two ends meet; null where it has been. */
function chainFrom(
  curves: readonly DrawnCurve[],
  knots: readonly (readonly [End[], End[]])[],
  used: Set<number>,
  first: number,
  side: 0 | 1,
): { pieces: Piece[]; line: number; closed: boolean } | null {
  if (used.has(first)) return null;
  const pieces: Piece[] = [];
  let line = Infinity;
  let [curve, entered] = [first, side];
  for (;;) {
    used.add(curve);
    const drawn = curves[curve]!;
    line = Math.min(line, drawn.line);
    pieces.push(...(entered === 0 ? drawn.pieces : drawn.pieces.map(reversedPiece).reverse()));
    const left = entered === 0 ? 1 : 0;
    const knot: readonly End[] = knots[curve]![left];
    const onward: End | undefined =
      knot.length === 2 ? knot.find((end) => end.curve !== curve || end.side !== left) : undefined;
    if (onward === undefined) return { pieces, line, closed: false };
    if (used.has(onward.curve))
      return { pieces, line, closed: onward.curve === first && onward.side === side };
    [curve, entered] = [onward.curve, onward.side];
  }
}
