/** A table as printed: pairs of what it is looked up by, growing, and what it says there. */
export type PrintedTable = readonly (readonly [at: number, value: number])[];

/** Linear between printed rows, exact on them; null outside them. */
export function betweenPrinted(table: PrintedTable, at: number): number | null {
  const above = table.findIndex(([printed]) => printed >= at);
  if (above < 0) return null;
  const [high, valueHigh] = table[above]!;
  if (high === at) return valueHigh;
  if (above === 0) return null;
  const [low, valueLow] = table[above - 1]!;
  return valueLow + ((valueHigh - valueLow) * (at - low)) / (high - low);
}
