/** What a sweep answers, as plain data in the units of the design: all its formats are made of this. */
import { limitId } from '../checks/limit.js';
import { unitsOf } from '../design/units-of.js';
import type { Sweep, SweepRow } from '../explore/sweep.js';
import type { Varied } from '../explore/varied.js';
import { jsonFactor } from '../names.js';
import { rounded } from './rounded.js';
import type { SweepHeadObject, SweepRowObject } from './sweep-schema.js';
import { tool } from './tool.js';
import { unitOf } from './variable-words.js';

/** @param sha256 digest of the design file */
export function sweepHead({ design, grid, loads, columns }: Sweep, sha256: string | null): SweepHeadObject {
  const units = unitsOf(design);
  return {
    sweepVersion: 1,
    tool,
    design: { name: design.name, file: design.file, sha256, kind: design.written.kind ?? 'adult', units },
    designs: grid.count,
    varied: grid.varied.map((varied) => variedObject(varied, units)),
    loads: [...loads],
    columns: columns.map((column) => ({ name: nameOf(column), ...column })),
  };
}

/** As many values of one dimension are listed; of more the ends are told. */
const mostListed = 100;

function variedObject(
  { variable, count, valueAt }: Varied,
  units: SweepHeadObject['design']['units'],
): SweepHeadObject['varied'][number] {
  const { unit, factor } = unitOf(variable, units);
  const at = (index: number): number => rounded(valueAt(index) / factor);
  const listed = Array.from({ length: Math.min(count, mostListed) }, (_, i) => at(i));
  return {
    dimension: variable.name,
    unit,
    count,
    first: at(0),
    last: at(count - 1),
    values: count > mostListed ? null : listed,
  };
}

/** With the unit ending of the contract: `seated/periodS/shortest`. */
const nameOf = ({ load, measure, sitter }: Sweep['columns'][number]): string =>
  limitId(load, measure, sitter);

/** Makes objects of rows. */
export function sweepRowsOf({ grid, columns, design }: Sweep): (row: SweepRow) => SweepRowObject {
  const units = unitsOf(design);
  const factors = grid.varied.map(({ variable }) => unitOf(variable, units).factor);
  const scales = columns.map(({ measure }) => jsonFactor(measure));
  return (row) => ({
    design: row.number,
    values: row.values.map((value, i) => rounded(value / factors[i]!)),
    measures: row.measures.map((value, i) => (value === null ? null : rounded(value * scales[i]!))),
    verdict: row.verdict,
    comfortable: row.comfortable,
    goesOver: row.goesOver.map((over) => ({ ...over })),
    notMet: [...row.notMet],
    tightest: row.tightest && { limit: row.tightest.id, room: rounded(row.tightest.room) },
    problem: row.problem,
  });
}
