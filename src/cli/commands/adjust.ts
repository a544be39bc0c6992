/** `trueroll adjust FILE` */
import type { Verdict } from '../../checks/verdict.js';
import { adjust as adjusted, type Adjusted } from '../../explore/adjust.js';
import { printAdjustmentJson } from '../../report/adjust-json.js';
import { printAdjustment } from '../../report/adjust-text.js';
import { answerWith, refuse, textSettings, type AnswerSettings } from '../answer.js';
import { digestOf, readDesignText } from '../design-file.js';
import { progressOf } from '../progress.js';
import type { World } from '../world.js';

export interface AdjustSettings extends AnswerSettings {
  readonly to: readonly string[];
  readonly by: readonly string[];
  readonly format: 'text' | 'json';
}

export async function adjust(world: World, path: string, settings: AdjustSettings): Promise<number> {
  const file = await readDesignText(world, path);
  if (!file.ok) return refuse(world, file.issues);
  const { text, bytes, drawings, sources } = file.value;
  const progress = progressOf(world, 'searches');
  const found = adjusted({ text, file: path, drawings, to: settings.to, by: settings.by }, progress.done);
  progress.end();
  if (!found.ok) return refuse(world, found.issues);
  const answer =
    settings.format === 'json'
      ? printAdjustmentJson({ file: path, sha256: await digestOf(bytes), adjusted: found.value })
      : printAdjustment(found.value, textSettings(world, settings));
  return answerWith(world, answer, settings, [verdictOf(found.value)], sources);
}

/** Without a solution what was asked for is not met; limits that there are none of are not met either. */
function verdictOf({ targets, before, solutions }: Adjusted): Verdict {
  if (targets.length === 0 && before.limits.length === 0) return 'unknown';
  return solutions.length > 0 ? 'pass' : 'fail';
}
