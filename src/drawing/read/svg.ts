/**
 * Reads an SVG file: every curve it draws, in user units of its outermost viewBox, y down. Lines, arcs and cubics stay what
 * they are; circles under a map that scales unevenly are ellipses. What a browser would draw and this does not is
 * counted; what cannot be read rightly is refused.
 */
import type { DrawingFlaw, DrawingRead } from './drawn.js';
import { paint } from './svg-drawing.js';
import type { SvgElement } from './svg-element.js';
import { noteSheetsThatMatter } from './svg-left-out.js';
import { pageOf } from './svg-page.js';
import { placed, placeIn } from './svg-places.js';
import type { ElementFlaw } from './svg-sheet.js';
import { elementsById } from './svg-use.js';
import { readElements } from './svg-xml.js';

export function readSvg(text: string): DrawingRead {
  const elements = readElements(text);
  if (!elements.ok) return elements;
  const { root } = elements;
  const page = pageOf(root);
  if (!page.ok) return { ok: false, flaws: page.flaws.map((flaw) => placed(text, root, flaw)) };
  const { viewport, unit } = page.value;
  const { curves, leftOut, flaws } = paint(root, viewport, elementsById(root));
  if (flaws.length > 0) return { ok: false, flaws: flaws.map((flaw) => told(text, flaw)) };
  noteSheetsThatMatter(root, leftOut);
  return { ok: true, drawn: { curves, unit, yDown: true, leftOut: leftOut.list() } };
}

function told(text: string, { element, attribute, ...flaw }: ElementFlaw): DrawingFlaw {
  if (attribute !== undefined) return placed(text, element, { attribute, ...flaw });
  const { expected, found } = flaw;
  return { ...placeIn(text, element), expected: `${expected} in ${nameOf(element)}`, found };
}

const nameOf = ({ name, attributes: { id } }: SvgElement): string =>
  id === undefined ? name : `${name} "${id.slice(0, 40)}"`;
