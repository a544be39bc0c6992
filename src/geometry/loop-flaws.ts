/**
 * What is wrong with one loop by itself. A sound loop that runs counter-clockwise winds once round every point inside
 * and never round any outside (clockwise: -1 and 0); where it crosses itself some region has another number.
 */
import { signedArea } from './area-moments.js';
import { runsOf, turnsAround, type Run } from './beside-runs.js';
import { diagonalOf } from './box.js';
import { contourOf, type Contour } from './contour.js';
import { inChair, millimetres, type Flaw, type Telling } from './flaw.js';
import { meetingPlaces, mostMeetings } from './loop-meetings.js';
import { endOf, startOf, type Loop } from './piece.js';
import { distance, touching, type Point } from './point.js';

export function loopFlaws(loop: Loop, say = inChair.place): Flaw[] {
  if (loop.length === 0) return [noWidth(loop, say)];
  const open = gaps(loop, say);
  if (open.length > 0) return open;
  const area = signedArea(loop);
  if (!Number.isFinite(area)) return [{ expected: 'an outline of finite size', found: `${area} m²` }];
  const contour = contourOf(loop);
  // Lines from a place to itself are no pieces of it.
  if (contour.pieces.length === 0) return [noWidth(loop, say)];
  const runs = lookingAt(contour, Math.sign(area));
  if (runs === null) return [tangled];
  const flaws = crossings(runs, say);
  if (flaws.length > 0) return flaws;
  return Math.abs(area) > touching * diagonalOf(contour.box) ? widthless(runs, say) : [noWidth(loop, say)];
}

/** What has so many meetings is not looked at further. */
export const tangled: Flaw = {
  expected: 'outlines that do not cross',
  found: `more than ${mostMeetings} meetings for each line or curve of them`,
  hint: 'untangle them, or draw them with fewer and longer lines',
};

const noWidth = ([first]: Loop, say: Telling['place']): Flaw => ({
  expected: 'an outline that encloses some wood',
  found: `none: it has no width${first === undefined ? '' : ` at ${say(startOf(first))}`}`,
});

/** Readers join pieces; what is left open by more than counts as touching they could not. */
function gaps(loop: Loop, say: Telling['place']): Flaw[] {
  return loop.flatMap((piece, i) => {
    const end = endOf(piece);
    const gap = distance(end, startOf(loop[(i + 1) % loop.length]!));
    if (gap <= touching) return [];
    const found = `a gap of ${millimetres(gap)} at ${say(end)}`;
    return [{ expected: 'a closed outline', found }];
  });
}

/** A shorter run may lie wholly within a sharp corner, where both its sides look out. */
const shortestWhisker = 10 * touching;

/** The runs of a loop from 0. */
interface Looking {
  readonly count: number;
  readonly at: (run: number) => LookedAt;
}

interface LookedAt {
  readonly from: Point;
  readonly crossed: boolean;
  readonly widthless: boolean;
}

/**
 * Each looked at when it is asked for: of a scribble of a thousand lines there are tens of thousands. null: it is tangled.
 * @param sense 1 when the loop runs counter-clockwise, -1 clockwise.
 */
function lookingAt(contour: Contour, sense: number): Looking | null {
  const places = meetingPlaces([contour]);
  if (places === null) return null;
  const runs = runsOf(contour, places[0]!);
  const looked: LookedAt[] = [];
  const look = ({ from, length, left, right }: Run): LookedAt => {
    const sides = [turnsAround(contour, left), turnsAround(contour, right)];
    const crossed = sides.some((turns) => turns !== null && turns !== 0 && turns !== sense);
    return { from, crossed, widthless: length > shortestWhisker && sides.every((turns) => turns === 0) };
  };
  return { count: runs.length, at: (i) => (looked[i] ??= look(runs.at(i)!)) };
}

/** A wrong region begins at the crossing: at the first of its runs that follows a sound one. */
function crossings({ count, at }: Looking, say: Telling['place']): Flaw[] {
  let first: LookedAt | null = null;
  for (let i = 0; i < count && first === null; i++)
    if (at(i).crossed && !at(i === 0 ? count - 1 : i - 1).crossed) first = at(i);
  // Where no run is sound the region goes all round.
  if (first === null && at(0).crossed) first = at(0);
  if (first === null) return [];
  const found = `a crossing near ${say(first.from)}`;
  return [{ expected: 'an outline that does not cross itself', found }];
}

function widthless({ count, at }: Looking, say: Telling['place']): Flaw[] {
  return Array.from({ length: count }, (_, i) => at(i))
    .filter((run) => run.widthless)
    .map(({ from }) => ({
      expected: 'an outline that encloses wood all along',
      found: `a stretch without width from ${say(from)}`,
    }));
}
