/** `trueroll check FILE…` */
import { createHash } from 'node:crypto';
import { styleText } from 'node:util';
import { checkDesign, type CheckResult } from '../../check-design.js';
import type { Verdict } from '../../checks/verdict.js';
import { describeIssue, type Issue } from '../../design/issue.js';
import { printJson, reportJson } from '../../report/json.js';
import { widest, type Style } from '../../report/text-settings.js';
import { printText } from '../../report/text.js';
import { exitCodes, FileTrouble, type World } from '../world.js';

export interface CheckSettings {
  readonly format: 'text' | 'json';
  readonly out?: string;
  readonly all?: boolean;
  readonly parts?: boolean;
  readonly assumed?: boolean;
  readonly quiet?: boolean;
  readonly secondOpinion: boolean;
}

interface CheckedFile {
  readonly result: CheckResult;
  readonly sha256: string;
}

export async function check(
  world: World,
  paths: readonly string[],
  settings: CheckSettings,
): Promise<number> {
  const checked: CheckedFile[] = [];
  const issues: Issue[] = [];
  for (const path of paths) {
    const answer = await checkFile(world, path);
    if ('issues' in answer) issues.push(...answer.issues);
    else checked.push(answer);
  }
  if (issues.length > 0) {
    for (const issue of issues) world.stderr.write(`${describeIssue(issue)}\n`);
    return exitCodes.cannotJudge;
  }
  const answer = print(world, checked, settings);
  if (settings.out !== undefined) {
    const trouble = await writeOut(world, settings.out, answer);
    if (trouble) return exitCodes.cannotJudge;
  } else if (!settings.quiet) world.stdout.write(answer);
  return exitCodeOf(checked.map(({ result }) => result.verdict));
}

async function checkFile(world: World, path: string): Promise<CheckedFile | { issues: readonly Issue[] }> {
  const bytes = await bytesOf(world, path);
  if ('expected' in bytes) return { issues: [bytes] };
  const text = textOf(bytes);
  if (text === null)
    return { issues: [{ ...whole(path), expected: 'text (UTF-8)', found: 'bytes that are no text' }] };
  const answer = checkDesign(text, path);
  if (!answer.ok) return answer;
  return { result: answer.value, sha256: createHash('sha256').update(bytes).digest('hex') };
}

const whole = (file: string): Pick<Issue, 'file' | 'line' | 'column'> => ({ file, line: null, column: null });

async function bytesOf(world: World, path: string): Promise<Uint8Array | Issue> {
  try {
    return await (path === '-' ? world.stdin() : world.files.read(path));
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    return { ...whole(path), expected: 'a design file that can be read', found: error.message };
  }
}

function textOf(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function print(
  world: World,
  checked: readonly CheckedFile[],
  { format, out, all, parts, assumed }: CheckSettings,
): string {
  if (format === 'json') return printJson(checked.map(({ result, sha256 }) => reportJson(result, sha256)));
  const toTerminal = out === undefined && world.stdout.isTTY;
  const settings = {
    columns: Math.min(toTerminal ? (world.stdout.columns ?? widest) : widest, widest),
    all: all ?? false,
    parts: parts ?? false,
    assumed: assumed ?? false,
    paint: toTerminal && !world.env['NO_COLOR'] ? inColour : (_: Style, text: string) => text,
  };
  return checked.map(({ result }) => printText(result, settings)).join('\n');
}

function inColour(style: Style, text: string): string {
  const formats = { good: 'green', bad: 'red', doubt: 'yellow', heading: 'bold' } as const;
  return styleText(formats[style], text, { validateStream: false });
}

async function writeOut(world: World, path: string, text: string): Promise<boolean> {
  try {
    await world.files.write(path, text);
    return false;
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    world.stderr.write(`${path}: expected a file that can be written, found ${error.message}\n`);
    return true;
  }
}

/** Of several designs the worst: one that could not be judged, then one that fails. */
function exitCodeOf(verdicts: readonly Verdict[]): number {
  if (verdicts.includes('unknown')) return exitCodes.cannotJudge;
  return verdicts.includes('fail') ? exitCodes.notMet : exitCodes.met;
}
