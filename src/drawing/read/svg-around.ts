/** What an element of an SVG file inherits from those around it. */
import { thenMapped, unchanged, type Affine } from '../../geometry/affine.js';
import type { SvgElement } from './svg-element.js';
import type { Viewport } from './svg-lengths.js';
import { sightOf } from './svg-style.js';
import type { Size } from './svg-window.js';

export interface Around {
  readonly map: Affine;
  readonly viewport: Viewport;
  readonly layers: readonly string[];
  readonly labels: readonly string[];
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

/** Around what stands in the outermost svg. */
export const outermost = (viewport: Viewport): Around => ({
  map: unchanged,
  viewport,
  layers: [],
  labels: [],
  ids: [],
  hidden: null,
  visible: true,
  targets: [],
  depth: 0,
  size: null,
});

/** What the element itself adds to what it inherits; most add nothing. */
export function within(
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
    labels: around.labels,
    ids: id === undefined ? around.ids : [id, ...around.ids],
    hidden: around.hidden ?? hidden,
    visible: visible ?? around.visible,
    targets: around.targets,
    depth: around.depth,
    size: around.size,
  };
}

/** Null: it is seen. */
export const whyHidden = ({ hidden, visible }: Around): string | null =>
  hidden ?? (visible ? null : 'visibility: hidden');
