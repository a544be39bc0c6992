/** `trueroll tolerance FILE` */
import type { Issue } from '../../design/issue.js';
import { readDesign } from '../../design/read-design.js';
import type { Whom } from '../../explore/anybody.js';
import { mostUnder } from '../../explore/loosest-tolerances.js';
import { toleranceOf, type ToleranceSettings } from '../../explore/tolerance.js';
import { printToleranceJson, toleranceCsv } from '../../report/tolerance-json.js';
import { printToleranceText } from '../../report/tolerance-text.js';
import type { ReportedTolerance } from '../../report/tolerance-words.js';
import { answerWith, refuse, textSettings, type AnswerSettings } from '../answer.js';
import { readText } from '../design-file.js';
import type { World } from '../world.js';

export interface ToleranceArguments extends AnswerSettings {
  readonly samples: string;
  readonly seed: string;
  readonly chance?: string;
  readonly people?: Whom;
  readonly format: 'text' | 'json' | 'csv';
  readonly all?: boolean;
}

export async function tolerance(world: World, path: string, asked: ToleranceArguments): Promise<number> {
  const settings = settingsOf(asked);
  const file = await readText(world, path, asked.format === 'json');
  const read = file.ok ? readDesign(file.value.text, path) : file;
  const wrong = [...(settings.ok ? [] : settings.issues), ...(read.ok ? [] : read.issues)];
  if (!settings.ok || !file.ok || !read.ok) return refuse(world, wrong);
  const counted = counter(world);
  const found = toleranceOf(read.value, { ...settings.value, progress: counted.count });
  counted.clear();
  if (!found.ok) return refuse(world, found.issues);
  const reported = { file: path, sha256: file.value.sha256, tolerance: found.value };
  return answerWith(world, print(world, reported, asked), asked, [], [path]);
}

function print(world: World, reported: ReportedTolerance, asked: ToleranceArguments): string {
  switch (asked.format) {
    case 'json':
      return printToleranceJson(reported);
    case 'csv':
      return toleranceCsv(reported);
    case 'text':
      return printToleranceText(reported.tolerance, {
        ...textSettings(world, asked),
        all: asked.all ?? false,
      });
  }
}

/** Fewer say nothing; more would take hours. */
const samplesFrom = 16;
const samplesTo = 65_536;

type Settings = Omit<ToleranceSettings, 'progress'>;

function settingsOf({
  samples,
  seed,
  chance,
  people,
}: ToleranceArguments):
  | { readonly ok: true; readonly value: Settings }
  | { readonly ok: false; readonly issues: readonly Issue[] } {
  const issues: Issue[] = [];
  const whole = (option: string, text: string, from: number, to: number): number => {
    const value = /^\d+$/.test(text.trim()) ? Number(text) : NaN;
    if (value >= from && value <= to) return value;
    issues.push(argumentIssue(option, `a whole number from ${from} to ${to}`, text));
    return from;
  };
  const count = 2 ** Math.ceil(Math.log2(whole('--samples', samples, samplesFrom, samplesTo)));
  const value = {
    samples: count,
    seed: whole('--seed', seed, 0, 2 ** 32 - 1),
    chance: chance === undefined ? null : chanceOf(chance),
    people: people ?? null,
  };
  if (Number.isNaN(value.chance))
    issues.push(
      argumentIssue('--chance', 'a chance such as 5% or 0.05, more than 0 and less than 1', chance!),
    );
  else if (value.chance !== null && mostUnder(value.chance, count) < 0)
    issues.push(
      argumentIssue('--chance', `a chance that ${count} chairs can show, or more --samples`, chance!),
    );
  return issues.length === 0 ? { ok: true, value } : { ok: false, issues };
}

const argumentIssue = (option: string, expected: string, found: string): Issue => ({
  file: option,
  line: null,
  column: null,
  expected,
  found: found === '' ? 'nothing' : found,
});

/** NaN: none. */
function chanceOf(text: string): number {
  const written = /^\s*(\d*\.?\d+)\s*(%?)\s*$/.exec(text);
  const chance = written === null ? NaN : Number(written[1]) / (written[2] === '%' ? 100 : 1);
  return chance > 0 && chance < 1 ? chance : NaN;
}

/** Work that takes over a second is told of on a terminal, a few times a second. */
const silent = 1000;
const again = 200;

function counter({ stderr }: World): { readonly count: (done: number) => void; readonly clear: () => void } {
  if (!stderr.isTTY) return { count: () => undefined, clear: () => undefined };
  let next = performance.now() + silent;
  let told = false;
  return {
    count: (done) => {
      if (performance.now() < next) return;
      next = performance.now() + again;
      told = true;
      stderr.write(`\r${done} chairs rolled`);
    },
    clear: () => {
      if (told) stderr.write(`\r${' '.repeat(30)}\r`);
    },
  };
}
