/** Files as the machine has them: read whole or line by line, written whole or not at all. */
import { fstat, type Stats } from 'node:fs';
import { open, readlink, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { FileTrouble, isFileTrouble, type Draft, type Files } from './world.js';

/** More than any drawing holds, in bytes; of a design file the reader refuses less, with a better message. */
const largest = 64 * 1024 * 1024;
/** More than any line of a share holds. */
const longestLine = 16 * 1024 * 1024;

/** All of a stream, unless it does not end. */
export async function everything(stream: AsyncIterable<unknown>): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    chunks.push(chunk as Buffer);
    size += (chunk as Buffer).length;
    if (size > largest) throw new FileTrouble(`more than ${largest / 2 ** 20} MB`);
  }
  return Buffer.concat(chunks);
}

/** Piece by piece: no more of it is held than one line. */
async function* linesOf(stream: AsyncIterable<unknown>): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  let left = '';
  for await (const chunk of stream) {
    const [first = '', ...others] = decoder.decode(chunk as Buffer, { stream: true }).split('\n');
    left += first;
    if (left.length > longestLine) throw new FileTrouble(`a line of more than ${longestLine / 2 ** 20} MB`);
    const last = others.pop();
    if (last === undefined) continue;
    yield left;
    yield* others;
    left = last;
  }
  if (left !== '') yield left;
}

export const files: Files = {
  async read(path) {
    try {
      const handle = await open(path, 'r');
      try {
        if ((await handle.stat()).isDirectory()) throw new FileTrouble('a directory');
        return await everything(handle.createReadStream({ autoClose: false }));
      } finally {
        await handle.close();
      }
    } catch (error) {
      throw inWords(error);
    }
  },
  async write(path, text, keep) {
    const draft = await this.draft(path, keep);
    try {
      await draft.write(text);
    } catch (error) {
      await draft.discard();
      throw error;
    }
    await draft.finish();
  },
  async draft(path, keep) {
    try {
      for (const other of keep) if (await isSame(path, other)) throw new FileTrouble('a file that was read');
      return await draftFor(path);
    } catch (error) {
      throw inWords(error);
    }
  },
  async isFile(path) {
    return (await factsOf(path))?.isFile() ?? false;
  },
  async *lines(path) {
    try {
      // What is no file is not even opened: a pipe may wait for ever, and is empty when it is read again.
      const facts = await stat(path);
      if (facts.isDirectory()) throw new FileTrouble('a directory');
      if (!facts.isFile()) throw new FileTrouble('a pipe or a device, which cannot be read twice');
      const handle = await open(path, 'r');
      try {
        yield* linesOf(handle.createReadStream({ autoClose: false }));
      } finally {
        await handle.close();
      }
    } catch (error) {
      throw inWords(error);
    }
  },
};

const factsOf = (path: string) => stat(path).catch(() => null);

export const standardInputNumber = 0;

/** Of what is open already; null where it is closed. */
const factsOfOpen = (descriptor: number): Promise<Stats | null> =>
  new Promise((resolve) => {
    fstat(descriptor, (error, facts) => {
      resolve(error === null ? facts : null);
    });
  });

export const isDirectory = async (descriptor: number): Promise<boolean> =>
  (await factsOfOpen(descriptor))?.isDirectory() ?? false;

/** Whatever it is called, by links too. @param read as typed: - is what standard input was taken from */
async function isSame(path: string, read: string): Promise<boolean> {
  const one = await factsOf(path);
  const two = await (read === '-' ? factsOfOpen(standardInputNumber) : factsOf(read));
  return one !== null && two !== null && one.dev === two.dev && one.ino === two.ino;
}

/** Beside its place, then moved into it. A pipe or a device has no place: it is written to. */
async function draftFor(path: string): Promise<Draft> {
  const facts = await factsOf(path);
  if (facts?.isDirectory()) throw new FileTrouble('a directory');
  if (facts && !facts.isFile()) return draftAt(path, { finish: none, discard: none });
  const target = facts ? await realpath(path) : await linkedTo(path);
  const place = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
  return draftAt(
    place,
    { finish: () => rename(place, target), discard: () => rm(place, { force: true }) },
    facts?.mode,
  );
}

const none = (): Promise<void> => Promise.resolve();

async function draftAt(
  place: string,
  { finish, discard }: Pick<Draft, 'finish' | 'discard'>,
  mode?: number,
): Promise<Draft> {
  const handle = await open(place, 'w', mode);
  const closed = async (): Promise<void> => {
    await handle.close().catch(none);
  };
  const orDiscard = async (step: () => Promise<void>): Promise<void> => {
    try {
      await step();
    } catch (error) {
      await closed();
      await discard();
      throw inWords(error);
    }
  };
  return {
    write: (text) => orDiscard(() => handle.writeFile(text)),
    finish: () => orDiscard(() => handle.close().then(finish)),
    discard: () => closed().then(discard),
  };
}

/** As many links as systems follow one after the other. */
const mostLinks = 40;

/** Where links without a target point at last; anything else is its own place. */
async function linkedTo(path: string, followed = 0): Promise<string> {
  const target = await readlink(path).catch(() => null);
  if (target === null) return path;
  if (followed >= mostLinks) throw new FileTrouble(circle);
  return linkedTo(resolve(dirname(path), target), followed + 1);
}

const circle = 'a link that leads back to itself';

const troubles: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  EACCES: 'no permission',
  EPERM: 'no permission',
  EISDIR: 'a directory',
  ENOTDIR: 'a path through something that is no folder',
  ENOSPC: 'no space left',
  EROFS: 'a read-only place',
  ELOOP: circle,
  ENAMETOOLONG: 'a name that is too long',
};

export function inWords(error: unknown): FileTrouble {
  if (isFileTrouble(error)) return error;
  const { code, message } = error as NodeJS.ErrnoException;
  return new FileTrouble(troubles[code ?? ''] ?? message);
}
