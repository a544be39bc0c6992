/** A design file, read and checked. */
import { dirname, isAbsolute, join } from 'node:path';
import { checkDesign } from '../check-design.js';
import { drawingsNamed, type DrawingFiles } from '../design/drawing-files.js';
import { issueOfWhole, type Checked } from '../design/issue.js';
import type { ReportedDesign } from '../report/reported-design.js';
import { refused } from './checked.js';
import { isFileTrouble, type World } from './world.js';

export interface DesignFile extends ReportedDesign {
  readonly text: string;
  readonly drawings: DrawingFiles;
  /** Every file that was read, as typed or found beside it: none is to be written over. */
  readonly sources: readonly string[];
}

/** What a design is read from. */
export type DesignText = Pick<DesignFile, 'text' | 'drawings' | 'sources'> & { readonly bytes: Uint8Array };

/**
 * @param path as typed; - is standard input
 * @param digest whether the report names the file's digest
 */
export async function checkFile(world: World, path: string, digest: boolean): Promise<Checked<DesignFile>> {
  const read = await readDesignText(world, path);
  if (!read.ok) return read;
  const { text, bytes, drawings, sources } = read.value;
  const answer = checkDesign(text, path, undefined, drawings);
  if (!answer.ok) return answer;
  const sha256 = digest ? await digestOf(bytes) : null;
  return { ok: true, value: { result: answer.value, sha256, text, drawings, sources } };
}

/** @param path as typed; - is standard input */
export async function readDesignText(world: World, path: string): Promise<Checked<DesignText>> {
  const read = await bytesOf(world, path);
  if (!read.ok) return read;
  const bytes = read.value;
  const text = textOf(bytes);
  if (text === null) return refused(issueOfWhole(path, 'text (UTF-8)', 'bytes that are no text'));
  const names = drawingsNamed(text);
  const drawings = new Map<string, Uint8Array | string>();
  for (const name of names) drawings.set(name, await drawingAt(world, besideOf(path, name)));
  const sources = [path, ...names.map((name) => besideOf(path, name))];
  return { ok: true, value: { text, bytes, drawings, sources } };
}

/** A drawing’s name is meant from the folder of the design; of standard input’s from where one is. */
const besideOf = (path: string, name: string): string =>
  path === '-' || isAbsolute(name) ? name : join(dirname(path), name);

async function drawingAt(world: World, path: string): Promise<Uint8Array | string> {
  try {
    return await world.files.read(path);
  } catch (error) {
    if (!isFileTrouble(error)) throw error;
    return error.message;
  }
}

/** Node takes a while to load its cryptography: only when it is asked for. */
export async function digestOf(bytes: Uint8Array): Promise<string> {
  const { createHash } = await import('node:crypto');
  return createHash('sha256').update(bytes).digest('hex');
}

async function bytesOf(world: World, path: string): Promise<Checked<Uint8Array>> {
  try {
    return { ok: true, value: await (path === '-' ? world.stdin() : world.files.read(path)) };
  } catch (error) {
    if (!isFileTrouble(error)) throw error;
    return refused(issueOfWhole(path, 'a design file that can be read', error.message));
  }
}

function textOf(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
