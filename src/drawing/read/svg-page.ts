/** The outermost svg: what its percentages are of, and how long a user unit is on paper. */
import { taken, type SvgElement, type Taken } from './svg-element.js';
import { lengthsOf, physicalLength, type Viewport } from './svg-lengths.js';
import { aspectRatioOf, viewBoxOf } from './svg-view-box.js';

export interface Page {
  readonly viewport: Viewport;
  /** Metres a user unit; null: the file does not say. */
  readonly unit: number | null;
}

export function pageOf(root: SvgElement): Taken<Page> {
  const [box, ratio] = [viewBoxOf(root), aspectRatioOf(root)];
  if (!box.ok) return box;
  if (!ratio.ok) return ratio;
  if (root.attributes.transform !== undefined)
    return { ok: false, flaws: [transformed(root.attributes.transform)] };
  // Without a viewBox a unit is a pixel, and programs did not agree on how many make an inch.
  if (box.value === null) return taken({ viewport: sizeInPixels(root), unit: null });
  const { width, height } = box.value;
  const across = metresAUnit(root.attributes.width, width);
  const down = metresAUnit(root.attributes.height, height);
  const viewport = { width, height };
  if (across === null || down === null) return sized(viewport, across ?? down);
  const { fit } = ratio.value;
  if (fit === 'none' && Math.abs(across / down - 1) > roundedSizes) return { ok: false, flaws: [stretched] };
  return sized(viewport, fit === 'slice' ? Math.max(across, down) : Math.min(across, down));
}

/** Sizes written to four digits differ by no more than this from one another. */
const roundedSizes = 1e-3;

const metresAUnit = (size: string | undefined, units: number): number | null => {
  const metres = physicalLength(size);
  return metres === null ? null : metres / units;
};

function sized(viewport: Viewport, unit: number | null): Taken<Page> {
  if (unit === null || (unit > 1e-9 && unit < 1e6)) return taken({ viewport, unit });
  const expected = 'a size that makes a user unit longer than a nanometre and shorter than 1000 km';
  return { ok: false, flaws: [{ attribute: 'width', expected, found: `${unit} m` }] };
}

const stretched = {
  attribute: 'preserveAspectRatio',
  expected: 'width and height in the proportion of the viewBox',
  found: 'none, which stretches the drawing',
} as const;

const transformed = (text: string) => ({
  attribute: 'transform' as const,
  expected: 'no map',
  found: text.slice(0, 32),
  hint: 'put it on a g inside',
});

function sizeInPixels(root: SvgElement): Viewport {
  const read = (name: 'width' | 'height'): number | null => {
    const lengths = lengthsOf(root, { width: null, height: null }, [name]);
    return lengths.ok ? lengths.value[name] : null;
  };
  return { width: read('width'), height: read('height') };
}
