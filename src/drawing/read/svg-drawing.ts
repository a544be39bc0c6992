/** Goes through the elements of an SVG file as they are painted, and keeps the curves they draw. */
import { mappedPiece, shifting, thenMapped, unchanged } from '../../geometry/affine.js';
import { outermost, whyHidden, within, type Around } from './svg-around.js';
import type { SvgElement } from './svg-element.js';
import { whyNotDrawn } from './svg-left-out.js';
import type { Viewport } from './svg-lengths.js';
import { shapes } from './svg-shapes.js';
import { emptySheet, flaw, omit, saysEnough, took, type Sheet } from './svg-sheet.js';
import { styleFlaws, styleOf } from './svg-style.js';
import { transformOf } from './svg-transform.js';
import { costOf, mostDrawnAnew, targetOf } from './svg-use.js';
import { windowOf } from './svg-window.js';
import { farthest, withinReach } from './within-reach.js';

/** Nested elements and uses of uses; drawings have a dozen. */
const deepest = 128;

export function paint(root: SvgElement, viewport: Viewport, byId: Sheet['byId']): Sheet {
  const sheet = emptySheet(byId);
  paintAll(root.children, sheet, within(root, unchanged, styleOf(root), outermost(viewport)));
  return sheet;
}

function paintAll(elements: readonly SvgElement[], sheet: Sheet, around: Around): void {
  for (const element of elements) {
    if (saysEnough(sheet)) return;
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

function paintShape(element: SvgElement, sheet: Sheet, around: Around): void {
  const hidden = whyHidden(around);
  if (hidden !== null) {
    omit(sheet, element, hidden);
    return;
  }
  noteCuts(element, sheet);
  const strokes = took(shapes.get(element.name)!(element, around.viewport), sheet, element);
  if (strokes?.length === 0) omit(sheet, element, 'it draws nothing');
  const { map, layers, labels, ids } = around;
  for (const { pieces: own, closed } of strokes ?? []) {
    const pieces = map === unchanged ? own : own.map((piece) => mappedPiece(piece, map));
    if (!pieces.every(withinReach)) {
      flaw(sheet, element, [
        { expected: `places and radii of no more than ${farthest} units`, found: 'one beyond' },
      ]);
      return;
    }
    sheet.curves.push({ pieces, closed, layers, labels, ids, line: element.line });
  }
}

/** What a browser would cut off is drawn whole. */
function noteCuts(element: SvgElement, sheet: Sheet): void {
  for (const cut of ['clip-path', 'mask'] as const)
    if ((element.attributes[cut] ?? 'none') !== 'none') omit(sheet, element, 'nothing is cut off', cut);
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
  noteCuts(element, sheet);
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
      const layers = [...around.layers, ...[id, label].filter((name) => name !== undefined)];
      const labels = label === undefined ? around.labels : [...around.labels, label];
      paintAll(element.children, sheet, { ...inside, layers, labels });
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
