/** A design as its file states it: where what is asked on a command line begins. */
import type { Checked } from '../design/issue.js';
import { readDesign, type Design } from '../design/read-design.js';
import { designBuilder, type BuiltDesign } from './design-function.js';

export interface StatedDesign {
  readonly design: Design;
  readonly stated: BuiltDesign;
}

/** Mistakes of the file, or that it cannot be built. */
export function statedDesign({
  text,
  file,
}: {
  readonly text: string;
  readonly file: string;
}): Checked<StatedDesign> {
  const read = readDesign(text, file);
  if (!read.ok) return read;
  const stated = designBuilder(read.value)();
  return stated.ok ? { ok: true, value: { design: read.value, stated } } : stated;
}
