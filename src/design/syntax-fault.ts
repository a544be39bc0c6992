/** What keeps a text from being YAML, in a maker's words. */
import type { YAMLError } from 'yaml';
import { shown } from '../quantity/source-text.js';

/** A mistake at an offset of the text; null: of the file as a whole. */
export interface TextFault {
  readonly at: number | null;
  readonly expected: string;
  readonly found: string;
  readonly hint?: string;
}

/** `quote`: where the quote opens that the error stands in or after. */
export function syntaxFault(error: YAMLError, text: string, quote: number | undefined): TextFault {
  const at = offsetOf(error, text, quote);
  const rest = /^[^\n\r]*/.exec(text.slice(at))![0].trim();
  return { at, ...wordsFor(error, rest) };
}

function offsetOf({ code, pos: [at] }: YAMLError, text: string, quote: number | undefined): number {
  // A quote that is not closed runs to the end of the file: it is told where it opens.
  if (code === 'MISSING_CHAR') return quote ?? at;
  // A comparison sign is taken for the head of a text block, and the fault is told behind it.
  const sign = /[<>]=? ?$/.exec(text.slice(Math.max(0, at - 3), at));
  return at - (sign?.[0].length ?? 0);
}

function wordsFor(error: YAMLError, rest: string): Omit<TextFault, 'at'> {
  if (/^[<>]=?/.test(rest)) {
    return {
      expected: 'a range',
      found: shown(rest.replace(/[,}\]].*/, '')),
      hint: 'write `1.8 s ..` for at least, `.. 2.6 s` for at most, `1.8 s .. 2.6 s` for both',
    };
  }
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return { expected: 'spaces before a key', found: 'a tab' };
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
      return {
        expected: 'one `key: value` on a line, its block indented below it',
        found: shown(rest),
        hint: 'put a text that holds `: ` in quotes; keys of one block begin in the same column',
      };
    case 'BAD_SCALAR_START':
      return {
        expected: 'a value',
        found: shown(rest),
        hint: 'put a text that begins with a mark in quotes',
      };
    case 'MISSING_CHAR':
      return /^['"]/.test(rest)
        ? { expected: 'a text that ends with the quote mark it begins with', found: shown(rest) }
        : { expected: 'a closing ] or }', found: 'the end' };
    case 'BAD_INDENT':
      return {
        expected: 'a closing ] or }, or a line that begins in the column of its block',
        found: rest === '' ? 'the end' : shown(rest),
      };
    case 'NON_STRING_KEY':
      return { expected: 'a word as key', found: shown(rest) };
    case 'TAG_RESOLVE_FAILED':
      return { expected: 'a value without a tag', found: shown(rest) };
    default:
      return {
        expected: 'YAML: `key: value` lines',
        found: rest === '' ? 'the end' : shown(rest),
        hint: error.message.split('\n')[0]!,
      };
  }
}
