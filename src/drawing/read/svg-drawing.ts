/** Goes through the elements of an SVG file as they are painted, and keeps the curves they draw. */
import { mappedPiece, shifting, thenMapped, unchanged, type Affine } from '../../geometry/affine.js';
import type { Piece } from '../../geometry/piece.js';
import type { Point } from '../../geometry/point.js';
import type { DrawnCurve } from './drawn.js';
import type { AttributeFlaw, SvgElement, Taken } from './svg-element.js';
import type { Viewport } from './svg-lengths.js';
import { whyNotDrawn, type Omission } from './svg-left-out.js';
import { shapes } from './svg-shapes.js';
import { sightOf, styleFlaws, styleOf } from './svg-style.js';
import { transformOf } from './svg-transform.js';
import { costOf, mostDrawnAnew, targetOf } from './svg-use.js';
import { windowOf, type Size } from './svg-window.js';

export interface ElementFlaw extends Partial<AttributeFlaw> {
  readonly element: SvgElement;
  readonly expected: string;
  readonly found: string;
}

export interface Painted {
  readonly curves: readonly DrawnCurve[];
  readonly omissions: readonly Omission[];
  readonly flaws: readonly ElementFlaw[];
}

/** What an element inherits. */
interface Around {
  readonly map: Affine;
  readonly viewport: Viewport;
  readonly layers: readonly string[];
  readonly ids: readonly string[];
  /** Why nothing is seen here; null: it is. */
  readonly hidden: string | null;
  readonly visible: boolean;
  /** What `use` has brought in, outermost first. */
  readonly targets: readonly SvgElement[];
  /** Elements around it. */
  readonly depth: number;
  /** Size of the `use` that brings this very element in. */
  readonly size: Size | null;
}

interface Sheet {
  readonly byId: ReadonlyMap<string, SvgElement>;
  readonly curves: DrawnCurve[];
  readonly omissions: Omission[];
  readonly flaws: ElementFlaw[];
  /** Characters read again through `use`. */
  drawnAnew: number;
}

/** A file that is wrong throughout says so often enough. */
const flawsTold = 20;

/** Nested elements and uses of uses; drawings have a dozen. */
const deepest = 128;

export function paint(root: SvgElement, viewport: Viewport, byId: ReadonlyMap<string, SvgElement>): Painted {
  const sheet: Sheet = { byId, curves: [], omissions: [], flaws: [], drawnAnew: 0 };
  const here = {
    map: unchanged,
    viewport,
    layers: [],
    ids: [],
    hidden: null,
    visible: true,
    targets: [],
    depth: 0,
    size: null,
  };
  paintAll(root.children, sheet, within(root, unchanged, styleOf(root), here));
  return sheet;
}

function paintAll(elements: readonly SvgElement[], sheet: Sheet, around: Around): void {
  for (const element of elements) {
    if (sheet.flaws.length >= flawsTold) return;
    paintOne(element, sheet, around);
  }
}

const containers: ReadonlySet<string> = new Set(['g', 'a', 'svg', 'switch', 'use']);

function paintOne(element: SvgElement, sheet: Sheet, around: Around): void {
  const { name } = element;
  if (!containers.has(name) && !shapes.has(name)) {
    const why = whyNotDrawn(element);
    if (why !== null) omit(sheet, element, whyHidden(around) ?? why);
    return;
  }
  const map = took(transformOf(element.attributes.transform), sheet, element);
  const style = styleOf(element);
  const styled = styleFlaws(element, style, shapes.has(name));
  if (styled.length > 0) flaw(sheet, element, styled);
  if (map === null || styled.length > 0) return;
  const inside = within(element, map, style, around);
  if (shapes.has(name)) paintShape(element, sheet, inside);
  else paintContainer(element, sheet, inside);
}

/** What the element itself adds to what it inherits; most add nothing. */
function within(
  element: SvgElement,
  own: Affine,
  style: ReadonlyMap<string, string>,
  around: Around,
): Around {
  const { id, display, visibility } = element.attributes;
  const seenAsAround = style.size === 0 && display === undefined && visibility === undefined;
  if (own === unchanged && seenAsAround && id === undefined) return around;
  const map = own === unchanged ? around.map : thenMapped(own, around.map);
  const { displayed, visible } = sightOf(element, style);
  const flat = map.a * map.d - map.b * map.c === 0;
  const hidden = !displayed ? 'display: none' : flat ? 'a transform flattens it to nothing' : null;
  return {
    map,
    viewport: around.viewport,
    layers: around.layers,
    ids: id === undefined ? around.ids : [id, ...around.ids],
    hidden: around.hidden ?? hidden,
    visible: visible ?? around.visible,
    targets: around.targets,
    depth: around.depth,
    size: around.size,
  };
}

const whyHidden = ({ hidden, visible }: Around): string | null =>
  hidden ?? (visible ? null : 'visibility: hidden');

