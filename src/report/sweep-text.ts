/** A sweep as a table for people: a line a design, sitters side by side, and what came of it. */
import { measures, jsonFactor, type MeasureKey } from '../names.js';
import type { LengthUnit } from '../quantity/units.js';
import { widest as widestLine } from './text-settings.js';
import { loadWords, sayValue } from './measure-words.js';
import { printable } from './printable.js';
import type { SweepPrinter } from './sweep-formats.js';
import type { SweepHeadObject, SweepRowObject, SweepSummaryObject } from './sweep-schema.js';
import type { Style, TextSettings } from './text-settings.js';
import { padEnd, padStart, shortened, textWidth } from './text-width.js';
import { sayInUnit } from './variable-words.js';
import { wrap } from './wrap.js';

/** One measure of one load, its sitters side by side. */
interface Group {
  readonly head: string;
  readonly measure: MeasureKey;
  /** Of the row’s measures. */
  readonly places: readonly number[];
  readonly width: number;
}

const gap = '  ';
const between = ' / ';
const noValue = '-';

export function sweepText(
  head: SweepHeadObject,
  { columns, paint }: Pick<TextSettings, 'columns' | 'paint'>,
): SweepPrinter {
  const groups = groupsOf(head);
  const values = head.varied.map(({ dimension, unit, values, first, last }) => {
    const said = (values ?? [first, last]).map((value) => sayInUnit(value, unit));
    return { name: dimension, unit, width: Math.max(textWidth(dimension), ...said.map(textWidth)) };
  });
  const used =
    values.reduce((sum, { width }) => sum + width + gap.length, 0) +
    groups.reduce((sum, { width }) => sum + width + gap.length, 0) +
    longestMark;
  const room = Math.max(columns - used - 2 * gap.length, leastWhy);
  const line = (cells: readonly string[], mark: string, why: string): string =>
    [...cells, `${mark}${why === '' ? '' : gap}${why}`].join(gap).trimEnd();
  const heads = [
    ...values.map(({ name, width }) => padStart(name, width)),
    ...groups.map(({ head: name, width }) => padStart(name, width)),
  ];
  const titled = paint('heading', line(heads, padEnd('', longestMark), 'not met, or tightest'));
  return {
    opening: `${introduction(head, columns)}\n\n${titled}\n`,
    row: (row) => {
      const cells = [
        ...values.map(({ unit, width }, i) => padStart(sayInUnit(row.values[i]!, unit), width)),
        ...groups.map((group) => padStart(cellOf(group, row, head), group.width)),
      ];
      const { style, word } = markOf(row);
      return `${line(cells, paint(style, padEnd(word, longestMark)), shortened(printable(whyOf(row)), room))}\n`;
    },
    closing: (summary, whole) => conclusion(head, summary, whole, columns),
  };
}

const longestMark = 'comfortable'.length;
/** Wide enough for the name of a limit. */
const leastWhy = 24;

function markOf({ verdict, comfortable }: SweepRowObject): { readonly style: Style; readonly word: string } {
  if (comfortable) return { style: 'good', word: 'comfortable' };
  const marks = {
    pass: { style: 'good', word: 'met' },
    fail: { style: 'bad', word: 'NOT MET' },
    unknown: { style: 'doubt', word: 'unknown' },
  } as const;
  return marks[verdict];
}

/** What is not met; of what is met the tightest. */
function whyOf({ notMet, tightest, problem }: SweepRowObject): string {
  if (problem !== null) return problem;
  const [first, ...more] = notMet;
  if (first !== undefined) return more.length === 0 ? first : `${first} +${more.length}`;
  return tightest?.limit ?? '';
}

function groupsOf({ columns, design: { units } }: SweepHeadObject): Group[] {
  const keys = [...new Set(columns.map(({ load, measure }) => `${load}/${measure}`))];
  return keys.map((key) => {
    const places = columns.flatMap(({ load, measure }, i) => (`${load}/${measure}` === key ? [i] : []));
    const { measure } = columns[places[0]!]!;
    const head = measures[measure].limitKey;
    const unit = suffixOf(sayValue(measure, 0, units));
    const widest =
      places.length * widestOf(measure, units) + (places.length - 1) * between.length + unit.length;
    return { head, measure, places, width: Math.max(head.length, widest) };
  });
}

