/** viewBox and preserveAspectRatio (SVG 1.1, 7.7 and 7.8): how a box of user units is laid into a window. */
import { unchanged, type Affine } from '../../geometry/affine.js';
import { quoted, taken, type SvgElement, type Taken } from './svg-element.js';
import { numbersIn } from './svg-numbers.js';

export interface ViewBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Null where none stands. */
export function viewBoxOf({ attributes }: SvgElement): Taken<ViewBox | null> {
  const text = attributes.viewBox;
  if (text === undefined) return taken(null);
  const { numbers, strayAt } = numbersIn(text);
  const [x = NaN, y = NaN, width = NaN, height = NaN] = numbers;
  const sound = numbers.length === 4 && strayAt === null && numbers.every(Number.isFinite);
  if (sound && width > 0 && height > 0) return taken({ x, y, width, height });
  const expected = 'four numbers, x y width height, the last two greater than zero';
  return { ok: false, flaws: [{ attribute: 'viewBox', expected, found: quoted(text) }] };
}

export type Fit = 'none' | 'meet' | 'slice';

export interface AspectRatio {
  readonly fit: Fit;
  /** Where room is left or lacking, the part of it that stands before: 0 (min), ½ (mid), 1 (max). */
  readonly alignX: number;
  readonly alignY: number;
}

const parts: ReadonlyMap<string, number> = new Map([
  ['min', 0],
  ['mid', 0.5],
  ['max', 1],
]);

const form = /^\s*(?:defer\s+)?(?:(none)|x(min|mid|max)y(min|mid|max))(?:\s+(meet|slice))?\s*$/i;

export function aspectRatioOf({ attributes }: SvgElement): Taken<AspectRatio> {
  const text = attributes.preserveAspectRatio ?? '';
  const found = form.exec(text.trim() === '' ? 'xMidYMid' : text);
  if (found === null) {
    const expected = 'none, or xMidYMid (Min, Mid, Max) with meet or slice';
    return { ok: false, flaws: [{ attribute: 'preserveAspectRatio', expected, found: quoted(text) }] };
  }
  const [, none, x = 'mid', y = 'mid', fit] = found;
  const align = { alignX: parts.get(x.toLowerCase())!, alignY: parts.get(y.toLowerCase())! };
  if (none !== undefined) return taken({ fit: 'none', ...align });
  return taken({ fit: fit?.toLowerCase() === 'slice' ? 'slice' : 'meet', ...align });
}

/** From user units of the box to those around a window with its corner at the origin. */
export function laidInto(
  box: ViewBox,
  ratio: AspectRatio,
  window: { width: number; height: number },
): Affine {
  const [across, down] = [window.width / box.width, window.height / box.height];
  const alike = ratio.fit === 'meet' ? Math.min(across, down) : Math.max(across, down);
  const [a, d] = ratio.fit === 'none' ? [across, down] : [alike, alike];
  return {
    ...{ ...unchanged, a, d },
    e: (window.width - a * box.width) * ratio.alignX - a * box.x,
    f: (window.height - d * box.height) * ratio.alignY - d * box.y,
  };
}
