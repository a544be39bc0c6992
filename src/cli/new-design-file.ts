/** Where a design that is begun goes. */
import { issueOfWhole, type Checked, type Issue } from '../design/issue.js';
import { unwritable } from './answer.js';
import { refused } from './checked.js';
import type { World } from './world.js';

export interface DesignPlace {
  readonly out?: string;
  readonly overwrite?: boolean;
}

/**
 * To the file of `--out`, over none that is there unless that is asked for: a design is somebody’s work; or said.
 * @param read never written over
 */
export async function writeDesign(
  { files, stdout }: World,
  text: string,
  { out, overwrite = false }: DesignPlace,
  read: readonly string[],
): Promise<Checked<null>> {
  if (out === undefined) {
    stdout.write(text);
    return { ok: true, value: null };
  }
  try {
    if (!overwrite && (await files.isFile(out))) return refused(thereAlready(out));
    await files.write(out, text, read);
    return { ok: true, value: null };
  } catch (error) {
    return refused(unwritable(out, error));
  }
}

const thereAlready = (out: string): Issue =>
  issueOfWhole(out, 'a name that no file has yet', 'a file', 'with `--overwrite` it is written over');
