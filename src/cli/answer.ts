/** Where an answer goes, how it is set on a terminal, and the exit code. */
import { styleText } from 'node:util';
import type { Verdict } from '../checks/verdict.js';
import { describeIssue, issueOfWhole, type Issue } from '../design/issue.js';
import { printable } from '../report/printable.js';
import { widest, type Style, type TextSettings } from '../report/text-settings.js';
import { exitCodes, isFileTrouble, type World } from './world.js';

export interface AnswerSettings {
  readonly out?: string;
  readonly quiet?: boolean;
}

/**
 * Writes the answer to the file of `--out`, or says it; the exit code, which is that of the verdicts when all went well.
 * @param read the files that were read, which are not written over
 */
export async function answerWith(
  world: World,
  text: string,
  { out, quiet }: AnswerSettings,
  verdicts: readonly Verdict[],
  read: readonly string[],
): Promise<number> {
  if (out === undefined) {
    if (!quiet) world.stdout.write(text);
    return exitCodeOf(verdicts);
  }
  try {
    await world.files.write(out, text, read);
  } catch (error) {
    return refuse(world, [unwritable(out, error)]);
  }
  return exitCodeOf(verdicts);
}

export function refuse({ stderr }: World, issues: readonly Issue[]): number {
  for (const issue of issues) stderr.write(`${printable(describeIssue(issue))}\n`);
  return exitCodes.cannotJudge;
}

/** Of several designs the worst: one that could not be judged, then one that fails. */
function exitCodeOf(verdicts: readonly Verdict[]): number {
  if (verdicts.includes('unknown')) return exitCodes.cannotJudge;
  return verdicts.includes('fail') ? exitCodes.notMet : exitCodes.met;
}

/** @throws what is no trouble with a file */
export function unwritable(out: string, error: unknown): Issue {
  if (!isFileTrouble(error)) throw error;
  return issueOfWhole(out || '--out', 'a file that can be written', error.message);
}

/** What a text is set for: plain data. */
export interface Screen {
  readonly columns: number;
  readonly coloured: boolean;
}

/** Coloured and as wide as the terminal, where there is one. */
export function screenFor({ stdout, env }: World, { out }: AnswerSettings): Screen {
  const toTerminal = out === undefined && stdout.isTTY;
  return {
    columns: Math.min(toTerminal ? (stdout.columns ?? widest) : widest, widest),
    coloured: toTerminal && !env['NO_COLOR'],
  };
}

export const settingsFor = ({ columns, coloured }: Screen): Pick<TextSettings, 'columns' | 'paint'> => ({
  columns,
  paint: coloured ? inColour : (_: Style, text: string) => text,
});

export const textSettings = (
  world: World,
  settings: AnswerSettings,
): Pick<TextSettings, 'columns' | 'paint'> => settingsFor(screenFor(world, settings));

function inColour(style: Style, text: string): string {
  const formats = { good: 'green', bad: 'red', doubt: 'yellow', heading: 'bold' } as const;
  return styleText(formats[style], text, { validateStream: false });
}
