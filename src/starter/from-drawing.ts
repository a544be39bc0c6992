/** What a drawing gives to a design: a part for each layer, the lines of seat, back and arms, and where they all lie. */
import type { Drawn, DrawnCurve, LeftOut } from '../drawing/read/drawn.js';
import { drawnOutlines, type Asked, type OutlinesFound } from '../drawing/read/outlines.js';
import { nothingSmoothed, type Smoothing } from '../drawing/read/smoothing/smoothing.js';
import { usuallySmoothed } from '../design/resolve-parts.js';
import { mappedPiece, mappedPoint, scaling, shifting } from '../geometry/affine.js';
import type { Box } from '../geometry/box.js';
import { contourOf } from '../geometry/contour.js';
import type { Flaw } from '../geometry/flaw.js';
import { outlineFlaws } from '../geometry/flaws.js';
import type { Point } from '../geometry/point.js';
import { metresPer, lengthUnits, type LengthUnit } from '../quantity/units.js';
import { printable } from '../report/printable.js';
import { namedGroups, type NamedGroup } from './named-groups.js';
import { endsOf, lineNamed, onlyLine, type LineRead, type SeatLine } from './seat-lines.js';

export interface FromDrawingRequest {
  readonly drawn: Drawn;
  /** What the units of the drawing are taken for, whatever it declares; null: what it declares. */
  readonly units: LengthUnit | null;
  /** It shows the chair from its other side, facing left. */
  readonly mirror: boolean;
}

export interface DrawnPart {
  /** Unlike that of any other part. */
  readonly name: string;
  readonly group: Pick<NamedGroup, 'by' | 'name' | 'shares'>;
  /** In the drawing’s axes but x forward and y up, metres from its [0, 0]. */
  readonly box: Box;
  readonly outlines: number;
  readonly duplicates: number;
  readonly leftOpen: number;
  /** What can be made of lines that stand for curves. */
  readonly smoothing: Smoothing;
  /** Why it is no part as it is drawn; places in the chair’s frame. */
  readonly flaws: readonly Flaw[];
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
  /** Curves that no layer and no id leads to. */
  readonly nameless: readonly DrawnCurve[];
  readonly leftOut: readonly LeftOut[];
}

export type ReadFromDrawing =
  | { readonly ok: true; readonly value: FromDrawing }
  | { readonly ok: false; readonly flaws: readonly Flaw[] };

/** A design has some dozen parts; a drawing of more layers is none of a chair. */
const mostGroups = 1000;

