/** One share of a sweep as a file: its head, its rows in their order, its end. It is read through before it is used. */
import { issueOfWhole, type Checked, type Issue } from '../design/issue.js';
import { stretchOfShare, type Stretch } from '../explore/grid.js';
import {
  shareEndSchema,
  shareHeadSchema,
  sweepRowSchema,
  type ShareEndObject,
  type ShareHeadObject,
  type SweepRowObject,
} from '../report/sweep-schema.js';
import { tool } from '../report/tool.js';
import { refused } from './checked.js';
import { isFileTrouble, type Files, type World } from './world.js';

export interface Share {
  readonly path: string;
  readonly head: ShareHeadObject;
}

/** @returns the share where every line of it is as a sweep writes it */
export async function readShare({ files }: World, path: string): Promise<Checked<Share>> {
  try {
    return await readThrough(files, path);
  } catch (error) {
    if (!isFileTrouble(error)) throw error;
    return refused(issueOfWhole(path, 'a share that can be read', error.message));
  }
}

const written = 'a share as `trueroll sweep --share` writes it';

async function readThrough(files: Files, path: string): Promise<Checked<Share>> {
  let head: ShareHeadObject | undefined;
  let end: ShareEndObject | undefined;
  let [line, next] = [0, 0];
  for await (const text of files.lines(path)) {
    line++;
    const found = parsed(text);
    if (head === undefined) {
      head = shareHeadSchema.safeParse(found).data;
      if (head === undefined) return refused(issueOfWhole(path, written, 'another file'));
      const stranger = otherVersion(path, head);
      if (stranger !== null) return refused(stranger);
      next = stretchOf(head).from + 1;
      continue;
    }
    if (end !== undefined)
      return refused({ ...issueOfWhole(path, 'nothing after its end', 'another line'), line, column: 1 });
    const fault = faultIn(found, next, head);
    if (fault === null) next++;
    else if ((end = shareEndSchema.safeParse(found).data) === undefined)
      return refused({ ...issueOfWhole(path, `design ${next}`, fault), line, column: 1 });
  }
  if (head === undefined) return refused(issueOfWhole(path, written, 'an empty file'));
  const cut = cutOff(path, head, end, next);
  return cut === null ? { ok: true, value: { path, head } } : refused(cut);
}

const stretchOf = ({ share, of, head: { designs } }: ShareHeadObject): Stretch =>
  stretchOfShare(designs, share, of);

/** Another version may count or print otherwise: what is joined would be no version's answer. */
function otherVersion(path: string, { share, of, head }: ShareHeadObject): Issue | null {
  const [own, made] = [tool, head.tool].map(({ name, version }) => `${name} ${version}`);
  if (made === own) return null;
  const again = `make it again: --share ${share}/${of}`;
  return issueOfWhole(path, `a share made by ${own}`, `one by ${made}`, again);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What stands there in place of that design; null: it is the one. */
function faultIn(found: unknown, design: number, { head }: ShareHeadObject): string | null {
  const row = sweepRowSchema.safeParse(found);
  if (!row.success) {
    const [first] = row.error.issues;
    const field = first?.path[0];
    return field === undefined ? 'something else' : `something else, by its \`${String(field)}\``;
  }
  const { design: own, values, measures } = row.data;
  if (own !== design) return `design ${own}`;
  if (values.length !== head.varied.length)
    return `one of ${values.length} values where ${head.varied.length} are varied`;
  return measures.length === head.columns.length
    ? null
    : `one of ${measures.length} measures where there are ${head.columns.length}`;
}

/** @param next the design that would come next */
function cutOff(
  path: string,
  head: ShareHeadObject,
  end: ShareEndObject | undefined,
  next: number,
): Issue | null {
  const { share, of } = head;
  const { from, to } = stretchOf(head);
  if (end?.end === share && end.rows === to - from && next === to + 1) return null;
  return issueOfWhole(path, 'a whole share', 'one that was cut off', `make it again: --share ${share}/${of}`);
}

/** So many rows are handed on at once. */
const batch = 256;

/** Of a share that was read through before. */
export async function* rowsOf({ files }: World, { path }: Share): AsyncGenerator<SweepRowObject[]> {
  let rows: SweepRowObject[] = [];
  for await (const line of files.lines(path)) {
    const found = JSON.parse(line) as object;
    if (!('design' in found)) continue;
    rows.push(found as SweepRowObject);
    if (rows.length < batch) continue;
    yield rows;
    rows = [];
  }
  yield rows;
}
