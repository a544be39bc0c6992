/** Numbers as makers write them: 42, 16.375, .5, 3/4, ⅝, 1 3/4, 1-3/4, 1¾. A mixed number is one number. */
import { refuse } from './reading.js';
import { dash, matchAt, shown, slash, vulgarFraction } from './source-text.js';

export interface WrittenNumber {
  readonly at: number;
  readonly end: number;
  readonly value: number;
  /** `dashed`: mixed, with a dash between the whole number and the fraction. */
  readonly form: 'whole' | 'decimal' | 'fraction' | 'mixed' | 'dashed';
}

// What follows a fraction is not one more digit, nor a point, nor an exponent.
const anyFraction = `(?:(?<over>\\d+)\\s*${slash}\\s*(?<under>\\d+)(?![.\\d]|[eE][+-]?\\d)|(?<vulgar>${vulgarFraction}))`;
const plainHere = /^(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?/;
const fractionHere = new RegExp(`^${anyFraction}`);
const mixedHere = new RegExp(`^(?<whole>\\d+)(?<between>\\s+|${dash}|(?=${vulgarFraction}))${anyFraction}`);

/** 42, 16.375, .5, 1e-3; null when no number starts here. */
export function readPlainNumber(source: string, at: number): WrittenNumber | null {
  const text = matchAt(source, at, plainHere)?.[0];
  if (text === undefined) return null;
  return writtenNumber(at, text, Number(text), /^\d+$/.test(text) ? 'whole' : 'decimal');
}

/** 3/4, 12 / 5, ⅝. */
export function readFraction(source: string, at: number): WrittenNumber | null {
  const match = matchAt(source, at, fractionHere);
  if (!match) return null;
  const { over, under } = fractionOf(match);
  if (under === 0) refuse(at, 'a fraction', shown(match[0]), 'the number below the line cannot be 0');
  return writtenNumber(at, match[0], over / under, 'fraction');
}

/** 1 3/4, 1-3/4, 1¾, 1 ¾. */
export function readMixedNumber(source: string, at: number): WrittenNumber | null {
  const match = matchAt(source, at, mixedHere);
  if (!match) return null;
  const { over, under } = fractionOf(match);
  const { whole, between } = match.groups!;
  const form = between!.trim() === '' ? 'mixed' : 'dashed';
  if (!(over < under)) {
    const difference = form === 'dashed' ? `; a difference is \`${whole!} - (${over}/${under})\`` : '';
    const hint = `its upper number is less than its lower one${difference}`;
    refuse(at, 'a mixed number such as `1 3/4`', shown(match[0]), hint);
  }
  return writtenNumber(at, match[0], Number(whole) + over / under, form);
}

function writtenNumber(at: number, text: string, value: number, form: WrittenNumber['form']): WrittenNumber {
  if (!Number.isFinite(value)) refuse(at, 'a number of ordinary size', shown(text));
  return { at, end: at + text.length, value, form };
}

/** Compatibility decomposition (Unicode NFKC) makes ¾ of digits and a fraction slash: 3⁄4. */
function fractionOf(match: RegExpExecArray): { over: number; under: number } {
  const { over, under, vulgar } = match.groups!;
  const [top, bottom] = vulgar === undefined ? [over, under] : vulgar.normalize('NFKC').split('\u2044');
  return { over: Number(top), under: Number(bottom) };
}

const spacedFraction = new RegExp(`^\\s*${dash}\\s*${anyFraction}`);
const dashedFraction = new RegExp(`^${dash}${anyFraction}`);

/**
 * `2 - 1/2` may be one number or a difference, and so may `1.5-3/4`: refused.
 * `12 - 7/2` can only be a difference.
 */
export function refuseUnclearDash(source: string, number: WrittenNumber): void {
  if (number.form !== 'whole' && number.form !== 'decimal') return;
  const match = matchAt(source, number.end, number.form === 'whole' ? spacedFraction : dashedFraction);
  if (!match) return;
  const { over, under } = fractionOf(match);
  if (!(over < under)) return;
  const front = source.slice(number.at, number.end);
  const one = number.form === 'whole' ? `write \`${front} ${over}/${under}\` for one number, ` : 'write ';
  const two = `\`${front} - (${over}/${under})\` for a difference, \`3 in - 1/2 in\` for a difference of lengths`;
  const found = `${shown(front + match[0])}, which may be one number or two`;
  refuse(number.at, 'a clear sum or difference', found, one + two);
}
