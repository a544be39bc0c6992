import { printable } from './printable.js';

/** Text broken at spaces so that no line is longer than `width`; the first line begins with `first`, others with `rest`. */
export function wrap(text: string, width: number, first = '', rest = first): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of printable(text).split(' ')) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      [line, empty] = [rest, true];
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join('\n');
}
