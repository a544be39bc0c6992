/** What of an SVG file is not drawn, and the words for why. */
import type { SvgElement } from './svg-element.js';
import type { Tally } from './tally.js';

/** Never drawn by themselves: what they hold is drawn where something refers to it, or paints, or only says something. */
const silent: ReadonlySet<string> = new Set([
  ...[
    'defs',
    'symbol',
    'clipPath',
    'mask',
    'pattern',
    'marker',
    'linearGradient',
    'radialGradient',
    'filter',
  ],
  ...['style', 'title', 'desc', 'metadata', 'script', 'view'],
]);

const reasons: ReadonlyMap<string, string> = new Map([
  ['text', 'letters are no outlines: turn them into paths'],
  ['image', 'a picture holds no outlines'],
  ['foreignObject', 'it holds no SVG'],
]);

/** Null where nothing that would be drawn is left out: by SVG itself, or of a name that is not of SVG. */
export function whyNotDrawn({ name }: SvgElement): string | null {
  if (silent.has(name) || name.includes(':')) return null;
  return reasons.get(name) ?? 'this element is not read';
}

/** Style sheets are not read; those that hide or move something, wherever they stand, would change what is drawn. */
export function noteSheetsThatMatter({ name, text, line, children }: SvgElement, leftOut: Tally): void {
  if (name === 'style' && sheetMatters.test(text)) leftOut.add(name, hidesOrMoves, line);
  for (const child of children) noteSheetsThatMatter(child, leftOut);
}

const hidesOrMoves = 'style sheets are not read: this one hides or moves';

const sheetMatters =
  /(?:^|[\s;{])(?:display|visibility|transform|translate|rotate|scale|d|x|y|cx|cy|r|rx|ry)\s*:/i;
