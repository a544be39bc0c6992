/** A thread of a sweep: is told which chunk, answers with its text. */
import { parentPort, workerData } from 'node:worker_threads';
import { chunkWorkFrom, type SweepTask } from '../sweep-work.js';

const work = chunkWorkFrom(workerData as SweepTask);
parentPort?.on('message', (chunk: number) => {
  parentPort?.postMessage(work(chunk));
});
