/** What an adjustment does to the limits: which loads go over then, which limits are met no more, what moves. */
import { overAmong, type Over } from '../checks/goes-over.js';
import type { JudgedLimit } from '../checks/verdict.js';
import type { Adjusted, Setting } from '../explore/adjust.js';
import type { Judgement } from '../explore/judge.js';
import { movesBetween } from '../explore/moves.js';
import type { LengthUnit } from '../quantity/units.js';
import { limitedWords, measureWords, sayOver, sayValue, whoOf } from './measure-words.js';
import { printable } from './printable.js';
import { paintedTable } from './table.js';
import type { TextSettings } from './text-settings.js';
import { wrap } from './wrap.js';

type Settings = Pick<TextSettings, 'columns' | 'paint'>;

export function limitLines(
  { judgement }: Setting,
  { before, stated }: Adjusted,
  settings: Settings,
): string[] {
  const { columns, paint } = settings;
  if (judgement === null) return [paint('bad', 'It cannot be built then.')];
  const now = new Map(before.limits.map((limit) => [limit.id, limit]));
  const then = new Map(judgement.limits.map((limit) => [limit.id, limit]));
  const open = judgement.limits.filter(({ verdict }) => verdict !== 'pass');
  const others = open.filter((limit) => !isOver(judgement, limit));
  const broken = open.filter(({ id }) => now.get(id)?.verdict === 'pass');
  // Of a chair that comes to rest the limit that it does is not judged at all.
  const mended = before.limits.filter(
    ({ id, verdict }) => verdict !== 'pass' && (then.get(id)?.verdict ?? 'pass') === 'pass',
  );
  const listed = (lead: string, limits: readonly JudgedLimit[]): string[] =>
    limits.length === 0 ? [] : [wrap(`${lead}: ${limits.map(nameOf).join('; ')}.`, columns)];
  return [
    ...overLines(judgement, before, settings),
    ...(judgement.limits.length === 0
      ? [paint('doubt', 'Nothing was judged: the design has no limit.')]
      : []),
    ...(isMet(judgement) ? [paint('good', 'All listed limits are met then.')] : []),
    ...listed('Not met then', others).map((text) => paint('bad', text)),
    ...listed('Met now and not then', broken),
    ...listed('Not met now and met then', mended),
    ...movedTable(before, judgement, stated.design.units, settings),
  ];
}

const isMet = ({ verdict, limits }: Judgement): boolean => verdict === 'pass' && limits.length > 0;

const nameOf = ({ load, sitter, measure }: JudgedLimit): string =>
  printable(`${whoOf(load, sitter)}: ${limitedWords(measure)}`);

/**
 * What nobody must miss stands first, a line a load. One that goes over as it does now, and of which no limit asks
 * anything, is no news: a child on the tails tips most chairs.
 */
function overLines(then: Judgement, before: Judgement, { paint, columns }: Settings): string[] {
  const known = new Set(overAmong(before.loads).map(sayOver));
  const lines = overAmong(then.loads).flatMap((over) => {
    const said = sayOver(over);
    if (!known.has(said)) return [`${said}, and does not now`];
    return then.limits.some((limit) => isOf(over, limit)) ? [`${said}, as it does now`] : [];
  });
  if (lines.length === 0) return [];
  return [
    paint('bad', 'Goes over then:'),
    ...lines.map((line) => wrap(printable(line), columns, '  ', '    ')),
  ];
}

type OnLoad = Pick<JudgedLimit, 'load' | 'sitter'>;

const isOf = (over: Over, { load, sitter }: OnLoad): boolean => over.load === load && over.sitter === sitter;

const isOver = ({ loads }: Judgement, limit: OnLoad): boolean =>
  overAmong(loads).some((one) => isOf(one, limit));

/** What of the limits' measures moves by what a maker would read, or has a value in one of the two only. */
function movedTable(before: Judgement, then: Judgement, units: LengthUnit, settings: Settings): string[] {
  const now = new Map(before.limits.map((limit) => [limit.id, limit]));
  const moved = new Set(movesBetween(before.limits, then.limits, units).map(({ id }) => id));
  const rows = then.limits.flatMap((limit) => {
    const { id, load, sitter, measure } = limit;
    const old = now.get(id);
    if (measure === null || old === undefined) return [];
    const cells = [sayIn(before, old, units), sayIn(then, limit, units)];
    const differs = moved.has(id) || (old.value === null) !== (limit.value === null);
    // What moves by half a step may still be printed as one number.
    return differs && cells[0] !== cells[1]
      ? [{ label: `${whoOf(load, sitter)}: ${measureWords[measure]}`, cells }]
      : [];
  });
  return paintedTable({ title: 'What moves', heads: ['now', 'then'], rows }, settings);
}

function sayIn(judgement: Judgement, limit: JudgedLimit, units: LengthUnit): string {
  const { measure, value } = limit;
  if (measure !== null && value !== null) return sayValue(measure, value, units);
  return sayNone(judgement, limit);
}

/** In place of a value that there is none of. */
export const sayNone = (judgement: Judgement | null, of: OnLoad): string =>
  judgement !== null && isOver(judgement, of) ? 'goes over' : '-';
