/** The outlines that a design asks of a drawing: by layer, by id or all of it, in metres, where they lie in the chair. */
import { mappedPiece, scaling, shifting, thenMapped, turning, type Affine } from '../../geometry/affine.js';
import { turnsAround } from '../../geometry/beside-runs.js';
import { boxAroundBoxes, boxRoughly, diagonalOf, type Box } from '../../geometry/box.js';
import { contourOf, type Contour } from '../../geometry/contour.js';
import type { Flaw } from '../../geometry/flaw.js';
import { outlineFlaws } from '../../geometry/flaws.js';
import { pointOn, type Loop } from '../../geometry/piece.js';
import type { Point } from '../../geometry/point.js';
import { nearestWord } from '../../quantity/nearest.js';
import type { Drawn, DrawnCurve } from './drawn.js';
import { joined, type Joined } from './joined.js';
import { nothingDrawn } from './left-out.js';
import { joiningFlaws } from './joining-flaws.js';
import { smoothed } from './smoothing/smoothed.js';
import { allSmoothed, type Smoothing } from './smoothing/smoothing.js';

export interface Asked {
  readonly layer: string | null;
  readonly id: string | null;
  /** Metres a drawing unit as the design states it: it wins; null: it does not. */
  readonly unit: number | null;
  /** The drawing’s place that lies at the chair’s [0, 0], metres in the drawing’s axes. */
  readonly origin: Point;
  /** Counter-clockwise about the chair’s [0, 0], radians; after the mirroring. */
  readonly turn: number;
  /** Left and right exchanged. */
  readonly mirror: boolean;
  /** How far apart two ends may lie and be one, metres; null: a millionth of what is drawn, a thousandth of a millimetre at least. */
  readonly join: number | null;
  /** How far a curve may lie from lines that it is drawn as, metres; null: lines stay lines. */
  readonly smooth: number | null;
}

export interface DrawnOutlines {
  /** Those inside an odd number of others are holes. */
  readonly loops: readonly { readonly boundary: Loop; readonly hole: boolean }[];
  /** Around all of them, metres. */
  readonly box: Box;
  /** Curves drawn twice, taken once. */
  readonly duplicates: number;
  /** Chains that do not close, where all outlines were asked for: not taken. */
  readonly leftOpen: number;
  /** What was made of lines; null: it was not asked for. */
  readonly smoothing: Smoothing | null;
}

export type OutlinesFound =
  ({ readonly ok: true } & DrawnOutlines) | { readonly ok: false; readonly flaws: readonly Flaw[] };

const refused = (...flaws: readonly Flaw[]): OutlinesFound => ({ ok: false, flaws });

