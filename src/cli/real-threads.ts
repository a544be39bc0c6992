/** Worker threads as the machine has them. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Thread, Threads } from './world.js';

/** @param dist folder of the built bundles */
export const threadsFrom = (dist: URL): Threads => ({
  count: availableParallelism(),
  begin: (name, data) => beginThread(new URL(`${name}.cjs`, dist), data),
});

/** It answers message by message. */
function beginThread(bundle: URL, data: unknown): Thread {
  const worker = new Worker(bundle, { workerData: data });
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
