/** How the shop's errors and the range of people spread a chair, for a terminal. */
import { tradeErrorBasis } from '../explore/shop-errors.js';
import type { Tolerance } from '../explore/tolerance.js';
import type { Outcome } from '../explore/trial.js';
import { paintedTable, type Table } from './table.js';
import type { TextSettings } from './text-settings.js';
import { effectLines } from './tolerance-effects.js';
import { labelOf, missedLines, moves, nameOf, sayRangeOf, sayValueOf } from './tolerance-limits.js';
import { loosestLines } from './tolerance-loosest.js';
import {
  errorsInWords,
  sayShare,
  toleranceAssumptions,
  whomWords,
  type ToleranceTextSettings,
} from './tolerance-words.js';
import { wrap } from './wrap.js';

export function printToleranceText(tolerance: Tolerance, settings: ToleranceTextSettings): string {
  const sections = [
    opening(tolerance, settings),
    missedLines(tolerance.shop, 'Missed by so many of a hundred chairs', tolerance, settings),
    paintedTable(spreadTable(tolerance, settings), settings),
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
    : [
        `${count} of those drawn cannot be built as drawn, or nobody can be seated in them; they are not counted.`,
      ];

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
    ...paintedTable(table, settings),
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
