/** The window a nested svg or a symbol opens for what it holds (SVG 1.1, 5.1, 5.5 and 7.9). */
import { shifting, thenMapped, type Affine } from '../../geometry/affine.js';
import { taken, type SvgElement, type Taken } from './svg-element.js';
import { lengthsOf, type Viewport } from './svg-lengths.js';
import { aspectRatioOf, laidInto, viewBoxOf } from './svg-view-box.js';

/** Null: not stated. */
export interface Size {
  readonly width: number | null;
  readonly height: number | null;
}

export interface Window {
  readonly viewport: Viewport;
  /** From user units inside to those around. */
  readonly map: Affine;
}

/** @param size stated by the `use` that brings it in, before its own */
export function windowOf(element: SvgElement, around: Viewport, size: Size | null): Taken<Window> {
  const [read, box] = [lengthsOf(element, around, ['x', 'y', 'width', 'height']), viewBoxOf(element)];
  const ratio = aspectRatioOf(element);
  if (!read.ok) return read;
  if (!box.ok) return box;
  if (!ratio.ok) return ratio;
  const { x, y } = read.value;
  const width = size?.width ?? read.value.width ?? around.width;
  const height = size?.height ?? read.value.height ?? around.height;
  const moved = shifting(x ?? 0, y ?? 0);
  if (box.value === null) return taken({ viewport: { width, height }, map: moved });
  if (width === null || height === null) return { ok: false, flaws: [sizeless] };
  const map = thenMapped(laidInto(box.value, ratio.value, { width, height }), moved);
  return taken({ viewport: { width: box.value.width, height: box.value.height }, map });
}

const sizeless = {
  attribute: 'viewBox',
  expected: 'width and height to lay it into',
  found: 'none, and a page without them',
} as const;
