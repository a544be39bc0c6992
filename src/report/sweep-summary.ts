/** What comes of a sweep as a whole, counted row by row; parts of it are put together in their order. */
import type { Over } from '../checks/goes-over.js';
import type { SweepRowObject, SweepSummaryObject } from './sweep-schema.js';

export const noRows: SweepSummaryObject = {
  designs: 0,
  pass: 0,
  fail: 0,
  unknown: 0,
  comfortable: 0,
  goesOver: 0,
  passing: null,
  roomiest: null,
};

export const summaryOf = (rows: readonly SweepRowObject[]): SweepSummaryObject =>
  rows.map(ofOne).reduce(together, noRows);

function ofOne(row: SweepRowObject): SweepSummaryObject {
  const passes = row.verdict === 'pass';
  return {
    designs: 1,
    pass: Number(passes),
    fail: Number(row.verdict === 'fail'),
    unknown: Number(row.verdict === 'unknown'),
    comfortable: Number(row.comfortable),
    goesOver: Number(judgedOver(row).length > 0),
    passing: passes ? row.values.map((value): [number, number] => [value, value]) : null,
    roomiest: row.tightest === null ? null : row,
  };
}

export const together = (a: SweepSummaryObject, b: SweepSummaryObject): SweepSummaryObject => ({
  designs: a.designs + b.designs,
  pass: a.pass + b.pass,
  fail: a.fail + b.fail,
  unknown: a.unknown + b.unknown,
  comfortable: a.comfortable + b.comfortable,
  goesOver: a.goesOver + b.goesOver,
  passing: wider(a.passing, b.passing),
  roomiest: roomier(a.roomiest, b.roomiest),
});

function wider(
  a: SweepSummaryObject['passing'],
  b: SweepSummaryObject['passing'],
): SweepSummaryObject['passing'] {
  if (a === null || b === null) return a ?? b;
  return a.map(([least, greatest], i) => [Math.min(least, b[i]![0]), Math.max(greatest, b[i]![1])]);
}

/** A comfortable one before another; of equal ones the first. */
function roomier(a: SweepRowObject | null, b: SweepRowObject | null): SweepRowObject | null {
  if (a === null || b === null) return a ?? b;
  if (a.comfortable !== b.comfortable) return a.comfortable ? a : b;
  return (b.tightest?.room ?? -Infinity) > (a.tightest?.room ?? -Infinity) ? b : a;
}

/** Those that a limit is about, which then fails: a child on the tails tips most chairs. */
export const judgedOver = ({
  goesOver,
  notMet,
}: Pick<SweepRowObject, 'goesOver' | 'notMet'>): readonly Over[] =>
  goesOver.filter(({ load, sitter }) =>
    notMet.some((id) => id.startsWith(`${load}/`) && (sitter === null || id.endsWith(`/${sitter}`))),
  );
