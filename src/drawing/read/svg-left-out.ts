/** What of an SVG file is not drawn, and the words for why. */
import type { LeftOut } from './drawn.js';
import type { SvgElement } from './svg-element.js';

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

export interface Omission {
  readonly what: string;
  readonly why: string;
  readonly line: number;
}

/** Style sheets are not read; those that hide or move something, wherever they stand, would change what is drawn. */
export function sheetsThatMatter(root: SvgElement): readonly Omission[] {
  const found: Omission[] = [];
  const look = ({ name, text, line, children }: SvgElement): void => {
    if (name === 'style' && sheetMatters.test(text)) found.push({ what: name, why: hidesOrMoves, line });
    children.forEach(look);
  };
  look(root);
  return found;
}

const hidesOrMoves = 'style sheets are not read: this one hides or moves';

const sheetMatters =
  /(?:^|[\s;{])(?:display|visibility|transform|translate|rotate|scale|d|x|y|cx|cy|r|rx|ry)\s*:/i;

/** By name and reason, in the order they first occur. */
export function leftOutOf(omissions: readonly Omission[]): LeftOut[] {
  const counted = new Map<string, LeftOut>();
  for (const { what, why, line } of omissions) {
    const key = `${what}: ${why}`;
    const { count, line: first } = counted.get(key) ?? { count: 0, line };
    counted.set(key, { what, why, count: count + 1, line: Math.min(first, line) });
  }
  return [...counted.values()];
}