/** A column holds values as long as these, without their unit; a rarer one pushes its line to the right. */
const usualLengths: Readonly<Record<LengthUnit, string>> = {
  in: '7-15/16',
  ft: '15.25',
  mm: '1250',
  cm: '99.5',
  m: '0.905',
};
const usualAngle = '12.5';
const usualTime = '2.03';
/** Of kilograms, newtons, joules and pure numbers. */
const usualNumber = '102.5';

function widestOf(measure: MeasureKey, units: LengthUnit): number {
  const { kind } = measures[measure];
  if (kind === 'length') return usualLengths[units].length;
  return (kind === 'angle' ? usualAngle : kind === 'time' ? usualTime : usualNumber).length;
}

/** ' in', '°', ' s'. */
const suffixOf = (said: string): string => /[^\d.]*$/u.exec(said)![0];

/** '2.03 / 2.41 s'. */
function cellOf({ measure, places }: Group, row: SweepRowObject, { design }: SweepHeadObject): string {
  const said = places.map((i) => {
    const value = row.measures[i] ?? null;
    return value === null ? noValue : sayValue(measure, value / jsonFactor(measure), design.units);
  });
  const unit = suffixOf(said.find((one) => one !== noValue) ?? '');
  const bare = said.map((one) => (one.endsWith(unit) ? one.slice(0, one.length - unit.length) : one));
  return `${bare.join(between)}${unit}`;
}

function introduction({ design, designs, varied, columns, loads }: SweepHeadObject, width: number): string {
  const sizes = varied.map(
    ({ dimension, unit, first, last, count }) =>
      `${dimension} ${sayInUnit(first, unit)}${count > 1 ? ` to ${sayInUnit(last, unit)}, ${count} values` : ''}`,
  );
  const sitters = [...new Set(columns.flatMap(({ sitter }) => sitter ?? []))];
  const people = sitters.length > 1 ? [`Side by side: ${sitters.join(between)}.`] : [];
  const rolled = `Judged on: ${loads.map((load) => loadWords[load]).join(', ')}.`;
  const count = `${designs.toLocaleString('en')} ${designs === 1 ? 'design' : 'designs'}: ${sizes.join('; ')}.`;
  return [design.name, count, rolled, ...people].map((text) => wrap(text, width)).join('\n');
}

function conclusion(
  head: SweepHeadObject,
  { designs, pass, unknown, comfortable, passing, roomiest }: SweepSummaryObject,
  whole: boolean,
  width: number,
): string {
  const stopped = whole ? [] : [`Stopped after ${designs} of ${head.designs} designs.`];
  const where =
    passing === null ? '' : `: ${passing.map((ends, i) => sayEnds(ends, head.varied[i]!)).join('; ')}`;
  const cannot = unknown === 0 ? [] : [`${unknown} could not be judged.`];
  const met = `All limits met by ${pass} of ${designs}${where}.`;
  const easy =
    comfortable === 0
      ? []
      : [
          `Comfortable are ${comfortable}: one full rock, seat slope and back in the middle three quarters of their ranges, and half as much rocker again left in a hard lean as asked.`,
        ];
  const best =
    roomiest?.tightest == null
      ? []
      : [
          `The most room to every limit: ${roomiest.values.map((value, i) => `${head.varied[i]!.dimension} ${sayInUnit(value, head.varied[i]!.unit)}`).join(', ')} (tightest: ${roomiest.tightest.limit}).`,
        ];
  const lines = [...stopped, met, ...cannot, ...easy, ...best].map((text) =>
    wrap(text, Math.min(width, widestLine)),
  );
  return `\n${lines.join('\n')}\n`;
}

const sayEnds = (
  [least, greatest]: readonly [number, number],
  { dimension, unit }: SweepHeadObject['varied'][number],
): string =>
  least === greatest
    ? `${dimension} ${sayInUnit(least, unit)}`
    : `${dimension} from ${sayInUnit(least, unit)} to ${sayInUnit(greatest, unit)}`;
