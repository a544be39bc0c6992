/** `trueroll adjust FILE` */
import { adjust as adjusted } from '../../explore/adjust.js';
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
  const { text, bytes } = file.value;
  const progress = progressOf(world, 'searches');
  const found = adjusted({ text, file: path, to: settings.to, by: settings.by }, progress.done);
  progress.end();
  if (!found.ok) return refuse(world, found.issues);
  const answer =
    settings.format === 'json'
      ? printAdjustmentJson({ file: path, sha256: await digestOf(bytes), adjusted: found.value })
      : printAdjustment(found.value, textSettings(world, settings));
  // Without a solution what was asked for is not met.
  return answerWith(world, answer, settings, found.value.solutions.length > 0 ? ['pass'] : ['fail'], [path]);
}
