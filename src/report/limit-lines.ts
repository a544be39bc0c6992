/** Limits as lines: met or not, the value, what was wanted, how far off and why. */
import type { CheckResult } from '../check-design.js';
import type { JudgedLimit } from '../checks/verdict.js';
import { sayLimit } from './limit-words.js';
import { whoOf } from './measure-words.js';
import type { Remedy } from '../explore/remedy.js';
import { remediesOfOver } from './over-remedies.js';
import { whereOf } from './surface-words.js';
import { sayRemedy } from './remedy-words.js';
import type { TextSettings } from './text-settings.js';
import { wrap } from './wrap.js';

type Units = CheckResult['design']['units'];

const marks = {
  pass: { style: 'good', text: 'met' },
  fail: { style: 'bad', text: 'NOT MET' },
  unknown: { style: 'doubt', text: 'unknown' },
} as const;

const indent = ' '.repeat(10);

export const limitLine = (limit: JudgedLimit, units: Units, settings: TextSettings): string =>
  markedLine(limit.verdict, sayLimit(limit, units), settings);

/** Of a load that goes over, whichever of its limits. */
export const overLine = ({ load, sitter, verdict, reason }: JudgedLimit, settings: TextSettings): string =>
  markedLine(verdict, `${whoOf(load, sitter)}: ${typeof reason === 'string' ? reason : ''}`, settings);

function markedLine(verdict: JudgedLimit['verdict'], said: string, { paint, columns }: TextSettings): string {
  const { style, text } = marks[verdict];
  const body = wrap(said, columns, indent).slice(indent.length);
  return `  ${paint(style, text.padEnd(indent.length - 3))} ${body}`;
}

/** Where on the runners that lies which a limit fails by. */
export function whereLines(limit: JudgedLimit, result: CheckResult, { columns }: TextSettings): string[] {
  const where = limit.verdict === 'fail' ? whereOf(limit.measure, result) : null;
  return where === null ? [] : [wrap(`on ${where}`, columns, indent)];
}

const nothingHelps =
  'no change of one size within reach was found to do it, nor of one of the nearest few with another';

/** What to change, the first as the thing to do, the others as what would do as well. */
export const remedyLines = (
  limit: JudgedLimit,
  remedies: readonly Remedy[],
  units: Units,
  settings: TextSettings,
): string[] =>
  changeLines(
    remedies.map((remedy) => sayRemedy(remedy, limit, units)),
    settings,
  );

/** The same where a load goes over. @param failed the limits that it fails by that */
export const overRemedyLines = (
  failed: readonly JudgedLimit[],
  remedies: CheckResult['remedies'],
  units: Units,
  settings: TextSettings,
): string[] =>
  changeLines(
    remediesOfOver(failed, remedies).map(({ remedy, limit, stillOpen }) =>
      sayRemedy(remedy, limit, units, stillOpen),
    ),
    settings,
  );

function changeLines(changes: readonly string[], { columns }: TextSettings): string[] {
  if (changes.length === 0) return [wrap(nothingHelps, columns, indent)];
  return changes.map((said, i) =>
    wrap(`${i === 0 ? 'change ' : 'or     '}${said}`, columns, indent, `${indent}       `),
  );
}

export const basisLine = ({ basis }: JudgedLimit, { columns }: TextSettings): string =>
  wrap(`(${basis})`, columns, indent);
