/** Works through a sweep: chunk by chunk to where the answer goes, until it is done or stopped. */
import { chunksIn } from '../explore/grid.js';
import { inOrder, type Hand } from '../explore/in-order.js';
import type { Sweep } from '../explore/sweep.js';
import type { SweepSummaryObject } from '../report/sweep-schema.js';
import { noRows, together } from '../report/sweep-summary.js';
import { refuse, unwritable, type AnswerSettings } from './answer.js';
import { progressOf } from './progress.js';
import { sinkFor, type Sink } from './sink.js';
import { chunkWork, printerOf, type ChunkAnswer, type SweepTask } from './sweep-work.js';
import { exitCodes, type World } from './world.js';

/** 128 and the number of the signal, as shells have it. */
const stoppedByUser = 130;

/** @param path the design file, which is not written over */
export async function runSweep(
  world: World,
  path: string,
  sweep: Sweep,
  task: SweepTask,
  threads: number,
  settings: AnswerSettings,
): Promise<number> {
  const found = await sinkFor(world, settings, [path]);
  if (!found.ok) return refuse(world, found.issues);
  const sink = found.value;
  const crew = crewFor(world, sweep, task, threads);
  const total = task.stretch.to - task.stretch.from;
  try {
    const { summary, heard } = await throughAll(world, sweep, task, crew.hands, sink);
    if (summary.designs === total || !heard) {
      await sink.finish();
      return exitCodes.met;
    }
    if (settings.out !== undefined) await sink.discard();
    const lost = settings.out === undefined ? '' : `; ${settings.out} was not written`;
    world.stderr.write(`stopped after ${summary.designs} of ${total} designs${lost}\n`);
    return stoppedByUser;
  } catch (error) {
    await sink.discard();
    return refuse(world, [unwritable(settings.out ?? '', error)]);
  } finally {
    crew.dismiss();
  }
}

interface Crew {
  readonly hands: readonly Hand<ChunkAnswer>[];
  readonly dismiss: () => void;
}

/** So many chunks are done sooner on the main thread than others have begun (a tenth of a second). */
const worthThreads = 6;

function crewFor({ threads: others }: World, sweep: Sweep, task: SweepTask, count: number): Crew {
  if (others === null || count < 2 || chunksIn(task.stretch, task.chunkSize) <= worthThreads) {
    const own = chunkWork(sweep, task);
    return { hands: [{ work: (chunk) => breathe().then(() => own(chunk)) }], dismiss: () => undefined };
  }
  const begun = Array.from({ length: count }, () => others.begin('sweep-thread', task));
  return {
    hands: begun.map((thread) => ({ work: (chunk) => thread.ask(chunk) as Promise<ChunkAnswer> })),
    dismiss: () => {
      for (const thread of begun) thread.end();
    },
  };
}

/** Between chunks a Ctrl-C is heard. */
const breathe = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** @returns what came of what was done, and whether anybody still reads it */
async function throughAll(
  world: World,
  sweep: Sweep,
  task: SweepTask,
  hands: readonly Hand<ChunkAnswer>[],
  sink: Sink,
): Promise<{ readonly summary: SweepSummaryObject; readonly heard: boolean }> {
  const total = task.stretch.to - task.stretch.from;
  const printer = printerOf(sweep, task);
  const progress = progressOf(world, 'designs');
  let [stopped, summary] = [false, noRows];
  const takeBack = world.onStop(() => (stopped = true));
  try {
    let heard = await sink.write(printer.opening);
    const chunks = chunksIn(task.stretch, task.chunkSize);
    for await (const answer of inOrder(chunks, hands, () => stopped || !heard)) {
      summary = together(summary, answer.summary);
      if (heard) heard = await sink.write(answer.text);
      progress.done(summary.designs, total);
      if (stopped) break;
    }
    progress.end();
    if (heard) await sink.write(printer.closing(summary, summary.designs === total));
    return { summary, heard };
  } finally {
    progress.end();
    takeBack();
  }
}
