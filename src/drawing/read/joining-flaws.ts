/** What keeps joined curves from being outlines, told by places of the drawing, so that its program finds them. */
import { boxOf, boxRoughly, boxesMeet, diagonalOf, type Box } from '../../geometry/box.js';
import { isSimple, type Simple } from '../../geometry/chords.js';
import { millimetres, type Flaw } from '../../geometry/flaw.js';
import { meetings } from '../../geometry/piece-meetings.js';
import { endOf, startOf, type Piece } from '../../geometry/piece.js';
import { distance, type Point } from '../../geometry/point.js';
import type { Joined, OpenChain } from './joined.js';
import { placeDrawn } from './place-drawn.js';

export interface Joining {
  /** How far apart two ends may lie and be one, metres. */
  readonly within: number;
  /** Across all that was joined, metres. */
  readonly extent: number;
  /** Metres a drawing unit. */
  readonly unit: number;
  /** All outlines of the drawing were asked for: what does not close is left out. */
  readonly everything: boolean;
  /** Whether all of it closes, rightly and with nothing lost, with ends joined that are other metres apart. */
  readonly closesWithin: (within: number) => boolean;
}

/** What lies in what is asked of every two: a seat drilled all round for cane has some hundred. */
const mostLoops = 300;
/** Places of one kind: a drawing that is open everywhere says so often enough. */
const mostTold = 10;

export function joiningFlaws({ loops, open, branchings }: Joined, joining: Joining): Flaw[] {
  if (loops.length > mostLoops)
    return [{ expected: `${mostLoops} outlines of a part at most`, found: String(loops.length) }];
  if (joining.everything && loops.length > 0) return [];
  const meeting = branchings.map(({ at, ends, line }) => ({
    expected: 'outlines in which each end meets one other',
    found: `${ends} ends at ${placeDrawn(at, joining.unit)}, drawn in line ${line} of the drawing and others`,
    hint: 'put each outline on a layer of its own, or take away the lines that do not belong to it',
  }));
  return meeting.length > 0 ? meeting.slice(0, mostTold) : openFlaws(open, joining);
}

/** Of what it is compared with: wider apart a side is missing, and no two ends miss each other (judgement of this project). */
const nearMiss = 0.01;

function openFlaws(open: readonly OpenChain[], joining: Joining): Flaw[] {
  const { within, extent, unit } = joining;
  const near = (nearMiss * extent) / unit;
  const told = open.slice(0, mostTold);
  const gaps = told.map((chain) => gapOf(chain, open));
  const widest = Math.max(...gaps.map((gap) => gap?.by ?? Infinity));
  const join = open.length === told.length && widest <= near ? joinFor(unit * widest, joining) : '';
  const overrunOf = overrunsAmong(open, within / unit);
  return told.map((chain, i) => {
    const { found, hint } = whatIsOpen(chain, { gap: gaps[i]!, near, overrun: overrunOf(chain), join, unit });
    return {
      expected: `outlines that close, ends within ${millimetres(within)} of each other`,
      found: `${found} as drawn, from line ${chain.line} of the drawing on`,
      hint,
    };
  });
}

/** Of a gap or an overrun: how wide and between which places, drawing units. */
interface Miss {
  readonly by: number;
  readonly ends: readonly [Point, Point];
}

interface Open {
  readonly gap: Miss | null;
  /** Gaps up to this are near misses. */
  readonly near: number;
  readonly overrun: Miss | null;
  /** What else may be done about a gap. */
  readonly join: string;
  readonly unit: number;
}

/**
 * What runs on by more than its ends are apart over this only lies across something: what is missing is its last side. Two
 * lines that run on alike have their ends nearer than that where they cross at less than 17°.
 */
const lastSide = 0.3;

function whatIsOpen(
  { pieces, from, to }: OpenChain,
  { gap, near, overrun, join, unit }: Open,
): Required<Pick<Flaw, 'found' | 'hint'>> {
  const between = ([a, b]: Miss['ends']): string =>
    `between ${placeDrawn(a, unit)} and ${placeDrawn(b, unit)}`;
  const wide = ({ by, ends }: Miss): string => `of ${millimetres(unit * by)} ${between(ends)}`;
  const nearMissed = gap !== null && gap.by <= near ? gap.by : Infinity;
  const ownGap = pieces.length > 1 ? distance(from, to) / lastSide : Infinity;
  if (overrun !== null && overrun.by <= Math.min(nearMissed, ownGap))
    return { found: `an overrun ${wide(overrun)}`, hint: 'cut the lines where they cross' };
  const [only] = pieces;
  if (gap === null || (pieces.length === 1 && gap.by > near))
    return {
      found: `a ${only!.kind === 'line' ? 'line' : 'curve'} by itself ${between([from, to])}`,
      hint: 'draw what is to close it, cut the lines that it rounds off, or take it off what is asked for',
    };
  return { found: `a gap ${wide(gap)}`, hint: `close it in the drawing${join}` };
}

/** What may be stated so that all of it closes; nothing where it would not. */
function joinFor(widest: number, { closesWithin }: Joining): string {
  const join = 1.01 * widest;
  return closesWithin(join) ? `, or state \`join: ${millimetres(join)}\`` : '';
}

/**
 * From where a chain ends to its own start where that is near for its size, else to the nearest of all loose ends. Of one
 * line or curve the own ends are as far apart as it is long, which says nothing; null: there are no others.
 */
function gapOf(chain: OpenChain, chains: readonly OpenChain[]): Miss | null {
  const missing = (end: Point): Miss => ({ by: distance(end, chain.to), ends: [chain.to, end] });
  const own = missing(chain.from);
  if (own.by <= nearMiss * diagonalOf(boxRoughly(chain.pieces))) return own;
  const others = chains.flatMap((other) => (other === chain ? [] : [other.from, other.to]));
  const candidates = [...(chain.pieces.length > 1 ? [own] : []), ...others.map(missing)];
  return candidates.reduce<Miss | null>((a, b) => (a === null || b.by < a.by ? b : a), null);
}

/**
 * How far the last line or arc of a chain, or its first, runs on past another line or arc of what is open. Where it
 * joins the one before, and where it just ends on another, it does not.
 */
function overrunsAmong(open: readonly OpenChain[], reach: number): (chain: OpenChain) => Miss | null {
  const boxed = open.flatMap(({ pieces }) =>
    pieces.filter(isSimple).map((piece): Boxed => ({ piece, box: boxOf(piece) })),
  );
  return ({ pieces, from, to }) =>
    overrunAt(pieces.at(-1)!, to, boxed, reach) ?? overrunAt(pieces[0]!, from, boxed, reach);
}

interface Boxed {
  readonly piece: Simple;
  readonly box: Box;
}

function overrunAt(last: Piece, loose: Point, others: readonly Boxed[], reach: number): Miss | null {
  if (!isSimple(last)) return null;
  const box = boxOf(last);
  const joint = distance(startOf(last), loose) > distance(endOf(last), loose) ? startOf(last) : endOf(last);
  let least: Miss | null = null;
  for (const { piece, box: around } of others) {
    if (piece === last || !boxesMeet(box, around, reach)) continue;
    for (const place of meetings(last, piece, reach)) {
      const by = distance(place, loose);
      if (by > reach && by < (least?.by ?? Infinity) && distance(place, joint) > reach)
        least = { by, ends: [place, loose] };
    }
  }
  return least;
}
