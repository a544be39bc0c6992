/** Looking at a source text from an offset on. */
import { refuse } from './reading.js';

/** The longest text that is read. A value takes less than a line; more is a slip, and would be slow. */
const longest = 400;

export function refuseLong(source: string): void {
  if (source.length > longest) refuse(longest, `at most ${longest} characters`, `${source.length}`);
}

/** What the pattern (which starts with ^) finds at the offset. Texts are short: the slice is cheap. */
export function matchAt(source: string, at: number, pattern: RegExp): RegExpExecArray | null {
  return pattern.exec(source.slice(at));
}

export function skipSpaces(source: string, at: number): number {
  return at + matchAt(source, at, /^\s*/u)![0].length;
}

/** A piece of the source as it is shown in a message. */
export function shown(text: string): string {
  const plain = text.trim().replace(/\s+/gu, ' ');
  return `\`${plain.length > 60 ? `${plain.slice(0, 57)}…` : plain}\``;
}

/** The character at the offset as a message names it; those that cannot be seen by their number. */
export function characterAt(source: string, at: number): string {
  const code = source.codePointAt(at)!;
  const number = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
  const character = String.fromCodePoint(code);
  return /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(character)
    ? `the character \`${character}\``
    : `the character ${number}`;
}

// Kinds of characters, to be put into patterns. Word processors turn - into a minus sign or an en dash, and a
// slash between digits into a fraction slash; SI texts use a raised dot.
export const dash = '[-\u2010\u2011\u2013\u2212]';
export const slash = '[/\u2044\u2215]';
export const vulgarFraction = '[\u00bc-\u00be\u2150-\u215e]';
/** ' and the prime and curly marks that stand for it: feet; two of them, or the double mark: inches. */
export const singleMark = "['\u2032\u2018\u2019]";
export const doubleMark = `(?:["\u2033\u201c\u201d]|${singleMark}{2})`;
/** The degree sign and the two that keyboards offer in its place. */
export const degreeMark = '[\u00b0\u00ba\u02da]';

/** A word: the name of a unit, a function or a dimension of the design. */
export const word = '(?![\u00ba])[\\p{L}_][\\p{L}\\p{M}\\p{Nd}_]*';
const wordHere = new RegExp(`^${word}`, 'u');
const wholeWord = new RegExp(`^${word}$`, 'u');

export function wordAt(source: string, at: number): string | null {
  return matchAt(source, at, wordHere)?.[0] ?? null;
}

/** Whether a text can stand for a value in an expression: a letter or _, then letters, digits, _. */
export const isWord = (text: string): boolean => wholeWord.test(text);
