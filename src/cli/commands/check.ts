/** `trueroll check FILE…` */
import { withRemedies, withSecondOpinion } from '../../check-design.js';
import type { Issue } from '../../design/issue.js';
import type { Stage } from '../../explore/reaches.js';
import { historiesCsv, historiesJson } from '../../report/histories.js';
import { printJson, reportJson } from '../../report/json.js';
import { printJunit } from '../../report/junit.js';
import { printMarkdown } from '../../report/markdown.js';
import { printText } from '../../report/text.js';
import { answerWith, refuse, textSettings, type AnswerSettings } from '../answer.js';
import { issuesOf } from '../checked.js';
import { checkFile, type DesignFile } from '../design-file.js';
import { progressOf } from '../progress.js';
import type { World } from '../world.js';

export interface CheckSettings extends AnswerSettings {
  readonly format: 'text' | 'json' | 'junit' | 'markdown';
  readonly all?: boolean;
  readonly parts?: boolean;
  readonly assumed?: boolean;
  readonly histories?: boolean;
  readonly secondOpinion: boolean;
  readonly stage: Stage;
}

export async function check(
  world: World,
  paths: readonly string[],
  settings: CheckSettings,
): Promise<number> {
  const checked: DesignFile[] = [];
  const issues: Issue[] = [];
  for (const path of paths) {
    const answer = await checkFile(world, path, settings.format === 'json' || settings.format === 'junit');
    issues.push(...issuesOf(answer));
    if (answer.ok) checked.push(answer.value);
  }
  if (issues.length > 0) return refuse(world, issues);
  if (settings.secondOpinion)
    for (const [i, file] of checked.entries())
      checked[i] = { ...file, result: await withSecondOpinion(file.result) };
  if (settings.histories !== true && settings.quiet !== true)
    for (const [i, file] of checked.entries()) checked[i] = remedied(world, file, settings);
  const verdicts = checked.map(({ result }) => result.verdict);
  const sources = checked.flatMap((file) => file.sources);
  return answerWith(world, print(world, checked, settings), settings, verdicts, sources);
}

/** With what to change, where it does not pass. */
function remedied(world: World, file: DesignFile, { stage }: CheckSettings): DesignFile {
  const { result, text, drawings } = file;
  if (result.verdict !== 'fail') return file;
  const line = progressOf(world, 'dimensions tried for what to change');
  const mended = withRemedies(result, text, { stage, progress: line.done }, drawings);
  line.end();
  return { ...file, result: mended };
}

function print(world: World, checked: readonly DesignFile[], settings: CheckSettings): string {
  if (settings.histories === true) {
    const results = checked.map(({ result }) => result);
    const table = settings.out !== undefined && !settings.out.toLowerCase().endsWith('.json');
    return table ? historiesCsv(results) : historiesJson(results);
  }
  switch (settings.format) {
    case 'json':
      return printJson(checked.map(({ result, sha256 }) => reportJson(result, sha256)));
    case 'junit':
      return printJunit(checked);
    case 'markdown':
      return printMarkdown(checked.map(({ result }) => result));
    case 'text': {
      const { all = false, parts = false, assumed = false } = settings;
      const how = { ...textSettings(world, settings), all, parts, assumed };
      return checked.map(({ result }) => printText(result, how)).join('\n');
    }
  }
}
