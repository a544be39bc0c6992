/** What a `use` refers to, and what it costs to draw that again. */
import type { Point } from '../../geometry/point.js';
import { taken, type SvgElement, type Taken } from './svg-element.js';
import { lengthsOf, type Viewport } from './svg-lengths.js';
import type { Size } from './svg-window.js';

export interface Use {
  readonly target: SvgElement;
  readonly place: Point;
  /** For the target’s window, where it has one. */
  readonly size: Size;
}

/** The first of an id is the one that is meant. */
export function elementsById(root: SvgElement): ReadonlyMap<string, SvgElement> {
  const byId = new Map<string, SvgElement>();
  const enter = (element: SvgElement): void => {
    const { id } = element.attributes;
    if (id !== undefined && !byId.has(id)) byId.set(id, element);
    element.children.forEach(enter);
  };
  enter(root);
  return byId;
}

/** A text says why there is nothing to draw. */
export function targetOf(
  element: SvgElement,
  byId: ReadonlyMap<string, SvgElement>,
  viewport: Viewport,
): Taken<Use | string> {
  const href = (element.attributes.href ?? element.attributes['xlink:href'] ?? '').trim();
  if (href === '') return taken('it refers to nothing');
  if (!href.startsWith('#')) return taken('it refers to another file');
  const target = byId.get(href.slice(1)) ?? byId.get(unescaped(href.slice(1)));
  if (target === undefined) return taken('it refers to an id that the file does not have');
  const read = lengthsOf(element, viewport, ['x', 'y', 'width', 'height']);
  if (!read.ok) return read;
  const { x, y, width, height } = read.value;
  return taken({ target, place: { x: x ?? 0, y: y ?? 0 }, size: { width, height } });
}

function unescaped(id: string): string {
  try {
    return decodeURIComponent(id);
  } catch {
    return id;
  }
}

/** Characters that may be read again through uses: as many as a large file has. */
export const mostDrawnAnew = 25_000_000;

/** An element costs about as much as a hundred characters of path data. */
const perElement = 100;

/** All in it, what further uses in it bring in not counted. */
export function costOf({ attributes, children }: SvgElement): number {
  const own = Object.values(attributes).reduce((sum, value) => sum + value.length, perElement);
  return children.reduce((sum, child) => sum + costOf(child), own);
}
