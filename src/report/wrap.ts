import { printable } from './printable.js';
import { charactersOf, splitAt, textWidth } from './text-width.js';

/** Where a line may break: not between a number and its unit. */
const breaks = /(?<!\d) +| +(?!(?:mm|cm|m|in|ft|s|kg|lb|N|J)(?!\p{L}))/u;

/**
 * Text broken at spaces so that no line is wider than `width`, a word that is wider where it must be; the first line
 * begins with `first`, others with `rest`.
 */
export function wrap(text: string, width: number, first = '', rest = first): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of printable(text).split(breaks)) {
    if (!empty && textWidth(line) + 1 + textWidth(word) > width) {
      lines.push(line);
      [line, empty] = [rest, true];
    }
    line += empty ? word : ` ${word}`;
    empty = false;
    while (textWidth(line) > width) {
      const [full, left] = cutAt(line, width, rest.length + 1);
      if (left === '') break;
      lines.push(full);
      line = rest + left;
    }
  }
  return [...lines, line].join('\n');
}

/** At least one character a line, however narrow. */
function cutAt(line: string, width: number, least: number): readonly [string, string] {
  const [full, left] = splitAt(line, width);
  if (full.length >= least) return [full, left];
  const start = charactersOf(line).slice(0, least).join('');
  return [start, line.slice(start.length)];
}
