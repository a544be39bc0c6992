/** The segments of a body whose joints are known. */
import { distance, plus, times, type Point } from '../geometry/point.js';
import type { MassProperties } from '../mass.js';
import { segmentRows, type Body, type Joint, type SegmentGroup } from './segment-table.js';

/** Mass and inertia are of all `number` of them together: left and right are one in the side view. */
export interface Segment extends MassProperties {
  readonly name: string;
  readonly number: number;
  readonly group: SegmentGroup;
}

/**
 * m = fraction × body mass, G = from + c (to - from), I = m (k |to - from|)².
 *
 * The fractions are brought to a sum of 1 (the printed ones of women sum to 0.9999, its rounding): what rides with the
 * feet up is then the mass that was stated, to the last digit.
 * @throws RangeError when the mass is not a positive number
 */
export function segmentsOf(joints: Readonly<Record<Joint, Point>>, body: Body, mass: number): Segment[] {
  if (!(mass > 0 && mass < Infinity)) throw new RangeError(`segmentsOf: mass ${mass} kg`);
  const rows = segmentRows(body);
  const whole = rows.reduce((sum, row) => sum + row.number * row.mass, 0);
  return rows.map((row) => {
    const from = joints[row.from];
    const to = joints[row.to];
    const share = (mass * row.number * row.mass) / whole;
    return {
      name: row.name,
      number: row.number,
      group: row.group,
      mass: share,
      centre: plus(times(from, 1 - row.centre), times(to, row.centre)),
      inertia: share * (row.gyration * distance(from, to)) ** 2,
    };
  });
}
