/**
 * A DXF file as its groups: pairs of lines, a code and a value; what a group 0 begins goes on to the next group 0. Codes and
 * their meaning: Autodesk’s published DXF reference.
 */
import { Unreadable } from './unreadable.js';

export interface Tag {
  readonly code: number;
  /** Without the blanks around it. */
  readonly value: string;
  /** Of the value, from 1. */
  readonly line: number;
}

export interface Group {
  /** What follows the 0: LINE, SECTION, EOF … */
  readonly type: string;
  readonly line: number;
  readonly tags: readonly Tag[];
}

const comment = 999;
const codePattern = /^-?\d{1,4}$/;

/** One after another, so that only one is in memory. Ends after EOF. */
export function* groupsOf(text: string): Generator<Group> {
  const lines = linesOf(text);
  const codeIn = codeReader();
  let [type, at, tags] = ['', 0, [] as Tag[]];
  for (;;) {
    const written = lines();
    if (written === null && type === '') throw noDxf(1, 'nothing');
    if (written === null) throw truncated(lines.count());
    const codeLine = lines.count();
    const code = codeIn(written);
    if (code === null) throw type === '' ? noDxf(codeLine, shown(written.trim())) : noCode(codeLine, written);
    const value = lines();
    if (value === null) throw truncated(lines.count());
    const tag = { code, value: value.trim(), line: codeLine + 1 };
    if (tag.code === comment) continue;
    if (tag.code !== 0) {
      if (type === '') throw noDxf(codeLine, pairOf(tag));
      tags.push(tag);
      continue;
    }
    if (type !== '') yield { type, line: at, tags };
    if (tag.value === 'EOF') return;
    if (type === '' && tag.value !== 'SECTION') throw noDxf(codeLine, pairOf(tag));
    [type, at, tags] = [tag.value, tag.line, []];
  }
}

/** The code in a line; null: none. Nearly all are one of few, written alike: each is read once. */
function codeReader(): (written: string) => number | null {
  const codes = new Map<string, number>();
  return (written) => {
    const known = codes.get(written);
    if (known !== undefined) return known;
    const trimmed = written.trim();
    if (!codePattern.test(trimmed)) return null;
    const code = Number(trimmed);
    codes.set(written, code);
    return code;
  };
}

const noCode = (line: number, written: string): Unreadable =>
  new Unreadable({
    line,
    expected: 'a group code, a whole number on a line of its own',
    found: shown(written.trim()),
    hint: 'a line is missing or too many before it',
  });

const noDxf = (line: number, found: string): Unreadable =>
  new Unreadable({
    ...{ line, expected: 'a DXF file, which begins with 0 and SECTION', found },
    hint: 'an SVG file begins with <; save any other kind of drawing as one of the two',
  });

const pairOf = ({ code, value }: Tag): string => `${code} and ${shown(value)}`;

const truncated = (line: number): Unreadable =>
  new Unreadable({
    line,
    expected: '0, EOF at the end of the file',
    found: 'the end of it',
    hint: 'the file is cut off: write it anew',
  });

export const shown = (text: string): string =>
  text === '' ? 'an empty line' : `"${text.length > 40 ? `${text.slice(0, 40)}…` : text}"`;

/** Line after line, whatever ends them; null after the last. */
function linesOf(text: string): (() => string | null) & { readonly count: () => number } {
  let [place, count] = [text.charCodeAt(0) === 0xfeff ? 1 : 0, 0];
  // One look says how the whole file ends its lines.
  const onlyReturns = !text.includes('\n') && text.includes('\r');
  const mark = onlyReturns ? '\r' : '\n';
  const next = (): string | null => {
    if (place >= text.length) return null;
    const end = text.indexOf(mark, place);
    const line = text.slice(place, end < 0 ? text.length : end);
    place = end < 0 ? text.length : end + 1;
    count++;
    return line;
  };
  return Object.assign(next, { count: () => count });
}