function paintShape(element: SvgElement, sheet: Sheet, around: Around): void {
  const hidden = whyHidden(around);
  if (hidden !== null) {
    omit(sheet, element, hidden);
    return;
  }
  for (const cut of ['clip-path', 'mask'] as const)
    if ((element.attributes[cut] ?? 'none') !== 'none') omit(sheet, element, 'nothing is cut off', cut);
  const strokes = took(shapes.get(element.name)!(element, around.viewport), sheet, element);
  if (strokes?.length === 0) omit(sheet, element, 'it draws nothing');
  const { map, layers, ids } = around;
  for (const { pieces: own, closed } of strokes ?? []) {
    const pieces = map === unchanged ? own : own.map((piece) => mappedPiece(piece, map));
    if (!pieces.every(withinReach)) {
      flaw(sheet, element, [
        { expected: `places and radii of no more than ${farthest} units`, found: 'one beyond' },
      ]);
      return;
    }
    sheet.curves.push({ pieces, closed, layers, ids, line: element.line });
  }
}

/** Beyond, places are told apart no finer than a ten-millionth of a unit. */
const farthest = 1e9;

const near = ({ x, y }: Point): boolean => Math.abs(x) <= farthest && Math.abs(y) <= farthest;

function withinReach(piece: Piece): boolean {
  switch (piece.kind) {
    case 'line':
      return near(piece.from) && near(piece.to);
    case 'cubic':
      return near(piece.from) && near(piece.control1) && near(piece.control2) && near(piece.to);
    case 'arc':
      return near(piece.centre) && piece.radius <= farthest && Number.isFinite(piece.start + piece.sweep);
    case 'ellipse-arc':
      return (
        near(piece.centre) &&
        near(piece.axisA) &&
        near(piece.axisB) &&
        Number.isFinite(piece.start + piece.sweep)
      );
  }
}

function paintContainer(element: SvgElement, sheet: Sheet, around: Around): void {
  const { id, label } = element.attributes;
  if (around.depth >= deepest) {
    flaw(sheet, element, [
      { expected: `no more than ${deepest} elements and uses inside each other`, found: 'more' },
    ]);
    return;
  }
  const inside = { ...around, depth: around.depth + 1, size: null };
  for (const cut of ['clip-path', 'mask'] as const)
    if ((element.attributes[cut] ?? 'none') !== 'none') omit(sheet, element, 'nothing is cut off', cut);
  switch (element.name) {
    case 'use':
      paintUse(element, sheet, inside);
      return;
    case 'svg':
      paintWindow(element, sheet, { ...inside, size: around.size });
      return;
    case 'switch':
      paintAll(element.children.filter(unconditional).slice(0, 1), sheet, inside);
      return;
    case 'g': {
      const names = [id, label].filter((name) => name !== undefined);
      paintAll(element.children, sheet, { ...inside, layers: [...around.layers, ...names] });
      return;
    }
    default:
      paintAll(element.children, sheet, inside);
  }
}

/** Of a switch the first child is drawn that asks for nothing, no extension and no language. */
const unconditional = ({ attributes }: SvgElement): boolean =>
  attributes.requiredExtensions === undefined && attributes.systemLanguage === undefined;

/** A nested svg or a symbol. */
function paintWindow(element: SvgElement, sheet: Sheet, around: Around): void {
  const window = took(windowOf(element, around.viewport, around.size), sheet, element);
  if (window === null) return;
  const { viewport } = window;
  paintAll(element.children, sheet, {
    ...around,
    size: null,
    viewport,
    map: thenMapped(window.map, around.map),
  });
}

function paintUse(element: SvgElement, sheet: Sheet, around: Around): void {
  const hidden = around.hidden;
  if (hidden !== null) {
    omit(sheet, element, hidden);
    return;
  }
  const use = took(targetOf(element, sheet.byId, around.viewport), sheet, element);
  if (use === null) return;
  if (typeof use === 'string') {
    omit(sheet, element, use);
    return;
  }
  const { target, size, place } = use;
  if (around.targets.includes(target)) {
    flaw(sheet, element, [
      { expected: 'a use of something that does not hold it', found: 'one that draws itself' },
    ]);
    return;
  }
  sheet.drawnAnew += costOf(target);
  if (sheet.drawnAnew > mostDrawnAnew) {
    const expected = `uses that draw no more than ${mostDrawnAnew / 1e6} million characters anew`;
    flaw(sheet, element, [{ expected, found: 'more' }]);
    return;
  }
  const inside = {
    ...around,
    map: thenMapped(shifting(place.x, place.y), around.map),
    targets: [...around.targets, target],
    size,
  };
  if (target.name !== 'symbol') {
    paintOne(target, sheet, inside);
    return;
  }
  const map = took(transformOf(target.attributes.transform), sheet, target);
  if (map !== null) paintWindow(target, sheet, within(target, map, styleOf(target), inside));
}

function took<T>(read: Taken<T>, sheet: Sheet, element: SvgElement): T | null {
  if (read.ok) return read.value;
  flaw(sheet, element, read.flaws);
  return null;
}

function flaw(sheet: Sheet, element: SvgElement, flaws: readonly Omit<ElementFlaw, 'element'>[]): void {
  sheet.flaws.push(...flaws.slice(0, flawsTold).map((one) => ({ ...one, element })));
}

function omit(sheet: Sheet, { name, line }: SvgElement, why: string, what = name): void {
  sheet.omissions.push({ what, why, line });
}
