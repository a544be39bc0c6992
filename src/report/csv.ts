/** A table for a spreadsheet: CSV, RFC 4180. */
export const csvOf = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(inCsv).join(',')}\r\n`).join('');

/** In quotes where it holds a comma, a quote or an end of line. */
const inCsv = (cell: string): string => (/[",\r\n]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
