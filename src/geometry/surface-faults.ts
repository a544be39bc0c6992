/** What is wrong with a running surface, each where a tape from its tail end finds it. */
import { endOf, pointOn, startOf, type Loop, type Piece } from './piece.js';
import { contactAt, type Profile } from './profile.js';
import { dot, minus, plus, times, type Point } from './point.js';
import { arcsWithJumps, type SurfaceArc } from './radius-jumps.js';
import { surfaceLength, type RunningSurface } from './running-surface.js';
import { runsOf, type Run } from './surface-runs.js';

/** Metres along the running surface from its tail end, `from` the nearer. */
export interface Along {
  readonly from: number;
  readonly to: number;
}

export type SurfaceFault = Along &
  (
    | {
        readonly what: 'flat';
        readonly length: number;
        /** How far the outline stands off the floor there at most, metres; 0: it is drawn straight. */
        readonly hollow: number;
      }
    | { readonly what: 'corner'; readonly turn: number }
    | {
        readonly what: 'spot';
        /** Share by which the radius differs from what is on both sides of it: positive is flatter, a low spot. */
        readonly jump: number;
        readonly radius: number;
      }
    /** Flat after flat with corners between: a curve drawn as lines. */
    | {
        readonly what: 'lines';
        readonly count: number;
        readonly longest: number;
        /** How far an arc through the ends of the longest would bulge over it, metres. */
        readonly bulge: number;
      }
  );

/** What is not worth a line (common practice, no source). */
const least = { flat: 0.003, corner: Math.PI / 180, jump: 0.05, hollow: 1e-4 } as const;

/** As few flats in a row are drawn by hand. */
const fewestLines = 4;

/**
 * In order from the tail end.
 * @param outline the boundaries of what runs on it: what lies over a flat, where the hull spans a hollow
 */
export function surfaceFaults(
  profile: Profile,
  surface: RunningSurface,
  outline: readonly Loop[],
): SurfaceFault[] {
  const whole = surfaceLength(surface);
  const fromTail = (from: number, to: number): Along => ({ from: whole - to, to: whole - from });
  const runs = placed(runsOf(profile, surface));
  const rows = rowsOfLines(runs);
  const inRow = (place: number): boolean => rows.some(({ from, to }) => place >= from && place <= to);
  const flats = runs.filter(({ run, to }) => run.flatAfter > least.flat && !inRow(to));
  const corners = runs.filter(({ run, from }) => run.radius === 0 && run.turn > least.corner && !inRow(from));
  const found: SurfaceFault[] = [
    ...rows.map(({ from, to, turn, count, longest }) => ({
      ...fromTail(from, to),
      ...{ what: 'lines' as const, count, longest, bulge: (longest ** 2 * turn) / (8 * (to - from)) },
    })),
    ...flats.map(({ run: { flatAfter: length, until }, to }) => ({
      ...fromTail(to, to + length),
      ...{
        what: 'flat' as const,
        length,
        hollow: hollowOver(profile, until, length, outline),
      },
    })),
    ...corners.map(({ run: { turn }, from }) => ({ ...fromTail(from, from), what: 'corner' as const, turn })),
    ...spotsOf(arcsWithJumps(runs.map(({ run }) => run))).map(({ from, to, jump, radius }) => ({
      ...fromTail(from, to),
      ...{ what: 'spot' as const, jump, radius },
    })),
  ];
  return found.sort((a, b) => a.from - b.from);
}

/** A run with where it lies, metres from the nose end. */
interface Placed extends Along {
  readonly run: Run;
}

function placed(runs: readonly Run[]): Placed[] {
  let place = 0;
  return runs.map((run) => {
    const from = place;
    const to = from + run.length;
    place = to + run.flatAfter;
    return { run, from, to };
  });
}

interface RowOfLines extends Along {
  /** Of all of it, radians. */
  readonly turn: number;
  readonly count: number;
  readonly longest: number;
}

/** Corners in a row, a flat after each and before the first: as long as no arc comes between. */
function rowsOfLines(runs: readonly Placed[]): RowOfLines[] {
  const rows: RowOfLines[] = [];
  let row = null as RowOfLines | null;
  const finish = (): void => {
    if (row !== null && row.count >= fewestLines) rows.push(row);
    row = null;
  };
  for (const { run, to } of runs) {
    if (run.radius > 0) finish();
    if (run.flatAfter === 0) finish();
    else
      row = {
        from: row?.from ?? to,
        to: to + run.flatAfter,
        turn: (row?.turn ?? 0) + run.turn,
        count: (row?.count ?? 0) + 1,
        longest: Math.max(row?.longest ?? 0, run.flatAfter),
      };
  }
  finish();
  return rows;
}

/**
 * Around each arc that stands out most, as far as those beside it differ as well from what it stands out of, to the same
 * side. Those of more, first.
 */
function spotsOf(arcs: readonly SurfaceArc[]): SurfaceArc[] {
  const spots: SurfaceArc[] = [];
  const standing = arcs.filter(({ jump }) => Math.abs(jump) >= least.jump);
  for (const most of standing.toSorted((a, b) => Math.abs(b.jump) - Math.abs(a.jump))) {
    if (spots.some(({ from, to }) => most.from >= from && most.to <= to)) continue;
    const beside = most.radius / (1 + most.jump);
    const standsOut = ({ radius }: SurfaceArc): boolean =>
      (radius / beside - 1) * Math.sign(most.jump) >= least.jump;
    let [first, last] = [arcs.indexOf(most), arcs.indexOf(most)];
    while (first > 0 && standsOut(arcs[first - 1]!)) first--;
    while (last + 1 < arcs.length && standsOut(arcs[last + 1]!)) last++;
    spots.push({ ...most, from: arcs[first]!.from, to: arcs[last]!.to });
  }
  return spots;
}

/** Between the ends of a flat, how far the outline stands off it at most; what is less than is seen counts as nothing. */
function hollowOver(profile: Profile, lean: number, length: number, outline: readonly Loop[]): number {
  // Just behind the flat the contact is at its rear end.
  const rear = contactAt(profile, lean + justBehind);
  const ahead = { x: Math.cos(lean), y: -Math.sin(lean) };
  const inward = { x: Math.sin(lean), y: Math.cos(lean) };
  const heights = Array.from({ length: looks }, (_, i) => {
    const place = plus(rear, times(ahead, ((i + 0.5) / looks) * length));
    return Math.min(
      ...outline.flatMap((loop) => loop.flatMap((piece) => heightOver(piece, place, ahead, inward))),
    );
  });
  const most = Math.max(0, ...heights.filter(Number.isFinite));
  return most < least.hollow ? 0 : most;
}

const justBehind = 1e-9;
const looks = 25;
/** Chords of a curve, for how far it stands off: of a metre’s arc they are 2e-6 m off. */
const chords = 256;

/** Where the plumb line of a place meets a piece, over it. */
function heightOver(piece: Piece, place: Point, ahead: Point, inward: Point): number[] {
  const steps = piece.kind === 'line' ? 1 : chords;
  const heights: number[] = [];
  let from = minus(startOf(piece), place);
  for (let i = 1; i <= steps; i++) {
    const to = minus(i === steps ? endOf(piece) : pointOn(piece, i / steps), place);
    const [a, b] = [dot(from, ahead), dot(to, ahead)];
    if (a * b <= 0 && a !== b) heights.push(dot(plus(from, times(minus(to, from), a / (a - b))), inward));
    from = to;
  }
  return heights;
}
