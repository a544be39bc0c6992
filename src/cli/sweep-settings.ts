/** What `trueroll sweep` is given, as commander hands it on. */
import type { SweepFormat } from '../report/sweep-formats.js';
import type { AnswerSettings } from './answer.js';

export interface SweepSettings extends AnswerSettings {
  readonly vary: readonly string[];
  readonly show: readonly string[];
  readonly loads?: string;
  readonly format?: SweepFormat;
  readonly share?: string;
  readonly join?: readonly string[];
  readonly threads?: string;
}
