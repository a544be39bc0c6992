/** Where a long answer goes piece by piece: standard output, or a file that stands only when it is whole. */
import type { Checked } from '../design/issue.js';
import { unwritable, type AnswerSettings } from './answer.js';
import { refused } from './checked.js';
import type { World } from './world.js';

export interface Sink {
  /** false: nobody reads any more. */
  readonly write: (text: string) => Promise<boolean>;
  readonly finish: () => Promise<void>;
  readonly discard: () => Promise<void>;
}

const none = (): Promise<void> => Promise.resolve();

/** @param read the files that were read, which are not written over */
export async function sinkFor(
  { stdout, files }: World,
  { out, quiet }: AnswerSettings,
  read: readonly string[],
): Promise<Checked<Sink>> {
  if (out !== undefined) {
    try {
      const draft = await files.draft(out, read);
      const value = { ...draft, write: (text: string) => draft.write(text).then(() => true) };
      return { ok: true, value };
    } catch (error) {
      return refused(unwritable(out, error));
    }
  }
  const write = async (text: string): Promise<boolean> => {
    if (quiet) return true;
    stdout.write(text);
    return stdout.ready();
  };
  return { ok: true, value: { write, finish: none, discard: none } };
}
