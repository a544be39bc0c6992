import { printable } from './printable.js';

/** RFC 4180: in quotes where it holds a comma, a quote or an end of line. What is shown of it moves no cursor. */
export function inCsv(cell: string): string {
  const shown = printable(cell);
  return /[",\r\n]/u.test(shown) ? `"${shown.replaceAll('"', '""')}"` : shown;
}
