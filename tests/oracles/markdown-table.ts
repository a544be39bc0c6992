/**
 * Reads tables as GitHub Flavored Markdown 0.29 has them (section 4.10): a header row, a delimiter row, rows; cells are
 * split at pipes that no backslash escapes. Nothing else of Markdown is read.
 */
export interface ReadTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const delimiter = /^\|(?: :?-+:? \|)+$/;

export function tablesIn(markdown: string): ReadTable[] {
  const lines = markdown.split('\n');
  return lines.flatMap((line, at) => {
    if (!delimiter.test(line)) return [];
    const after = lines.slice(at + 1);
    const end = after.findIndex((row) => !row.startsWith('|'));
    const rows = end < 0 ? after : after.slice(0, end);
    return [{ heads: cellsOf(lines[at - 1] ?? ''), rows: rows.map(cellsOf) }];
  });
}

const cellsOf = (row: string): string[] =>
  row
    .replace(/^\|/, '')
    .replace(/\|$/, '')
    .split(/(?<!\\)\|/)
    .map((cell) => cell.trim());

/** Numeric character references back to their characters (CommonMark 0.31, section 2.5). */
export const withoutReferences = (text: string): string =>
  text.replace(/&#(\d{1,7});/g, (_, code: string) => String.fromCodePoint(Number(code)));
