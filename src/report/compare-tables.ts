/** What moved between two designs as tables of words: old, new and by how much. */
import type { Comparison } from '../checks/compare.js';
import { isNewlyOver, isReadable, type MeasureChange } from '../checks/compare-loads.js';
import type { MeasureKey } from '../names.js';
import { isMissing, type OrMissing } from '../numeric/missing.js';
import { formatKilograms, formatLength } from '../quantity/print.js';
import { printedStep } from '../quantity/printed-step.js';
import type { LengthUnit } from '../quantity/units.js';
import { sayDimension } from './dimension-words.js';
import { measureWords, sayOver, sayValue, whoOf } from './measure-words.js';
import type { Table } from './table.js';

const heads = ['old', 'new', 'by'];
type TableRow = Table['rows'][number];

/** A table a load that both designs have and in which something moved. */
export const movedTables = ({ loads }: Comparison, units: LengthUnit): Table[] =>
  loads.flatMap(({ load, sitter, measures }) => {
    const rows = measures.filter(({ moved }) => moved).map((change) => measureRow(change, units));
    return rows.length === 0 ? [] : [{ title: `What moved, ${whoOf(load, sitter)}`, heads, rows }];
  });

function measureRow({ measure, old, new: now }: MeasureChange, units: LengthUnit): TableRow {
  const say = (value: OrMissing<number>): string =>
    isMissing(value) ? '-' : sayValue(measure, value, units);
  const by = isMissing(old) || isMissing(now) ? null : sayDifference(measure, now - old, units);
  return { label: measureWords[measure], cells: [say(old), say(now), by] };
}

const sayDifference = (measure: MeasureKey, difference: number, units: LengthUnit): string =>
  signed(difference, (size) => sayValue(measure, size, units));

const signed = (difference: number, say: (size: number) => string): string =>
  `${difference < 0 ? '-' : '+'}${say(Math.abs(difference))}`;

/** Limits with other bounds and the verdict as before, unless it is another matter: that the load goes over now. */
export function otherBounds({ limits, loads }: Comparison): Comparison['limits'] {
  const over = loads.filter(isNewlyOver);
  return limits.filter(
    ({ change, new: now }) =>
      change === 'bounds' && !over.some(({ load, sitter }) => load === now?.load && sitter === now.sitter),
  );
}

export const nowOver = 'Goes over now, and did not before';

/** 'shortest, getting up: goes over forwards' */
export const newlyOver = ({ loads }: Comparison): string[] =>
  loads
    .filter(isNewlyOver)
    .map(({ load, sitter, goesOver }) => sayOver({ load, sitter, way: goesOver.new! }));

/** 'only in the new design: tallest; tallest, feet up' */
export function unmatchedLoads({ loads }: Comparison): string[] {
  return (['old', 'new'] as const).flatMap((which) => {
    const names = loads.filter((load) => load.in === which).map(({ load, sitter }) => whoOf(load, sitter));
    return names.length === 0 ? [] : [`only in the ${which} design: ${names.join('; ')}`];
  });
}

export function dimensionTable({ dimensions }: Comparison, units: LengthUnit): Table {
  const rows = dimensions.map(({ old, new: now }) => ({
    label: (now ?? old).name,
    cells: [old, now].map((named) => (named === null ? '-' : sayDimension(named, units))),
  }));
  return { title: 'Sizes that changed', heads: ['old', 'new'], rows };
}

export function massTable({ masses }: Comparison, units: LengthUnit): Table {
  const { old, new: now, parts } = masses;
  const length = (value: number): string => formatLength(value, units);
  const rows = [
    row('the whole chair', old.mass, now.mass, formatKilograms, printedStep('mass', units)),
    row('its centre of gravity, x', old.centre.x, now.centre.x, length, printedStep('length', units)),
    row('its centre of gravity, y', old.centre.y, now.centre.y, length, printedStep('length', units)),
  ].flatMap((one) => one ?? []);
  return { title: 'Weights that changed', heads, rows: [...rows, ...parts.map(partRow)] };
}

function row(
  label: string,
  old: number,
  now: number,
  say: (value: number) => string,
  step: number,
): TableRow | null {
  return isReadable(now - old, step) ? { label, cells: [say(old), say(now), signed(now - old, say)] } : null;
}

/** Masses are those of all pieces; how many stands with the name, or with each mass when that changed. */
function partRow({ old, new: now }: Comparison['masses']['parts'][number]): TableRow {
  const { name, count } = now ?? old;
  const recounted = old !== null && now !== null && old.count !== now.count;
  const say = (part: typeof old): string => {
    if (part === null) return '-';
    return recounted ? `${formatKilograms(part.mass)} for ${part.count}` : formatKilograms(part.mass);
  };
  const by = old && now ? signed(now.mass - old.mass, formatKilograms) : null;
  return {
    label: recounted || count === 1 ? name : `${name} × ${count}`,
    cells: [say(old), say(now), by],
  };
}
