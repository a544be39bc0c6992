/** How far each limit of a tolerance report spreads, and how often it is missed. */
import type { Tolerance } from '../explore/tolerance.js';
import type { Outcome, SpreadLimit } from '../explore/trial.js';
import { measures } from '../names.js';
import { printedStep } from '../quantity/printed-step.js';
import { sayFinely } from './fine-words.js';
import { sayWanted } from './limit-words.js';
import { limitedWords, whoOf } from './measure-words.js';
import { sayShare, type ToleranceTextSettings } from './tolerance-words.js';
import { wrap } from './wrap.js';

/** Those that are missed at all, with what is wanted. */
export function missedLines(
  { limits }: Outcome,
  title: string,
  { design }: Tolerance,
  { paint, columns }: ToleranceTextSettings,
): string[] {
  const missed = limits.filter((one) => one.missed.share > 0);
  if (missed.length === 0) return [];
  const said = missed.map((one) => {
    const { measure, range } = one;
    const wanted = measure === null ? '' : `, wanted ${sayWanted(measure, range, design.units)}`;
    return wrap(`${sayShare(one.missed)}: ${nameOf(one)}${wanted}`, columns, '  ', '    ');
  });
  const others = limits.length - missed.length;
  const [first] = limits.filter(({ missed: { share } }) => share === 0);
  const rest = first ? [`  ${sayShare(first.missed)}: each of the other ${others}`] : [];
  return [paint('heading', title), ...said, ...rest];
}

/** By less than a twentieth of the step that a maker reads it in, it does not move. */
const unmoved = 1 / 20;

export function moves({ measure, spread, missed }: SpreadLimit, { design }: Tolerance): boolean {
  if (missed.share > 0) return true;
  if (measure === null || spread === null) return false;
  return spread.deviation > unmoved * printedStep(measures[measure].kind, design.units);
}

export const labelOf = ({
  load,
  sitter,
  measure,
}: Pick<SpreadLimit, 'load' | 'sitter' | 'measure'>): string =>
  `${whoOf(load, sitter)}: ${limitedWords(measure)}`;

/** Nobody in particular is not named. */
export const nameOf = (one: SpreadLimit): string => labelOf(one).replace(/^anybody(?:, |: )/, '');

export const sayValueOf = ({ measure }: SpreadLimit, value: number | null, { design }: Tolerance): string =>
  value === null || measure === null ? '-' : sayFinely(measure, value, design.units);

export const sayRangeOf = (one: SpreadLimit, tolerance: Tolerance): string =>
  one.spread === null
    ? '-'
    : [one.spread.low, one.spread.high].map((end) => sayValueOf(one, end, tolerance)).join(' to ');
