/** One row of lines that looks like a curve: arcs and straight lines where its places lie on such, curves between them. */
import { fullTurn } from '../../../geometry/lean.js';
import type { Arc, Line, Piece } from '../../../geometry/piece.js';
import { distance, samePlace, type Point } from '../../../geometry/point.js';
import { arcBetween } from './arc-between.js';
import { curveThrough } from './curve-through.js';
import { fewestFacets, linesThrough, riseOver } from './facets.js';
import { curvatureUnsure, radiusWithin, roundsOf, touchOf, turnsLeft, type Round } from './rounds.js';
import { slackOf, slackOverRoughness } from './roughness.js';
import { allSmoothed, nothingSmoothed, type Smoothing } from './smoothing.js';

export interface MadeOfLines {
  readonly pieces: readonly Piece[];
  readonly smoothing: Smoothing;
}

/**
 * @param drawn the lines’ ends, the first and the last the same where no corner interrupts the row
 * @param within how far what is made may lie from the lines, metres
 */
export function smoothedRow(drawn: readonly Point[], within: number): MadeOfLines {
  const lines = drawn.length - 1;
  if (lines > mostLines)
    return { pieces: linesThrough(drawn), smoothing: { ...nothingSmoothed, left: lines } };
  const slack = Math.min(slackOf(drawn), within);
  const ring = distance(drawn[0]!, drawn.at(-1)!) <= samePlace;
  const places = ring ? begunAtJoint(drawn, slack) : drawn;
  const rounds = roundsOf(places, slack).filter((round) => offLines(places, round) <= within);
  const joints = rounds.map((round, i) =>
    jointOf(places, round, rounds[i + 1] ?? (ring ? rounds[0] : undefined), slack),
  );
  const made: MadeOfLines[] = [];
  let at = 0;
  rounds.forEach((round, i) => {
    const before = i > 0 || ring ? joints.at(i - 1)! : null;
    // Two that go over into each other have nothing between them.
    if (before === null) made.push(between(places.slice(at, round.first + 1), within, slack));
    const [from, to] = [before ?? places[round.first]!, joints[i] ?? places[round.last]!];
    made.push({ pieces: [pieceOf(places, round, from, to)], smoothing: smoothingOf(places, round) });
    at = round.last;
  });
  if (!joints.at(-1)) made.push(between(places.slice(at), within, slack));
  return {
    pieces: made.flatMap(({ pieces }) => pieces),
    smoothing: allSmoothed(made.map(({ smoothing }) => smoothing)),
  };
}

/** Of a chair’s longest edge one would be half a millimetre long: written so finely its radius is lost in rounding. */
const mostLines = 4000;

/** A ring begins anywhere; begun where an arc of it ends none is cut in two. Without an arc: where it turns most. */
function begunAtJoint(ring: readonly Point[], slack: number): Point[] {
  const [first] = roundsOf(ring, slack);
  const at = first?.last ?? sharpestOf(ring);
  return [...ring.slice(at, -1), ...ring.slice(0, at + 1)];
}

/** Of three places in a row the middle one, where they lie nearest to each other for the way that they turn. */
function sharpestOf(ring: readonly Point[]): number {
  let [sharpest, least] = [0, Infinity];
  for (let i = 1; i + 1 < ring.length; i++) {
    const chord = distance(ring[i - 1]!, ring[i + 1]!);
    const way = distance(ring[i - 1]!, ring[i]!) + distance(ring[i]!, ring[i + 1]!);
    if (chord / way < least) [sharpest, least] = [i, chord / way];
  }
  return sharpest;
}

/** Where one round goes over into the next between two places; null: in a place, or over a line. */
function jointOf(
  places: readonly Point[],
  before: Round | undefined,
  after: Round | undefined,
  slack: number,
): Point | null {
  if (!before?.circle || !after?.circle || before === after) return null;
  const lines = places.length - 1;
  const gap = after.first - before.last;
  if (gap !== 1 && gap !== 1 - lines) return null;
  return touchOf(before.circle, after.circle, places[before.last]!, places[after.first]!, slack);
}

function pieceOf(places: readonly Point[], round: Round, from: Point, to: Point): Line | Arc {
  const { circle } = round;
  if (circle === null) return { kind: 'line', from, to };
  const left = turnsLeft(places, round);
  if (distance(from, to) > 0) return arcBetween(from, to, circle, left);
  const { centre, radius } = circle;
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return { kind: 'arc', centre, radius, start, sweep: left ? fullTurn : -fullTurn };
}

/** What lies on no circle and no line: a curve, or the lines as drawn where its curvature, 1/m about, is not told. */
function between(places: readonly Point[], within: number, slack: number): MadeOfLines {
  const lines = places.length - 1;
  const drawn = linesThrough(places);
  // One between two arcs is a flat that is meant; more of them turn against each other.
  if (lines < fewestFacets)
    return { pieces: drawn, smoothing: { ...nothingSmoothed, left: lines > 1 ? lines : 0 } };
  const curve =
    curvatureUnsure(places, slack) > radiusWithin ? null : curveThrough(places, slack / slackOverRoughness);
  const off = curve === null ? Infinity : curve.off + bulgeOf(places);
  if (curve === null || off > within || curve.change > radiusWithin)
    return { pieces: drawn, smoothing: { ...nothingSmoothed, left: lines } };
  return {
    pieces: curve.pieces,
    smoothing: { ...nothingSmoothed, lines, curves: 1, off, radius: curve.change },
  };
}

function smoothingOf(places: readonly Point[], round: Round): Smoothing {
  const { circle, first, last } = round;
  if (circle === null) return nothingSmoothed;
  const [lines, off] = [last - first, offLines(places, round)];
  return { ...nothingSmoothed, lines, arcs: 1, off, radius: circle.change };
}

/** How far a round lies from the lines through its places: an arc over a line of length l rises by R - √(R² - l²/4). */
function offLines(places: readonly Point[], { first, last, circle }: Round): number {
  if (circle === null) return 0;
  const half = longestLine(places.slice(first, last + 1)) / 2;
  return circle.off + circle.radius - Math.sqrt(Math.max(0, circle.radius ** 2 - half ** 2));
}

/** How far a curve through places rises over the lines between them at most. */
const bulgeOf = (places: readonly Point[]): number =>
  places.slice(2).reduce((most, to, i) => Math.max(most, riseOver(places[i]!, places[i + 1]!, to)), 0);

const longestLine = (places: readonly Point[]): number =>
  places.slice(1).reduce((most, place, i) => Math.max(most, distance(places[i]!, place)), 0);
