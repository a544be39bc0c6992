/** Limits as lines: met or not, the value, what was wanted, how far off and why. */
import type { CheckResult } from '../check-design.js';
import type { JudgedLimit } from '../checks/verdict.js';
import { sayLimit } from './limit-words.js';
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
