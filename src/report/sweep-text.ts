/** A sweep as a table for people: a line a design, sitters side by side, and what came of it. */
import { measures, jsonFactor, type MeasureKey } from '../names.js';
import { formatNumber } from '../quantity/print.js';
import type { LengthUnit } from '../quantity/units.js';
import { widest as widestLine } from './text-settings.js';
import { loadWords, sayValue, whoOf } from './measure-words.js';
import { printable } from './printable.js';
import type { SweepPrinter } from './sweep-formats.js';
import { judgedOver } from './sweep-summary.js';
import type { SweepHeadObject, SweepRowObject, SweepSummaryObject } from './sweep-schema.js';
import type { Style, TextSettings } from './text-settings.js';
import { padEnd, padStart, shortened, textWidth } from './text-width.js';
import { sayInUnit } from './variable-words.js';
import { wrap } from './wrap.js';

/** One measure of one load, its sitters side by side. */
interface Group {
  /** Over the heading: which load or whom, where the heading alone would not tell columns apart. */
  readonly above: string;
  readonly head: string;
  readonly measure: MeasureKey;
  /** Of the row’s measures. */
  readonly places: readonly number[];
  readonly width: number;
}

const gap = '  ';
const between = ' / ';
const noValue = '-';
const over = 'over';

export function sweepText(
  head: SweepHeadObject,
  { columns, paint }: Pick<TextSettings, 'columns' | 'paint'>,
): SweepPrinter {
  const groups = groupsOf(head);
  const values = head.varied.map(({ dimension, unit, values, first, last }) => {
    const said = (values ?? [first, last]).map((value) => saySize(value, unit));
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
  const above = groups.some((group) => group.above !== '')
    ? `${paint('heading', line([...values.map(({ width }) => padStart('', width)), ...groups.map((group) => padStart(group.above, group.width))], '', ''))}\n`
    : '';
  return {
    opening: `${introduction(head, columns)}\n\n${above}${titled}\n`,
    row: (row) => {
      const cells = [
        ...values.map(({ unit, width }, i) => padStart(saySize(row.values[i]!, unit), width)),
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

function markOf(row: SweepRowObject): { readonly style: Style; readonly word: string } {
  const { verdict, comfortable } = row;
  if (judgedOver(row).length > 0) return { style: 'bad', word: 'GOES OVER' };
  if (comfortable) return { style: 'good', word: 'comfortable' };
  const marks = {
    pass: { style: 'good', word: 'met' },
    fail: { style: 'bad', word: 'NOT MET' },
    unknown: { style: 'doubt', word: 'unknown' },
  } as const;
  return marks[verdict];
}

/** Who goes over; what else is not met; of what is met the tightest. */
function whyOf(row: SweepRowObject): string {
  const { notMet, tightest, problem } = row;
  if (problem !== null) return problem;
  const [fallen, ...others] = judgedOver(row);
  if (fallen !== undefined) return withMore(whoOf(fallen.load, fallen.sitter), others.length);
  const [first, ...more] = notMet;
  return first === undefined ? (tightest?.limit ?? '') : withMore(first, more.length);
}

const withMore = (first: string, more: number): string => (more === 0 ? first : `${first} +${more}`);

function groupsOf({ columns, design: { units } }: SweepHeadObject): Group[] {
  const keys = [...new Set(columns.map(({ load, measure }) => `${load}/${measure}`))];
  const sitters = new Set(columns.flatMap(({ sitter }) => sitter ?? []));
  return keys.map((key) => {
    const places = columns.flatMap(({ load, measure }, i) => (`${load}/${measure}` === key ? [i] : []));
    const own = places.map((i) => columns[i]!);
    const { measure, load } = own[0]!;
    const head = measures[measure].limitKey;
    const onOthers = columns.some((other) => other.measure === measure && other.load !== load);
    const whom = own.flatMap(({ sitter }) => sitter ?? []);
    const above = [
      ...(onOthers ? [load] : []),
      ...(whom.length > 0 && whom.length < sitters.size ? [whom.map(printable).join(between)] : []),
    ].join(' ');
    const unit = suffixOf(sayValue(measure, 0, units));
    const widest =
      places.length * widestOf(measure, units) + (places.length - 1) * between.length + unit.length;
    return { above, head, measure, places, width: Math.max(head.length, textWidth(above), widest) };
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
function cellOf(
  { measure, places }: Group,
  row: SweepRowObject,
  { design, columns }: SweepHeadObject,
): string {
  const none = (i: number): string => {
    const { load, sitter } = columns[i]!;
    const fallen = row.goesOver.some((one) => one.load === load && one.sitter === sitter);
    return fallen ? over : noValue;
  };
  const said = places.map((i) => {
    const value = row.measures[i] ?? null;
    return value === null ? none(i) : sayValue(measure, value / jsonFactor(measure), design.units);
  });
  const unit = suffixOf(said.find((one) => one !== noValue && one !== over) ?? '');
  const bare = said.map((one) => (one.endsWith(unit) ? one.slice(0, one.length - unit.length) : one));
  return `${bare.join(between)}${unit}`;
}

function introduction({ design, designs, varied, columns, loads }: SweepHeadObject, width: number): string {
  const sizes = varied.map(
    ({ dimension, unit, first, last, count }) =>
      `${dimension} ${saySize(first, unit)}${count > 1 ? ` to ${saySize(last, unit)}, ${count} values` : ''}`,
  );
  const sitters = [...new Set(columns.flatMap(({ sitter }) => sitter ?? []))];
  const people = sitters.length > 1 ? [`Side by side: ${sitters.join(between)}.`] : [];
  const rolled = `Judged on: ${loads.map((load) => loadWords[load]).join(', ')}.`;
  const count = `${designs.toLocaleString('en')} ${designs === 1 ? 'design' : 'designs'}: ${sizes.join('; ')}.`;
  return [design.name, count, rolled, ...people].map((text) => wrap(text, width)).join('\n');
}

function conclusion(
  head: SweepHeadObject,
  { designs, pass, unknown, comfortable, goesOver, passing, roomiest }: SweepSummaryObject,
  whole: boolean,
  width: number,
): string {
  const stopped = whole ? [] : [`Stopped after ${designs} of ${head.designs} designs.`];
  const where =
    passing === null ? '' : `: ${passing.map((ends, i) => sayEnds(ends, head.varied[i]!)).join('; ')}`;
  const cannot = unknown === 0 ? [] : [`${unknown} could not be judged.`];
  const met = `All limits met by ${pass} of ${designs}${where}.`;
  const fallen =
    goesOver === 0
      ? []
      : [`In ${goesOver} of ${designs} a load takes the chair over: GOES OVER, \`${over}\` in its columns.`];
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
          `The most room to every limit: ${roomiest.values.map((value, i) => `${head.varied[i]!.dimension} ${saySize(value, head.varied[i]!.unit)}`).join(', ')} (tightest: ${roomiest.tightest.limit}).`,
        ];
  const lines = [...stopped, met, ...fallen, ...cannot, ...easy, ...best].map((text) =>
    wrap(text, Math.min(width, widestLine)),
  );
  return `\n${lines.join('\n')}\n`;
}

/** Tenths of a pound are read on no scale: kilograms that were asked for come out in all their digits. */
const saySize = (value: number, unit: string): string =>
  unit === 'lb' ? `${formatNumber(value, 1)} lb` : sayInUnit(value, unit);

const sayEnds = (
  [least, greatest]: readonly [number, number],
  { dimension, unit }: SweepHeadObject['varied'][number],
): string =>
  least === greatest
    ? `${dimension} ${saySize(least, unit)}`
    : `${dimension} from ${saySize(least, unit)} to ${saySize(greatest, unit)}`;
