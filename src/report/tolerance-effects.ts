/** What each size that is off moves, as a table. */
import type { Tolerance } from '../explore/tolerance.js';
import type { MeasureKey } from '../names.js';
import { kindOfDimension } from '../quantity/dimension.js';
import { sayEffect, saySize } from './fine-words.js';
import { paintedTable, type Table } from './table.js';
import type { ToleranceTextSettings } from './tolerance-words.js';
import { wrap } from './wrap.js';

/** What the maker feels and what keeps the chair up: the head of a column, and what it stands for where it does not say. */
const columnsOf: readonly (readonly [MeasureKey, string, string?])[] = [
  ['seatSlopeDeg', 'seat slope'],
  ['periodS', 'full rock'],
  ['kneeHollowGapM', 'knee gap', 'knee hollow over the front edge'],
  ['rockerLeftBackM', 'left back', 'rocker left, leaning back hard'],
  ['rockerLeftForwardM', 'left ahead', 'rocker left, getting up'],
  ['kickBackDeg', 'kicks back', 'the chair that was got up from'],
];

const columnsKept = (tolerance: Tolerance): typeof columnsOf =>
  columnsOf.filter(([key]) => tolerance.errors.some((_, i) => largestEffect(tolerance, key, i) !== null));

/** A row a size, in the column of a measure what it does to that sitter to whom it does most. */
function effectTable(tolerance: Tolerance): Table {
  const { errors, design } = tolerance;
  const kept = columnsKept(tolerance);
  return {
    title: 'More by this moves',
    heads: ['by', ...kept.map(([, head]) => head)],
    rows: errors.map(({ variable, size }, i) => ({
      label: variable.name,
      cells: [
        saySize(kindOfDimension(variable.dimension), size, design.units),
        ...kept.map(([key]) => {
          const change = largestEffect(tolerance, key, i);
          return change === null ? '-' : sayEffect(key, change, design.units);
        }),
      ],
    })),
  };
}

export function effectLines(tolerance: Tolerance, settings: ToleranceTextSettings): string[] {
  const kept = columnsKept(tolerance);
  if (kept.length === 0) return [];
  const meant = kept.flatMap(([, head, means]) => (means === undefined ? [] : [`${head}: ${means}`]));
  const whose = 'Each of the sitter whom it moves most.';
  return [
    ...paintedTable(effectTable(tolerance), settings),
    wrap([whose, ...(meant.length === 0 ? [] : [`${meant.join('; ')}.`])].join(' '), settings.columns, '  '),
  ];
}

function largestEffect({ drawn, firstOrders, errors }: Tolerance, key: MeasureKey, i: number): number | null {
  const changes = drawn
    .filter(({ measure, sitter }) => measure === key && sitter !== null)
    .flatMap(({ id }) => {
      const slope = firstOrders.get(id)?.effects[i]?.slope ?? null;
      return slope === null ? [] : [slope * errors[i]!.size];
    });
  return changes.reduce<number | null>(
    (most, change) => (most === null || Math.abs(change) > Math.abs(most) ? change : most),
    null,
  );
}
