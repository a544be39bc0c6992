/** How the shop's errors and the range of people spread a chair, for a terminal. */
import type { Loosest } from '../explore/loosest-tolerances.js';
import { tradeErrorBasis } from '../explore/shop-errors.js';
import type { Tolerance } from '../explore/tolerance.js';
import type { Outcome, SpreadLimit } from '../explore/trial.js';
import { measures, type MeasureKey } from '../names.js';
import { kindOfDimension } from '../quantity/dimension.js';
import { printedStep } from '../quantity/printed-step.js';
import { sayEffect, sayFinely, saySize } from './fine-words.js';
import { sayRange } from './limit-words.js';
import { measureWords, whoOf } from './measure-words.js';
import { tableLines, type Table } from './table.js';
import type { TextSettings } from './text-settings.js';
import { errorsInWords, sayShare, toleranceAssumptions, whomWords } from './tolerance-words.js';
import { wrap } from './wrap.js';

export interface ToleranceTextSettings extends Pick<TextSettings, 'columns' | 'paint'> {
  /** Limits too that nothing moves. */
  readonly all: boolean;
}

export function printToleranceText(tolerance: Tolerance, settings: ToleranceTextSettings): string {
  const sections = [
    opening(tolerance, settings),
    missedLines(tolerance.shop, 'Missed by so many of a hundred chairs', tolerance, settings),
    lines(spreadTable(tolerance, settings), settings),
    effectLines(tolerance, settings),
    loosestLines(tolerance, settings),
    peopleLines(tolerance, settings),
    assumed(tolerance, settings),
  ];
  return `${sections
    .filter((section) => section.length > 0)
    .map((section) => section.join('\n'))
    .join('\n\n')}\n`;
}

function opening(tolerance: Tolerance, { paint, columns }: ToleranceTextSettings): string[] {
  const { design, settings, errors, shop, drawn } = tolerance;
  const heading = paint('heading', wrap(design.name, columns));
  if (errors.length === 0) return [heading];
  const missed = drawn.filter(({ verdict }) => verdict !== 'pass').length;
  const said = [
    `${settings.samples} chairs drawn, each size off by chance: ${offBy(tolerance)}.`,
    ...(missed === 0 ? [] : [`As drawn ${missed} of ${drawn.length} limits are not met already.`]),
    ...notBuilt(shop),
    `In a hundred chairs some limit is missed by ${sayShare(shop.any)}.`,
  ];
  const style = shop.any.share === 0 ? 'good' : 'bad';
  return [heading, ...said.map((text, i) => paintLast(wrap(text, columns), i, said.length, style, paint))];
}

const paintLast = (
  text: string,
  i: number,
  count: number,
  style: 'good' | 'bad',
  paint: TextSettings['paint'],
): string => (i === count - 1 ? paint(style, text) : text);

/** Names where they differ. */
function offBy(tolerance: Tolerance): string {
  const groups = errorsInWords(tolerance).map(({ what, value, basis }) => ({
    what,
    by: basis === tradeErrorBasis ? `${value} (assumed)` : value,
  }));
  return groups.length === 1 ? groups[0]!.by : groups.map(({ what, by }) => `${what} ${by}`).join('; ');
}

const notBuilt = ({ notBuilt: count }: Outcome): string[] =>
  count === 0
    ? []
    : [`${count} of those drawn cannot be built: parts are left out or overlap; they are not counted.`];

const lines = (table: Table, { columns, paint }: ToleranceTextSettings): string[] =>
  tableLines(table, columns, (text) => paint('heading', text));

/** Nine of ten chairs lie within. */
function spreadTable(tolerance: Tolerance, { all }: ToleranceTextSettings): Table {
  const drawn = new Map(tolerance.drawn.map((limit) => [limit.id, limit]));
  const shown =
    tolerance.errors.length === 0 ? [] : tolerance.shop.limits.filter((one) => all || moves(one, tolerance));
  return {
    title: 'How far the shop’s errors spread it',
    heads: ['as drawn', '9 of 10 chairs'],
    rows: shown.map((one) => {
      const value = drawn.get(one.id)?.value ?? null;
      return { label: labelOf(one), cells: [sayValueOf(one, value, tolerance), sayRangeOf(one, tolerance)] };
    }),
  };
}

/** Those that are missed at all, with what is wanted. */
function missedLines(
  { limits }: Outcome,
  title: string,
  { design }: Tolerance,
  { paint, columns }: ToleranceTextSettings,
): string[] {
  const missed = limits.filter((one) => one.missed.share > 0);
  if (missed.length === 0) return [];
  const said = missed.map((one) => {
    const { measure, range } = one;
    const wanted =
      measure === null
        ? ''
        : `, wanted ${sayRange(range, (value) => sayFinely(measure, value, design.units))}`;
    return wrap(`${sayShare(one.missed)}: ${nameOf(one)}${wanted}`, columns, '  ', '    ');
  });
  const others = limits.length - missed.length;
  const [first] = limits.filter(({ missed: { share } }) => share === 0);
  const rest = first ? [`  ${sayShare(first.missed)}: each of the other ${others}`] : [];
  return [paint('heading', title), ...said, ...rest];
}

