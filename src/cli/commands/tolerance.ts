/** `trueroll tolerance FILE` */
import type { Checked, Issue } from '../../design/issue.js';
import { readDesign } from '../../design/read-design.js';
import { argumentIssue } from '../../explore/argument.js';
import type { Whom } from '../../explore/anybody.js';
import { mostUnder } from '../../explore/loosest-tolerances.js';
import { toleranceOf, type ToleranceSettings } from '../../explore/tolerance.js';
import { proportionOf } from '../../numeric/proportion.js';
import { shown } from '../../quantity/source-text.js';
import { printToleranceJson, toleranceCsv } from '../../report/tolerance-json.js';
import { printToleranceText } from '../../report/tolerance-text.js';
import type { ReportedTolerance } from '../../report/tolerance-words.js';
import { answerWith, refuse, textSettings, type AnswerSettings } from '../answer.js';
import { issuesOf } from '../checked.js';
import { digestOf, readDesignText } from '../design-file.js';
import { progressOf } from '../progress.js';
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
  const file = await readDesignText(world, path);
  const read = file.ok ? readDesign(file.value.text, path, file.value.drawings) : file;
  const mistakes = [settings, read].flatMap(issuesOf);
  if (!settings.ok || !file.ok || !read.ok) return refuse(world, mistakes);
  const total = chairsIn(settings.value);
  const progress = progressOf(world, 'chairs');
  let done = 0;
  const rolled = (): void => {
    progress.done(Math.min(++done, total), total);
  };
  const found = toleranceOf(read.value, { ...settings.value, rolled });
  progress.end();
  if (!found.ok) return refuse(world, found.issues);
  const sha256 = asked.format === 'json' ? await digestOf(file.value.bytes) : null;
  return answerWith(
    world,
    print(world, { file: path, sha256, tolerance: found.value }, asked),
    asked,
    [],
    file.value.sources,
  );
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

type Settings = Omit<ToleranceSettings, 'rolled'>;

function settingsOf({ samples, seed, chance, people }: ToleranceArguments): Checked<Settings> {
  const issues: Issue[] = [];
  const whole = (option: string, text: string, from: number, to: number): number => {
    const value = /^\d+$/.test(text.trim()) ? Number(text) : NaN;
    if (value >= from && value <= to) return value;
    issues.push(wrong(option, `a whole number from ${from} to ${to}`, text));
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
    issues.push(wrong('--chance', 'a chance such as 5% or 0.05, more than 0 and less than 1', chance!));
  else if (value.chance !== null && mostUnder(value.chance, count) < 0)
    issues.push(wrong('--chance', enoughFor(value.chance, count), chance!));
  return issues.length === 0 ? { ok: true, value } : { ok: false, issues };
}

const wrong = (option: string, expected: string, text: string): Issue =>
  argumentIssue({ option, text }, { expected, found: text === '' ? 'nothing' : shown(text) });

/** What so many chairs can show, and how many can show that. */
function enoughFor(chance: number, chairs: number): string {
  const tenths = Math.ceil(1000 * proportionOf(0, chairs).high);
  const least = `at least ${tenths / 10}% with ${chairs} chairs`;
  let more = chairs;
  while (more <= samplesTo && mostUnder(chance, more) < 0) more *= 2;
  return more > samplesTo ? least : `${least}, or --samples ${more}`;
}

/** NaN: none. */
function chanceOf(text: string): number {
  const written = /^\s*(\d*\.?\d+)\s*(%?)\s*$/.exec(text);
  const chance = written === null ? NaN : Number(written[1]) / (written[2] === '%' ? 100 : 1);
  return chance > 0 && chance < 1 ? chance : NaN;
}

/** About how many chairs are rolled: the loosest tolerances take a proof or two. */
const chairsIn = ({ samples, people, chance }: Settings): number =>
  samples * (1 + (people === null ? 0 : 1) + (chance === null ? 0 : 2));