export function drawnOutlines(drawn: Drawn, asked: Asked): OutlinesFound {
  const unit = asked.unit ?? drawn.unit;
  if (unit === null)
    return refused({
      expected: '`units` beside `file`: the drawing does not say what its units are',
      found: 'none',
      hint: 'write `units: mm` or `units: in`, and check the size that is printed',
    });
  const everything = asked.layer === null && asked.id === null;
  const curves = drawn.curves.filter(isAsked(asked));
  if (curves.length === 0) return refused(nothingThere(drawn, asked));
  const count = curves.reduce((sum, { pieces }) => sum + pieces.length, 0);
  if (count > mostCurves)
    return refused({
      expected: `${mostCurves} lines and curves of a part at most`,
      found: String(count),
      hint: everything ? 'ask for a layer or an id' : 'draw it with fewer and longer ones',
    });
  // Joined as they are drawn: what is wrong is told by places that the drawing program shows.
  const extent = unit * diagonalOf(boxRoughly(curves.flatMap(({ pieces }) => pieces)));
  const within = asked.join ?? Math.max(leastJoin, shareJoined * extent);
  const joinedWithin = (metres: number): Joined => joined(curves, metres / unit);
  const found = joinedWithin(within);
  const map = intoChair(drawn.yDown, unit, asked);
  const inChair = ({ loops }: Joined): Loop[] =>
    loops.map(({ boundary }) => boundary.map((piece) => mappedPiece(piece, map)));
  const closesWithin = (metres: number): boolean => {
    const tried = joinedWithin(metres);
    const { open, branchings, duplicates } = tried;
    if (open.length > 0 || branchings.length > 0 || duplicates > found.duplicates) return false;
    const boundaries = inChair(tried);
    return outlineFlaws(byNesting(boundaries, boundaries.map(contourOf))).ok;
  };
  const flaws = joiningFlaws(found, { within, extent, unit, everything, closesWithin });
  if (flaws.length > 0) return refused(...flaws);
  const { smooth } = asked;
  const made = inChair(found).map((boundary) =>
    smooth === null ? { boundary, smoothing: null } : smoothed(boundary, smooth),
  );
  const boundaries = made.map(({ boundary }) => boundary);
  const contours = boundaries.map(contourOf);
  return {
    ok: true,
    loops: byNesting(boundaries, contours),
    box: boxAroundBoxes(contours.map(({ box }) => box)),
    duplicates: found.duplicates,
    leftOpen: found.open.length,
    smoothing: smooth === null ? null : allSmoothed(made.flatMap(({ smoothing }) => smoothing ?? [])),
  };
}

/**
 * A thousandth of a millimetre, and a millionth of what is drawn: in drawings that close, ends were 1e-10 units apart at most; a
 * gap that somebody left is a tenth.
 */
const leastJoin = 1e-6;
const shareJoined = 1e-6;

const isAsked =
  ({ layer, id }: Asked) =>
  ({ layers, ids }: DrawnCurve): boolean =>
    (layer === null || layers.includes(layer)) && (id === null || ids.includes(id));

function nothingThere(drawn: Drawn, { layer, id }: Asked): Flaw {
  const { curves } = drawn;
  if (curves.length === 0 || (layer === null && id === null)) return nothingDrawn(drawn);
  const onLayer = curves.filter(({ layers }) => layer === null || layers.includes(layer));
  const isLayer = layer !== null && (id === null || onLayer.length === 0);
  const [word, name] = isLayer ? ['a layer', layer] : ['an id', id!];
  const known = [
    ...new Set(isLayer ? curves.flatMap(({ layers }) => layers) : onLayer.flatMap(({ ids }) => ids)),
  ];
  const near = nearestWord(name, known);
  const listed = known.slice(0, mostNamed).join(', ') || 'none';
  return {
    expected: `${word} of the drawing with curves on it`,
    found: `\`${name}\``,
    hint: near === undefined ? `it has ${listed}` : `did you mean \`${near}\`?`,
  };
}

const mostNamed = 12;

/** A part has some dozens, one drawn as lines some thousands: what has more is no drawing of a part. */
const mostCurves = 20_000;

/** y turned up, scaled, the origin to [0, 0], mirrored, turned. */
function intoChair(yDown: boolean, unit: number, { origin, turn, mirror }: Asked): Affine {
  const placed = thenMapped(scaling(unit, unit), shifting(-origin.x, -origin.y));
  return thenMapped(thenMapped(placed, scaling(mirror ? -1 : 1, yDown ? -1 : 1)), turning(turn));
}

/** An outline in an odd number of others is a hole. */
function byNesting(boundaries: readonly Loop[], contours: readonly Contour[]): DrawnOutlines['loops'] {
  return boundaries.map((boundary, i) => {
    const around = contours.filter((contour, j) => j !== i && liesIn(boundary, contour));
    return { boundary, hole: around.length % 2 === 1 };
  });
}

/** By the first of its places that does not lie on the other. */
function liesIn(loop: Loop, contour: Contour): boolean {
  for (const piece of loop) {
    const turns = turnsAround(contour, pointOn(piece, 0.5));
    if (turns !== null) return turns !== 0;
  }
  return false;
}
