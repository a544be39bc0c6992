/** What moves between two judgements of a chair. */
import type { JudgedLimit } from '../checks/verdict.js';
import { measures, type LoadId, type MeasureKey } from '../names.js';
import { printedStep } from '../quantity/printed-step.js';
import type { LengthUnit } from '../quantity/units.js';

/** How a measure that a limit looks at moves, SI. */
export interface Move {
  /** Of the limit. */
  readonly id: string;
  readonly load: LoadId;
  readonly measure: MeasureKey;
  readonly sitter: string | null;
  readonly from: number;
  readonly by: number;
}

/** Those that move by half a step of what a maker reads, or more. */
export function movesBetween(
  before: readonly JudgedLimit[],
  after: readonly JudgedLimit[],
  units: LengthUnit,
): Move[] {
  const values = new Map(before.map(({ id, value }) => [id, value]));
  return after.flatMap(({ id, load, measure, sitter, value }): Move[] => {
    const from = values.get(id) ?? null;
    if (measure === null || value === null || from === null) return [];
    const by = value - from;
    const seen = Math.abs(by) >= printedStep(measures[measure].kind, units) / 2;
    return seen ? [{ id, load, measure, sitter, from, by }] : [];
  });
}