export function fromDrawing({ drawn, units, mirror }: FromDrawingRequest): ReadFromDrawing {
  const unit = units === null ? drawn.unit : metresPer[units];
  if (drawn.curves.length === 0) return refused({ expected: 'a drawing with curves', found: 'none' });
  if (unit === null) return refused({ ...withoutUnits, hint: sizeBare(drawn) });
  const { groups, nameless } = namedGroups(drawn);
  if (groups.length > mostGroups)
    return refused({ expected: `${mostGroups} layers at most`, found: String(groups.length) });
  const placed = groups.map((group) => inMetres(group, drawn, unit, mirror));
  const lines = linesAmong(placed);
  const asParts = placed.filter((group) => ![...lines.values()].some((line) => line.group === group));
  const asked = { ...{ unit, turn: 0, mirror, join: null, smooth: usuallySmoothed }, origin: { x: 0, y: 0 } };
  const foot = Math.min(...asParts.flatMap((one) => footOf(one, drawn, asked) ?? []));
  const origin = { x: 0, y: (drawn.yDown ? -1 : 1) * (Number.isFinite(foot) ? foot : 0) };
  const taken = named(asParts).map((one) => partOf(one, drawn, { ...asked, origin }, lines));
  const parts = taken.filter(({ flaws }) => flaws.length === 0);
  const unfinished = taken.filter(({ flaws }) => flaws.length > 0);
  if (parts.length === 0) return refused(nothingCloses, ...unfinished.flatMap(refusedPart));
  const down = shifting(0, -foot);
  const inChair = [...lines].map(([line, { group, read }]): [SeatLine, LineRead] => [
    line,
    { layer: group.name, ends: [mappedPoint(read[0], down), mappedPoint(read[1], down)] },
  ]);
  const found: FromDrawing['lines'] = Object.fromEntries(inChair);
  return {
    ok: true,
    value: {
      ...{ units: unitsFor(unit), stated: units, mirror, origin, parts, unfinished, lines: found, nameless },
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
  const { left, right, foot, top } = boxOfAll(curves);
  const [width, height] = [right - left, top - foot].map((size) => Number(size.toPrecision(4)));
  return `it is ${width!} wide and ${height!} high: with \`--units in\` inches, with \`--units mm\` millimetres`;
}

const nothingCloses = { expected: 'a layer whose curves close', found: 'none' };

const refusedPart = ({ name, flaws }: DrawnPart): Flaw[] =>
  flaws.map((flaw) => ({ ...flaw, expected: `on ${name}, ${flaw.expected}` }));

/** A group with its curves in metres, x forward and y up. */
interface Placed extends NamedGroup {
  readonly own: readonly DrawnCurve[];
  readonly box: Box;
}

function inMetres(group: NamedGroup, { yDown }: Drawn, unit: number, mirror: boolean): Placed {
  const map = scaling(mirror ? -unit : unit, yDown ? -unit : unit);
  const curves = group.curves.map((curve) => ({
    ...curve,
    pieces: curve.pieces.map((piece) => mappedPiece(piece, map)),
  }));
  return { ...group, own: group.curves, curves, box: boxOfAll(curves) };
}

const boxOfAll = (curves: readonly DrawnCurve[]): Box =>
  contourOf(curves.flatMap(({ pieces }) => pieces)).box;

interface LineOf {
  readonly group: Placed;
  readonly read: LineRead['ends'];
}

/** The first of each name. */
function linesAmong(groups: readonly Placed[]): Map<SeatLine, LineOf> {
  const lines = new Map<SeatLine, LineOf>();
  for (const group of groups) {
    const line = group.by === null ? null : lineNamed(group.name);
    if (line === null || lines.has(line)) continue;
    const only = onlyLine(group.curves);
    if (only !== null) lines.set(line, { group, read: endsOf(only, line) });
  }
  return lines;
}

function facesLeft({ seat, back }: FromDrawing['lines']): boolean {
  if (!seat || !back) return false;
  const [rear, front] = seat.ends;
  return Math.abs(back.ends[0].x - front.x) < Math.abs(back.ends[0].x - rear.x);
}

const askFor = ({ by, name }: NamedGroup): Pick<Asked, 'layer' | 'id'> => ({
  layer: by === 'layer' ? name : null,
  id: by === 'id' ? name : null,
});

type Whence = Omit<Asked, 'layer' | 'id'>;

const outlinesOf = (group: Placed, drawn: Drawn, asked: Whence) =>
  drawnOutlines({ ...drawn, curves: group.own }, { ...asked, ...askFor(group) });

function flawsOf(made: OutlinesFound): readonly Flaw[] {
  if (!made.ok) return made.flaws;
  const judged = outlineFlaws(made.loops);
  return judged.ok ? [] : judged.flaws;
}

/** Its lowest place; null where it is no part. */
function footOf(group: Placed, drawn: Drawn, asked: Whence): number | null {
  const made = outlinesOf(group, drawn, asked);
  return made.ok && outlineFlaws(made.loops).ok ? made.box.foot : null;
}

function partOf(
  { name, group }: { name: string; group: Placed },
  drawn: Drawn,
  asked: Whence,
  lines: ReadonlyMap<SeatLine, LineOf>,
): DrawnPart {
  const made = outlinesOf(group, drawn, asked);
  const flaws = flawsOf(made);
  const line = flaws.length > 0 ? lineNamed(group.name) : null;
  return {
    ...{ name, group, box: group.box },
    flaws: line === null ? flaws : [noLine(group, line, lines.get(line)), ...flaws],
    outlines: made.ok ? made.loops.filter(({ hole }) => !hole).length : 0,
    duplicates: made.ok ? made.duplicates : 0,
    leftOpen: made.ok ? made.leftOpen : 0,
    smoothing: (made.ok ? made.smoothing : null) ?? nothingSmoothed,
  };
}

function noLine({ curves }: Placed, line: SeatLine, taken: LineOf | undefined): Flaw {
  const expected = 'one straight line, or the outlines of a part';
  if (taken && onlyLine(curves) !== null)
    return { expected: `one ${line} line`, found: `another on the layer ${taken.group.name}` };
  const pieces = curves.reduce((count, one) => count + one.pieces.length, 0);
  return { expected, found: pieces === 1 ? 'one that is none' : `${pieces} lines or curves` };
}

/** By their layers, in one line each; what would read alike is numbered. */
function named(groups: readonly Placed[]): { name: string; group: Placed }[] {
  const met = new Set<string>();
  return groups.map((group) => {
    const plain = printable(group.name) || (group.by === null ? 'drawing' : 'part');
    let name = plain;
    for (let count = 2; met.has(name); count += 1) name = `${plain} (${count})`;
    met.add(name);
    return { name, group };
  });
}

/** Of units that no design is written in, such as the pixels of an SVG, millimetres. */
const unitsFor = (unit: number): LengthUnit =>
  lengthUnits.find((word) => Math.abs(metresPer[word] / unit - 1) < sameUnit) ?? 'mm';

/** Sizes of a page, divided by one another, round. */
const sameUnit = 1e-6;
