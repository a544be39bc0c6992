/** The real world: files, terminal, standard streams. */
import { open, readlink, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { FileTrouble, isFileTrouble, type Files, type Output, type World } from './world.js';

export interface ProcessWorld {
  readonly world: World;
  /** When all that was said has left the process: whether it could be. */
  readonly said: () => Promise<boolean>;
}

export function processWorld(own: NodeJS.Process): ProcessWorld {
  let heard = true;
  own.stdout.on('error', (error: NodeJS.ErrnoException) => {
    // A reader that has seen enough (`| head`) closes the pipe; that is no error of ours.
    if (error.code === 'EPIPE') return;
    heard = false;
    own.stderr.write(`standard output: expected to take the answer, found ${inWords(error).message}\n`);
  });
  const world = {
    argv: own.argv.slice(2),
    files,
    stdin: () => everything(own.stdin).catch((error: unknown) => Promise.reject(inWords(error))),
    stdout: output(own.stdout),
    stderr: output(own.stderr),
    env: own.env,
  };
  const flushed = (): Promise<void> =>
    new Promise((resolve) => {
      own.stdout.write('', () => {
        setImmediate(resolve);
      });
    });
  return { world, said: () => flushed().then(() => heard) };
}

const output = (stream: NodeJS.WriteStream): Output => ({
  write: (text) => void stream.write(text),
  isTTY: stream.isTTY,
  columns: stream.isTTY ? stream.columns : undefined,
});

/** More than any design file holds, in bytes: the reader refuses less than that, with a better message. */
const largest = 16 * 1024 * 1024;

/** All of a stream, unless it does not end. */
async function everything(stream: AsyncIterable<unknown>): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    chunks.push(chunk as Buffer);
    size += (chunk as Buffer).length;
    if (size > largest) throw new FileTrouble(`more than ${largest / 2 ** 20} MB`);
  }
  return Buffer.concat(chunks);
}

const files: Files = {
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
    try {
      for (const other of keep) if (await isSame(path, other)) throw new FileTrouble('a file that was read');
      await writeWhole(path, text);
    } catch (error) {
      throw inWords(error);
    }
  },
};

const factsOf = (path: string) => stat(path).catch(() => null);

/** Whatever it is called, by links too. */
async function isSame(path: string, other: string): Promise<boolean> {
  const [one, two] = [await factsOf(path), await factsOf(other)];
  return one !== null && two !== null && one.dev === two.dev && one.ino === two.ino;
}

/** Into a draft beside it, then moved into its place. A pipe or a device has no place: it is written to. */
async function writeWhole(path: string, text: string): Promise<void> {
  const facts = await factsOf(path);
  if (facts?.isDirectory()) throw new FileTrouble('a directory');
  if (facts && !facts.isFile()) {
    await writeFile(path, text);
    return;
  }
  const target = facts ? await realpath(path) : await linkedTo(path);
  const draft = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
  try {
    await writeFile(draft, text, facts ? { mode: facts.mode } : {});
    await rename(draft, target);
  } catch (error) {
    await rm(draft, { force: true });
    throw error;
  }
}

/** Where a link without a target points; anything else is its own place. */
const linkedTo = (path: string): Promise<string> =>
  readlink(path).then(
    (target) => join(dirname(path), target),
    () => path,
  );

const troubles: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  EACCES: 'no permission',
  EPERM: 'no permission',
  EISDIR: 'a directory',
  ENOTDIR: 'a path through something that is no folder',
  ENOSPC: 'no space left',
  EROFS: 'a read-only place',
  ENAMETOOLONG: 'a name that is too long',
};

function inWords(error: unknown): FileTrouble {
  if (isFileTrouble(error)) return error;
  const { code, message } = error as NodeJS.ErrnoException;
  return new FileTrouble(troubles[code ?? ''] ?? message);
}
