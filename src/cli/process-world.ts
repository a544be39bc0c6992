/** The real world: files, terminal, standard streams. */
import { open, readlink, realpath, rename, rm, stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { Worker } from 'node:worker_threads';
import {
  FileTrouble,
  isFileTrouble,
  type Draft,
  type Files,
  type Output,
  type Thread,
  type World,
} from './world.js';

export interface ProcessWorld {
  readonly world: World;
  /** When all that was said has left the process: whether it could be. */
  readonly said: () => Promise<boolean>;
}

/** @param dist folder of the built bundles */
export function processWorld(own: NodeJS.Process, dist: URL): ProcessWorld {
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
    threads: {
      count: availableParallelism(),
      begin: (name: string, data: unknown) => beginThread(dist, name, data),
    },
    onStop: (stop: () => void) => {
      own.once('SIGINT', stop);
      return () => own.off('SIGINT', stop);
    },
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
  ready: () => ready(stream),
  isTTY: stream.isTTY,
  columns: stream.isTTY ? stream.columns : undefined,
});

/** A pipe whose reader is slow, or gone, is waited for. */
function ready(stream: NodeJS.WriteStream): Promise<boolean> {
  if (stream.destroyed || stream.closed) return Promise.resolve(false);
  if (!stream.writableNeedDrain) return Promise.resolve(true);
  return new Promise((resolve) => {
    const settle = (): void => {
      for (const event of ['drain', 'close', 'error']) stream.off(event, settle);
      resolve(!stream.destroyed && !stream.closed);
    };
    for (const event of ['drain', 'close', 'error']) stream.once(event, settle);
  });
}

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
  async *lines(path) {
    try {
      const handle = await open(path, 'r');
      try {
        if ((await handle.stat()).isDirectory()) throw new FileTrouble('a directory');
        yield* handle.readLines({ autoClose: false });
      } finally {
        await handle.close();
      }
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

/** A worker thread that answers message by message. */
function beginThread(dist: URL, name: string, data: unknown): Thread {
  const worker = new Worker(new URL(`${name}.cjs`, dist), { workerData: data });
  let asked: {
    readonly answered: (answer: unknown) => void;
    readonly failed: (error: unknown) => void;
  } | null = null;
  worker.on('message', (answer) => asked?.answered(answer));
  worker.on('error', (error) => asked?.failed(error));
  return {
    ask: (message) =>
      new Promise((answered, failed) => {
        asked = { answered, failed };
        worker.postMessage(message);
      }),
    end: () => void worker.terminate(),
  };
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
