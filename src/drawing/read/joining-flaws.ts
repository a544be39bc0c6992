/** What keeps joined curves from being outlines, told by places of the drawing, so that its program finds them. */
import { millimetres, type Flaw } from '../../geometry/flaw.js';
import { isSimple } from '../../geometry/chords.js';
import { meetings } from '../../geometry/piece-meetings.js';
import { startOf, type Piece } from '../../geometry/piece.js';
import { distance, type Point } from '../../geometry/point.js';
import type { Joined, OpenChain } from './joined.js';

export interface Joining {
  /** How far apart two ends may lie and be one, metres. */
  readonly within: number;
  /** Across all that was joined, metres. */
  readonly extent: number;
  /** Metres a drawing unit. */
  readonly unit: number;
  /** All outlines of the drawing were asked for: what does not close is left out. */
  readonly everything: boolean;
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
    found: `${ends} ends at ${placeDrawn(at)}, drawn in line ${line} of the drawing and others`,
    hint: 'put each outline on a layer of its own, or take away the lines that do not belong to it',
  }));
  if (meeting.length > 0) return meeting.slice(0, mostTold);
  return open.slice(0, mostTold).map((chain) => gapOf(chain, open, joining));
}

/** Of all that is joined: wider apart a side is missing, and joining what is left is no remedy. */
const nearMiss = 0.01;

/** Where a chain is open, how wide, and whether its last lines overrun each other. */
function gapOf(chain: OpenChain, chains: readonly OpenChain[], { within, extent, unit }: Joining): Flaw {
  const nearest = nearestEnd(chain, chains);
  const gap = unit * distance(nearest.at, chain.to);
  const overrun = overruns(chain.pieces.at(-1)!, nearest.piece, within / unit);
  const join = gap <= nearMiss * extent ? `, or state \`join: ${millimetres(gap * 1.01)}\`` : '';
  return {
    expected: `outlines that close, ends within ${millimetres(within)} of each other`,
    found: `${overrun ? 'an overrun' : 'a gap'} of ${millimetres(gap)} between ${placeDrawn(chain.to)} and ${placeDrawn(nearest.at)} as drawn, from line ${chain.line} of the drawing on`,
    hint: overrun ? 'cut the lines where they cross' : `close it in the drawing${join}`,
  };
}

interface LooseEnd {
  readonly at: Point;
  readonly piece: Piece;
}

/** Of all loose ends the one nearest to where a chain ends. */
function nearestEnd(chain: OpenChain, chains: readonly OpenChain[]): LooseEnd {
  const startsAt = ({ from, pieces }: OpenChain): LooseEnd => ({ at: from, piece: pieces[0]! });
  const endsAt = ({ to, pieces }: OpenChain): LooseEnd => ({ at: to, piece: pieces.at(-1)! });
  const others = chains.flatMap((other) => (other === chain ? [] : [startsAt(other), endsAt(other)]));
  return others.reduce(
    (nearest, end) => (distance(end.at, chain.to) < distance(nearest.at, chain.to) ? end : nearest),
    startsAt(chain),
  );
}

/** A last line or arc runs on over the one that it should end at. Where the two join at its other end does not count. */
function overruns(last: Piece, other: Piece, reach: number): boolean {
  if (!isSimple(last) || !isSimple(other) || last === other) return false;
  return meetings(last, other, reach).some((place) => distance(place, startOf(last)) > reach);
}

/** In the drawing’s own axes and units: as many digits as such a program shows. */
const placeDrawn = ({ x, y }: Point): string => `(${shown(x)}, ${shown(y)})`;
const shown = (value: number): string => String(Number(value.toFixed(4)) + 0);
