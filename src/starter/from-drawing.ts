/** What a drawing gives to a design: a part for each layer, the lines of seat, back and arms, and where they all lie. */
import type { Drawn, DrawnCurve, LeftOut } from '../drawing/read/drawn.js';
import { nothingDrawn } from '../drawing/read/left-out.js';
import { nothingSmoothed, type Smoothing } from '../drawing/read/smoothing/smoothing.js';
import { mappedPiece, mappedPoint, shifting } from '../geometry/affine.js';
import { boxRoughly, type Box } from '../geometry/box.js';
import { contourOf } from '../geometry/contour.js';
import type { Flaw } from '../geometry/flaw.js';
import type { Point } from '../geometry/point.js';
import { metresPer, lengthUnits, type LengthUnit } from '../quantity/units.js';
import { calling, isPart, upright, type Sheet } from './judged.js';
import { judgedGroups, type Opened } from './judged-groups.js';
import type { LineRead, SeatLine } from './seat-lines.js';
import type { JudgedGroup } from './told-apart.js';

export interface FromDrawingRequest {
  readonly drawn: Drawn;
  /** What the units of the drawing are taken for, whatever it declares; null: what it declares. */
  readonly units: LengthUnit | null;
  /** It shows the chair from its other side, facing left. */
  readonly mirror: boolean;
}

export interface DrawnPart extends Pick<JudgedGroup, 'name' | 'group' | 'shares' | 'flaws'> {
  /** In the drawing’s axes but x forward and y up, metres from its [0, 0]. */
  readonly box: Box;
  readonly outlines: number;
  readonly duplicates: number;
  readonly leftOpen: number;
  /** What can be made of lines that stand for curves. */
  readonly smoothing: Smoothing;
}

export interface FromDrawing {
  /** What a bare length means in the design: the drawing’s units where a design may be written in them. */
  readonly units: LengthUnit;
  readonly stated: LengthUnit | null;
  readonly mirror: boolean;
  /** The drawing’s place that lies at the chair’s [0, 0], metres in the drawing’s axes. */
  readonly origin: Point;
  readonly parts: readonly DrawnPart[];
  /** Layers that are no parts as they are drawn. */
  readonly unfinished: readonly DrawnPart[];
  /** In the chair’s frame, metres. */
  readonly lines: Readonly<Partial<Record<SeatLine, LineRead>>>;
  /** The back line stands at the front of the seat line: the chair seems to face left. */
  readonly facesLeft: boolean;
  /** Layers in whose place what they hold was taken. */
  readonly opened: readonly Opened[];
  /** Curves that no layer and no id leads to. */
  readonly nameless: readonly DrawnCurve[];
  readonly leftOut: readonly LeftOut[];
}

export type ReadFromDrawing =
  | { readonly ok: true; readonly value: FromDrawing }
  | { readonly ok: false; readonly flaws: readonly Flaw[] };

export function fromDrawing({ drawn, units, mirror }: FromDrawingRequest): ReadFromDrawing {
  const unit = units === null ? drawn.unit : metresPer[units];
  if (drawn.curves.length === 0) return refused(nothingDrawn(drawn));
  if (unit === null) return refused({ ...withoutUnits, hint: sizeBare(drawn) });
  const sheet: Sheet = { ...drawn, unit, mirror };
  const judged = judgedGroups(sheet);
  if ('found' in judged) return refused(judged);
  const { groups, lines, opened, nameless } = judged;
  if (!groups.some(isPart)) return refused(...whyNoPart(groups));
  const [parts, unfinished] = [true, false].map((part) =>
    groups.filter((group) => isPart(group) === part).map((group) => drawnPart(group, sheet)),
  ) as [DrawnPart[], DrawnPart[]];
  const foot = Math.min(...parts.map(({ box }) => box.foot));
  const down = shifting(0, -foot);
  const inChair = [...lines].map(([line, { group, ends }]): [SeatLine, LineRead] => [
    line,
    { from: calling(group), ends: [mappedPoint(ends[0], down), mappedPoint(ends[1], down)] },
  ]);
  const found: FromDrawing['lines'] = Object.fromEntries(inChair);
  return {
    ok: true,
    value: {
      ...{ units: unitsFor(unit), stated: units, mirror, parts, unfinished, lines: found, opened, nameless },
      origin: { x: 0, y: drawn.yDown ? -foot : foot },
      facesLeft: facesLeft(found),
      leftOut: drawn.leftOut,
    },
  };
}

const refused = (...flaws: readonly Flaw[]): ReadFromDrawing => ({ ok: false, flaws });

const withoutUnits = {
  expected: '`--units`: the drawing does not say what its units are',
  found: 'none',
} as const;

function sizeBare({ curves }: Drawn): string {
  const { left, right, foot, top } = boxRoughly(curves.flatMap(({ pieces }) => pieces));
  const [width, height] = [right - left, top - foot].map((size) => Number(size.toPrecision(4)));
  return `it is ${width!} wide and ${height!} high: with \`--units in\` inches, with \`--units mm\` millimetres`;
}

const whyNoPart = (groups: readonly JudgedGroup[]): readonly Flaw[] =>
  groups.length === 0
    ? [{ expected: 'a layer whose curves close', found: 'none' }]
    : groups.flatMap(({ name, flaws }) =>
        flaws.map((flaw) => ({ ...flaw, expected: `on ${name}, ${flaw.expected}` })),
      );

function drawnPart({ made, ...judged }: JudgedGroup, sheet: Sheet): DrawnPart {
  if (made.ok) {
    const { box, loops, duplicates, leftOpen, smoothing } = made;
    const outlines = loops.filter(({ hole }) => !hole).length;
    return { ...judged, box, outlines, duplicates, leftOpen, smoothing: smoothing ?? nothingSmoothed };
  }
  const map = upright(sheet);
  const pieces = judged.group.curves.flatMap(({ pieces }) => pieces.map((piece) => mappedPiece(piece, map)));
  const nothing = { outlines: 0, duplicates: 0, leftOpen: 0, smoothing: nothingSmoothed };
  return { ...judged, box: contourOf(pieces).box, ...nothing };
}

function facesLeft({ seat, back }: FromDrawing['lines']): boolean {
  if (!seat || !back) return false;
  const [rear, front] = seat.ends;
  return Math.abs(back.ends[0].x - front.x) < Math.abs(back.ends[0].x - rear.x);
}

/** Of units that no design is written in, such as the pixels of an SVG, millimetres. */
const unitsFor = (unit: number): LengthUnit =>
  lengthUnits.find((word) => Math.abs(metresPer[word] / unit - 1) < sameUnit) ?? 'mm';

/** Sizes of a page, divided by one another, round. */
const sameUnit = 1e-6;