/** By less than a twentieth of the step that a maker reads it in, it does not move. */
const unmoved = 1 / 20;

function moves({ measure, spread, missed }: SpreadLimit, { design }: Tolerance): boolean {
  if (missed.share > 0) return true;
  if (measure === null || spread === null) return false;
  return spread.deviation > unmoved * printedStep(measures[measure].kind, design.units);
}

const labelOf = ({ load, sitter, measure }: Pick<SpreadLimit, 'load' | 'sitter' | 'measure'>): string =>
  `${whoOf(load, sitter)}: ${measure === null ? 'comes to rest on its rockers' : measureWords[measure]}`;

/** Nobody in particular is not named. */
const nameOf = (one: SpreadLimit): string => labelOf(one).replace(/^anybody(?:, |: )/, '');

const sayValueOf = ({ measure }: SpreadLimit, value: number | null, { design }: Tolerance): string =>
  value === null || measure === null ? '-' : sayFinely(measure, value, design.units);

const sayRangeOf = (one: SpreadLimit, tolerance: Tolerance): string =>
  one.spread === null
    ? '-'
    : [one.spread.low, one.spread.high].map((end) => sayValueOf(one, end, tolerance)).join(' to ');

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

function effectLines(tolerance: Tolerance, settings: ToleranceTextSettings): string[] {
  const kept = columnsKept(tolerance);
  if (kept.length === 0) return [];
  const meant = kept.flatMap(([, head, means]) => (means === undefined ? [] : [`${head}: ${means}`]));
  const whose = 'Each of the sitter whom it moves most.';
  return [
    ...lines(effectTable(tolerance), settings),
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

function loosestLines(tolerance: Tolerance, settings: ToleranceTextSettings): string[] {
  const { loosest, design, errors, settings: asked } = tolerance;
  const { paint, columns } = settings;
  if (asked.chance === null || errors.length === 0) return [];
  const title = `Loosest, for some limit missed by no more than ${Number((100 * asked.chance).toPrecision(3))} in a hundred`;
  if (loosest === null)
    return [
      paint('heading', title),
      wrap('A limit is not met as drawn: closer work does not mend that.', columns, '  '),
    ];
  const groups = new Map<string, string[]>();
  for (const { variable, size, spread } of loosest.errors.toSorted((a, b) => a.size - b.size)) {
    const said = saySize(kindOfDimension(variable.dimension), size, design.units);
    const hold = spread === 'even' ? `±${said}` : `${said} (normal)`;
    groups.set(hold, [...(groups.get(hold) ?? []), variable.name]);
  }
  const rows = [...groups].map(([hold, names]) =>
    wrap(`${hold}: ${names.join(', ')}`, columns, '  ', '    '),
  );
  const then = loosest.met
    ? `Then some limit is missed by ${sayShare(loosest.any)} in a hundred.`
    : `No tolerance that was tried does it: with these, the closest that help, some limit is missed by ${sayShare(loosest.any)} in a hundred${mostOf(loosest)}.`;
  return [paint('heading', title), ...rows, paint(loosest.met ? 'good' : 'bad', wrap(then, columns, '  '))];
}

const mostOf = ({ missedMost }: Loosest): string =>
  missedMost === null ? '' : `, most of all ${missedMost.id} by ${sayShare(missedMost.missed)}`;

function peopleLines(tolerance: Tolerance, settings: ToleranceTextSettings): string[] {
  const { people, settings: asked } = tolerance;
  if (people === null || asked.people === null) return [];
  const { columns, paint } = settings;
  const table: Table = {
    title: `Anybody: ${whomWords[asked.people]}`,
    heads: ['9 of 10 people'],
    rows: people.limits
      .filter((one) => settings.all || moves(one, tolerance))
      .map((one) => ({ label: nameOf(one), cells: [sayRangeOf(one, tolerance)] })),
  };
  const any = `Of a hundred such people, in chairs with the shop’s errors, ${sayShare(people.any)} miss some limit.`;
  const said = [...notBuilt(people), any].map((text) => wrap(text, columns, '  '));
  return [
    ...lines(table, settings),
    ...said.map((text) => paint(people.any.share === 0 ? 'good' : 'bad', text)),
    ...missedLines(people, 'Missed by so many of a hundred people', tolerance, settings),
  ];
}

function assumed(tolerance: Tolerance, { paint, columns }: ToleranceTextSettings): string[] {
  const said = toleranceAssumptions(tolerance).map(({ what, value, basis }) =>
    wrap(`${what}: ${value} (${basis})`, columns, '  ', '    '),
  );
  const calculation =
    'A calculation from given sizes, not a test; it claims no conformity with any standard.';
  return [paint('heading', 'Assumed'), ...said, wrap(calculation, columns, '  ', '    ')];
}
