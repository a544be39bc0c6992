/** What became of lines in a drawing that stood for curves, and what the chair would do with them left as lines. */
import type { CheckResult } from '../check-design.js';
import type { Unsmoothed } from '../explore/unsmoothed.js';
import type { TakenFromFile } from '../chair/part-outline.js';
import type { Smoothing } from '../drawing/read/smoothing/smoothing.js';
import type { Measured } from '../measures/catalogue.js';
import { isMissing } from '../numeric/missing.js';
import { formatDegreesFine, formatMillimetres, formatNumber, formatSeconds } from '../quantity/print.js';

export function saySmoothing(name: string, { file, smoothing }: TakenFromFile): string[] {
  if (smoothing === null) return [];
  const { lines, off, radius, left } = smoothing;
  const told = `${name}, from ${file}:`;
  if (lines + left === 0) return [`${told} no lines that stand for a curve were found to smooth.`];
  const made = `${told} ${sayMade(smoothing)}, ${formatMillimetres(off, 3)} from them at most, ${sayRadius(radius)}.`;
  return [...(lines > 0 ? [made] : []), ...(left > 0 ? [`${told} ${sayUnmade(smoothing)}`] : [])];
}

export const sayUnmade = ({ left }: Smoothing): string =>
  `${formatNumber(left, 0)} lines look like a curve whose radius they do not tell to 0.1 %: they were left as lines.`;

/** `62 lines were read as 1 arc and 2 curves` */
export function sayMade({ lines, arcs, curves }: Smoothing): string {
  const made = [counted(arcs, 'arc'), counted(curves, 'curve')].filter((words) => words !== null);
  return `${formatNumber(lines, 0)} lines were read as ${made.join(' and ')}`;
}

const counted = (count: number, what: string): string | null =>
  count === 0 ? null : `${formatNumber(count, 0)} ${what}${count === 1 ? '' : 's'}`;

const sayRadius = (share: number): string =>
  share < leastTold ? 'radii as drawn to 0.001 %' : `radii as drawn to ${formatNumber(100 * share, 3)} %`;
const leastTold = 1e-5;

/** Empty, and with the first sitter: how far rest and one full rock would be from what is told. */
export function sayUnsmoothed({ loads, unsmoothed }: CheckResult): string[] {
  const said = unsmoothed().flatMap((left) => {
    const { id, sitter } = left.record.load;
    const told = loads.find(({ record: { load } }) => load.id === id && load.sitter === sitter);
    return told === undefined ? [] : [`${sitter ?? 'empty'}: ${sayDifference(told.measured, left)}`];
  });
  return said.length === 0 ? [] : [`Left as lines it would do otherwise. ${said.join('; ')}.`];
}

function sayDifference(told: Measured, { measured }: Unsmoothed): string {
  const [rest, was] = [measured.get('restAngleDeg')!, told.get('restAngleDeg')!];
  if (isMissing(rest)) return `it would not settle: ${rest.missing}`;
  const settles = isMissing(was)
    ? 'it would settle'
    : `it would settle ${formatDegreesFine(Math.abs(rest - was), 2)} ${rest > was ? 'farther back' : 'farther forward'}`;
  const period = measured.get('periodS')!;
  const asTold = told.get('periodS')!;
  const beside = isMissing(asTold) ? '' : ` in place of ${formatSeconds(asTold, 3)}`;
  const rocks = isMissing(period)
    ? `its smallest rock has no time of its own (${period.missing})`
    : `one full rock would take ${formatSeconds(period, 3)}${beside}`;
  return `${settles}, and ${rocks}`;
}
