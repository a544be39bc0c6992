/** Markdown as pull requests show it: words made harmless, tables, folded parts. */
import { printable } from './printable.js';

/** Longer texts are cut: no sentence of ours is as long, and a comment has room for 65 536 characters. */
const longestText = 400;
const longestName = 80;

/**
 * What can open markup, HTML, a link or an emoji; as a character reference it cannot (CommonMark 0.31, section 2.5).
 * The colon of a sentence and the point of a number stay as they are.
 */
const opening = /[\\`*_{}[\]<>|~!&$^@#]|:(?=\S)|(?<=\bwww)\./giu;

/** These call a person or an issue even as a reference: what follows is held off by a space of no width. */
const calling = '@#';

/** A text, a maker's words in it, in one line, to stand in a paragraph or a cell. */
export function inMarkdown(text: string, longest = longestText): string {
  return cut(printable(text), longest).replace(opening, (sign) => {
    const reference = `&#${sign.charCodeAt(0)};`;
    return calling.includes(sign) ? `${reference}&#8203;` : reference;
  });
}

export const nameInMarkdown = (name: string): string => inMarkdown(name, longestName) || '(no name)';

/** No half of a surrogate pair is left at the end. */
const cut = (text: string, longest: number): string =>
  text.length <= longest ? text : `${text.slice(0, longest - 1).replace(/[\uD800-\uDBFF]$/, '')}…`;

/** Cells are Markdown. Numbers stand at the right, in all columns but the first; words at the left. */
export function markdownTable(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  cells: 'words' | 'numbers',
): string {
  const line = (of: readonly string[]): string => `| ${of.join(' | ')} |`;
  const rule = heads.map((_, column) => (column > 0 && cells === 'numbers' ? '---:' : '---'));
  return [line(heads), line(rule), ...rows.map(line)].join('\n');
}

/** Shown when it is clicked. The title is ours: it stands in HTML. The empty lines let Markdown begin again. */
export const folded = (title: string, body: string): string =>
  `<details>\n<summary>${title}</summary>\n\n${body}\n\n</details>`;

export const bullets = (texts: readonly string[]): string =>
  texts.map((text) => `- ${inMarkdown(text)}`).join('\n');
