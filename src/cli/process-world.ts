/** The real world: terminal, standard streams, files, threads. */
import { constants } from 'node:os';
import { everything, files, inWords, isDirectory, standardInputNumber } from './real-files.js';
import { threadsFrom } from './real-threads.js';
import { FileTrouble, type Output, type World } from './world.js';

export interface ProcessWorld {
  readonly world: World;
  /** When all that was said has left the process: whether it could be. */
  readonly said: () => Promise<boolean>;
}

/** Ctrl-C, a scheduler that ends a job, a terminal that is closed. */
const stopSignals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
/** And the number of the signal: the exit code that shells have for it. */
const signalled = 128;

/** A directory would read as nothing at all. */
async function standardInput({ stdin }: NodeJS.Process): Promise<Uint8Array> {
  if (await isDirectory(standardInputNumber)) throw new FileTrouble('a directory');
  return everything(stdin).catch((error: unknown) => Promise.reject(inWords(error)));
}

/** @param dist folder of the built bundles */
export function processWorld(own: NodeJS.Process, dist: URL): ProcessWorld {
  let heard = true;
  own.stdout.on('error', (error: NodeJS.ErrnoException) => {
    // A reader that has seen enough (`| head`) closes the pipe; that is no error of ours.
    if (error.code === 'EPIPE' || !heard) return;
    heard = false;
    own.stderr.write(`standard output: expected to take the answer, found ${inWords(error).message}\n`);
  });
  const world = {
    argv: own.argv.slice(2),
    files,
    stdin: () => standardInput(own),
    stdout: output(own.stdout),
    stderr: output(own.stderr),
    env: own.env,
    threads: threadsFrom(dist),
    onStop: (stop: (code: number) => void) => {
      const takenBack = stopSignals.map((signal) => {
        const heard = (): void => {
          stop(signalled + constants.signals[signal]);
        };
        own.once(signal, heard);
        return () => own.off(signal, heard);
      });
      return () => {
        for (const takeBack of takenBack) takeBack();
      };
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

function output(stream: NodeJS.WriteStream): Output {
  // Node never closes these two: that a write has failed is all there is to see.
  let gone = false;
  stream.on('error', () => (gone = true));
  return {
    write: (text) => void stream.write(text),
    ready: () => (gone ? Promise.resolve(false) : drained(stream).then(() => !gone)),
    isTTY: stream.isTTY,
    columns: stream.isTTY ? stream.columns : undefined,
  };
}

/** A pipe whose reader is slow is waited for; one that is gone answers with an error. */
function drained(stream: NodeJS.WriteStream): Promise<void> {
  if (!stream.writableNeedDrain) return Promise.resolve();
  return new Promise((resolve) => {
    const settle = (): void => {
      for (const event of ['drain', 'error']) stream.off(event, settle);
      resolve();
    };
    for (const event of ['drain', 'error']) stream.once(event, settle);
  });
}
