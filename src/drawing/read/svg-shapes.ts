/** What the basic shapes of SVG draw (SVG 1.1, chapter 9), in user units, run through as they define. */
import { fullTurn } from '../../geometry/lean.js';
import type { EllipseArc, Piece } from '../../geometry/piece.js';
import type { Point } from '../../geometry/point.js';
import { pathPieces } from '../../geometry/words/path-pieces.js';
import { quoted, taken, type SvgElement, type Taken } from './svg-element.js';
import { lengthsOf, type Viewport } from './svg-lengths.js';
import { numbersIn } from './svg-numbers.js';

/** One stroke of the pen. */
export interface Stroke {
  /** Never empty. */
  readonly pieces: readonly Piece[];
  readonly closed: boolean;
}

/** None where a shape has no size: SVG then draws nothing. */
type Shape = (element: SvgElement, viewport: Viewport) => Taken<readonly Stroke[]>;

const stroke = (closed: boolean, pieces: readonly Piece[]): Stroke[] =>
  pieces.length > 0 ? [{ pieces, closed }] : [];

const path: Shape = ({ attributes: { d = '' } }) => {
  if (d.trim() === '' || d.trim() === 'none') return taken([]);
  const read = pathPieces(d, 1);
  if (read.ok) return taken(read.subpaths);
  return { ok: false, flaws: read.flaws.map((flaw) => ({ attribute: 'd', ...flaw })) };
};

/** A quarter turn, or all of an ellipse, from `start` on in the sense from x to y. */
function round(centre: Point, radiusX: number, radiusY: number, start: number, sweep: number): Piece {
  if (radiusX === radiusY) return { kind: 'arc', centre, radius: radiusX, start, sweep };
  const [axisA, axisB] = [
    { x: radiusX, y: 0 },
    { x: 0, y: radiusY },
  ];
  return { kind: 'ellipse-arc', centre, axisA, axisB, start, sweep } satisfies EllipseArc;
}

const line = (from: Point, to: Point): Piece[] =>
  from.x === to.x && from.y === to.y ? [] : [{ kind: 'line', from, to }];

/** SVG 1.1, 9.2: from the top left corner's end on, its two radii no more than half a side. */
const rect: Shape = (element, viewport) => {
  const read = lengthsOf(element, viewport, ['x', 'y', 'width', 'height', 'rx', 'ry']);
  if (!read.ok) return read;
  const { x: left, y: top, width, height, rx, ry } = read.value;
  const [x, y, w, h] = [left ?? 0, top ?? 0, width ?? 0, height ?? 0];
  if (w === 0 || h === 0) return taken([]);
  const [a, b] = [Math.min(rx ?? ry ?? 0, w / 2), Math.min(ry ?? rx ?? 0, h / 2)];
  const quarter = (cx: number, cy: number, turns: number): Piece[] =>
    a > 0 && b > 0 ? [round({ x: cx, y: cy }, a, b, (turns * fullTurn) / 4, fullTurn / 4)] : [];
  const [right, foot] = [x + w, y + h];
  const [i, j] = a > 0 && b > 0 ? [a, b] : [0, 0];
  return taken(
    stroke(true, [
      ...line({ x: x + i, y }, { x: right - i, y }),
      ...quarter(right - i, y + j, 3),
      ...line({ x: right, y: y + j }, { x: right, y: foot - j }),
      ...quarter(right - i, foot - j, 0),
      ...line({ x: right - i, y: foot }, { x: x + i, y: foot }),
      ...quarter(x + i, foot - j, 1),
      ...line({ x, y: foot - j }, { x, y: y + j }),
      ...quarter(x + i, y + j, 2),
    ]),
  );
};

const circle: Shape = (element, viewport) => {
  const read = lengthsOf(element, viewport, ['cx', 'cy', 'r']);
  if (!read.ok) return read;
  const { cx, cy, r } = read.value;
  return taken(wholeEllipse(cx ?? 0, cy ?? 0, r ?? 0, r ?? 0));
};

const ellipse: Shape = (element, viewport) => {
  const read = lengthsOf(element, viewport, ['cx', 'cy', 'rx', 'ry']);
  if (!read.ok) return read;
  const { cx, cy, rx, ry } = read.value;
  return taken(wholeEllipse(cx ?? 0, cy ?? 0, rx ?? ry ?? 0, ry ?? rx ?? 0));
};

const wholeEllipse = (x: number, y: number, radiusX: number, radiusY: number): Stroke[] =>
  radiusX > 0 && radiusY > 0 ? stroke(true, [round({ x, y }, radiusX, radiusY, 0, fullTurn)]) : [];

const straight: Shape = (element, viewport) => {
  const read = lengthsOf(element, viewport, ['x1', 'y1', 'x2', 'y2']);
  if (!read.ok) return read;
  const { x1, y1, x2, y2 } = read.value;
  return taken(stroke(false, line({ x: x1 ?? 0, y: y1 ?? 0 }, { x: x2 ?? 0, y: y2 ?? 0 })));
};

const polyline =
  (closed: boolean): Shape =>
  ({ attributes: { points = '' } }) => {
    const { numbers, strayAt } = numbersIn(points);
    if (strayAt !== null || numbers.length % 2 === 1) {
      const at = strayAt ?? points.trimEnd().length;
      const found = strayAt === null ? `${numbers.length} numbers` : quoted(points.slice(at, at + 40));
      return { ok: false, flaws: [{ attribute: 'points', at, expected: 'pairs of numbers', found }] };
    }
    const places: Point[] = [];
    for (let i = 0; i < numbers.length; i += 2) places.push({ x: numbers[i]!, y: numbers[i + 1]! });
    const back = closed && places.length > 0 ? line(places.at(-1)!, places[0]!) : [];
    return taken(stroke(closed, [...places.slice(1).flatMap((to, i) => line(places[i]!, to)), ...back]));
  };

export const shapes: ReadonlyMap<string, Shape> = new Map<string, Shape>([
  ['path', path],
  ['rect', rect],
  ['circle', circle],
  ['ellipse', ellipse],
  ['line', straight],
  ['polyline', polyline(false)],
  ['polygon', polyline(true)],
]);
