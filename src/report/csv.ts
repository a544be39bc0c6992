/** RFC 4180: in quotes where it holds a comma, a quote or an end of line. */
export const inCsv = (cell: string): string =>
  /[",\r\n]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
