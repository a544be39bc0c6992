/** Limits as lines: met or not, the value, what was wanted, how far off and why. */
import type { CheckResult } from '../check-design.js';
import type { JudgedLimit } from '../checks/verdict.js';
import { measureWords, sayValue, whoOf } from './measure-words.js';
import { sayReason } from './say-reason.js';
import type { TextSettings } from './text-settings.js';
import { wrap } from './wrap.js';

type Units = CheckResult['design']['units'];

const marks = {
  pass: { style: 'good', text: 'met' },
  fail: { style: 'bad', text: 'NOT MET' },
  unknown: { style: 'doubt', text: 'unknown' },
} as const;

const indent = ' '.repeat(10);

export function limitLine(limit: JudgedLimit, units: Units, { paint, columns }: TextSettings): string {
  const { style, text } = marks[limit.verdict];
  const body = wrap(sayLimit(limit, units), columns, indent).slice(indent.length);
  return `  ${paint(style, text.padEnd(indent.length - 3))} ${body}`;
}

export const basisLine = ({ basis }: JudgedLimit, { columns }: TextSettings): string =>
  wrap(`(${basis})`, columns, indent);

function sayLimit(limit: JudgedLimit, units: Units): string {
  const { load, sitter, measure, range, value, margin, reason } = limit;
  const who = whoOf(load, sitter);
  const why = reason === null ? '' : sayReason(reason, units);
  if (measure === null) return `${who}: ${why}`;
  const say = (number: number): string => sayValue(measure, number, units);
  const [what, wanted] = [`${who}: ${measureWords[measure] ?? measure}`, sayRange(range, say)];
  if (value === null || margin === null) return `${what}, wanted ${wanted}: ${why}`;
  if (margin >= 0) return `${what}: ${say(value)}, wanted ${wanted}`;
  const off = value > (range.max ?? Infinity) ? 'too much' : 'too little';
  return `${what}: ${say(value)}, wanted ${wanted}: ${sayShort(say(-margin), say(0))} ${off}`;
}

/** A shortfall that rounds to nothing is still one. */
const sayShort = (short: string, nothing: string): string => (short === nothing ? 'a little' : short);

function sayRange({ min, max }: JudgedLimit['range'], say: (number: number) => string): string {
  if (min !== null && max !== null) return min === max ? say(min) : `${say(min)} to ${say(max)}`;
  if (min !== null) return `at least ${say(min)}`;
  return max === null ? 'any' : `at most ${say(max)}`;
}
