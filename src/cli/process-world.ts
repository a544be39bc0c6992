/** The real world: files, terminal, standard streams. */
import { open, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { FileTrouble, type Files, type Output, type World } from './world.js';

export function processWorld(own: NodeJS.Process): World {
  // A reader that has seen enough (`| head`) closes the pipe; that is no error of ours.
  own.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  return {
    argv: own.argv.slice(2),
    files,
    stdin: () => everything(own.stdin),
    stdout: output(own.stdout),
    stderr: output(own.stderr),
    env: own.env,
  };
}

const output = (stream: NodeJS.WriteStream): Output => ({
  write: (text) => void stream.write(text),
  isTTY: stream.isTTY,
  columns: stream.isTTY ? stream.columns : undefined,
});

async function everything(stream: NodeJS.ReadStream): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

/** More than any design file holds: the reader refuses a tenth of it, with a better message. */
const largest = 64 * 1024 * 1024;

const files: Files = {
  async read(path) {
    try {
      const handle = await open(path, 'r');
      try {
        const facts = await handle.stat();
        if (facts.isDirectory()) throw new FileTrouble('a directory');
        if (facts.size > largest) throw new FileTrouble(`${(facts.size / 1e6).toFixed(0)} MB`);
        return await handle.readFile();
      } finally {
        await handle.close();
      }
    } catch (error) {
      throw inWords(error);
    }
  },
  async write(path, text) {
    const draft = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
    try {
      await writeFile(draft, text);
      await rename(draft, path);
    } catch (error) {
      await rm(draft, { force: true });
      throw inWords(error);
    }
  },
};

const troubles: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  EACCES: 'no permission',
  EPERM: 'no permission',
  EISDIR: 'a directory',
  ENOTDIR: 'a path through something that is no folder',
  ENOSPC: 'no space left',
  EROFS: 'a read-only place',
};

function inWords(error: unknown): FileTrouble {
  if (error instanceof FileTrouble) return error;
  const { code, message } = error as NodeJS.ErrnoException;
  return new FileTrouble(troubles[code ?? ''] ?? message);
}
