/** A design as its file states it: where what is asked on a command line begins. */
import type { DrawingFiles } from '../design/drawing-files.js';
import type { Checked } from '../design/issue.js';
import { readDesign, type Design } from '../design/read-design.js';
import { designBuilder, type BuiltDesign } from './design-function.js';

export interface StatedDesign {
  readonly design: Design;
  readonly stated: BuiltDesign;
}

/** What is asked of a design begins with it. */
export interface DesignSource {
  /** Of the design file. */
  readonly text: string;
  readonly file: string;
  /** The drawing files that it names, by those names; left out: it names none. */
  readonly drawings?: DrawingFiles;
}

/** Mistakes of the file, or that it cannot be built. */
export function statedDesign({ text, file, drawings }: DesignSource): Checked<StatedDesign> {
  const read = readDesign(text, file, drawings);
  if (!read.ok) return read;
  const stated = designBuilder(read.value)();
  return stated.ok ? { ok: true, value: { design: read.value, stated } } : stated;
}
