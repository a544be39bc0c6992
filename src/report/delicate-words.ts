/** Which sizes are most delicate, in words. */
import type { CheckResult } from '../check-design.js';
import type { Delicate } from '../explore/most-delicate.js';
import { formatLength } from '../quantity/print.js';
import { printedStep } from '../quantity/printed-step.js';
import type { LengthUnit } from '../quantity/units.js';
import { limitedWords, whoOf } from './measure-words.js';
import type { TextSettings } from './text-settings.js';
import { wrap } from './wrap.js';

export function delicateLines(
  { delicate, design }: CheckResult,
  { paint, columns }: Pick<TextSettings, 'paint' | 'columns'>,
): string[] {
  const lines = delicate().map((one) => wrap(sayDelicate(one, design.units), columns, '  ', '    '));
  return lines.length === 0 ? [] : [paint('heading', 'Most delicate, all else as drawn'), ...lines];
}

/** 'touch: 1/2 in less, and tallest is out of a limit: seat slope, front higher'. */
export function sayDelicate({ name, by, limit }: Delicate, units: LengthUnit): string {
  const { load, sitter, measure } = limit;
  return `${name}: ${sayLess(by, units)}, and ${whoOf(load, sitter)} is out of a limit: ${limitedWords(measure)}`;
}

/** Rounded down: what is said is not yet out, but for less than a step. */
function sayLess(by: number, units: LengthUnit): string {
  const step = printedStep('length', units);
  const steps = Math.floor(Math.abs(by) / step);
  const way = by > 0 ? 'more' : 'less';
  return steps === 0
    ? `under ${formatLength(step, units)} ${way}`
    : `${formatLength(steps * step, units)} ${way}`;
}
