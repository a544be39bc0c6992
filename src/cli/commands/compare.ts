/** `trueroll compare OLD NEW` */
import { compareDesigns, type Comparable } from '../../checks/compare.js';
import { readDesign } from '../../design/read-design.js';
import { printComparisonJson } from '../../report/compare-json.js';
import { printCompareMarkdown } from '../../report/compare-markdown.js';
import { printCompareText } from '../../report/compare-text.js';
import type { Compared } from '../../report/compared.js';
import { issueOfWhole } from '../../design/issue.js';
import { answerWith, refuse, textSettings, type AnswerSettings } from '../answer.js';
import { issuesOf } from '../checked.js';
import { checkFile, type DesignFile } from '../design-file.js';
import type { World } from '../world.js';

export interface CompareSettings extends AnswerSettings {
  readonly format: 'text' | 'json' | 'markdown';
}

export async function compare(
  world: World,
  oldPath: string,
  newPath: string,
  settings: CompareSettings,
): Promise<number> {
  if (oldPath === '-' && newPath === '-') return refuse(world, [twice]);
  const digest = settings.format === 'json';
  const [old, now] = [await checkFile(world, oldPath, digest), await checkFile(world, newPath, digest)];
  if (!old.ok || !now.ok) return refuse(world, [old, now].flatMap(issuesOf));
  const { units } = now.value.result.design;
  const comparison = compareDesigns(comparable(old.value), comparable(now.value), units);
  const answer = print(world, { old: old.value, new: now.value, comparison }, settings);
  return answerWith(
    world,
    answer,
    settings,
    [now.value.result.verdict],
    [...old.value.sources, ...now.value.sources],
  );
}

const twice = issueOfWhole('-', 'standard input for one of the two designs', 'it named for both');

/** The text was read without a mistake before: this reads its named dimensions. */
function comparable({ result, text, drawings }: DesignFile): Comparable {
  const read = readDesign(text, result.file, drawings);
  if (!read.ok) throw new RangeError(`comparable: ${result.file} reads differently a second time`);
  return { ...result, dimensions: read.value.dimensions };
}

function print(world: World, compared: Compared, settings: CompareSettings): string {
  switch (settings.format) {
    case 'json':
      return printComparisonJson(compared);
    case 'markdown':
      return printCompareMarkdown(compared);
    case 'text':
      return printCompareText(compared, textSettings(world, settings));
  }
}
