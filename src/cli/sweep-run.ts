/** Works through a sweep: chunk by chunk to where the answer goes, until it is done or stopped. */
import { issueOfWhole } from '../design/issue.js';
import { chunksIn } from '../explore/grid.js';
import { inOrder, type Hand } from '../explore/in-order.js';
import type { Sweep } from '../explore/sweep.js';
import type { AnswerSettings } from './answer.js';
import { progressOf } from './progress.js';
import { writeSweep } from './sweep-output.js';
import { chunkWork, printerOf, type ChunkAnswer, type SweepTask } from './sweep-work.js';
import type { World } from './world.js';

/** @param sources files that were read, the design first: none is written over */
export const runSweep = (
  world: World,
  sources: readonly string[],
  sweep: Sweep,
  task: SweepTask,
  threads: number,
  settings: AnswerSettings,
): Promise<number> =>
  writeSweep(
    world,
    {
      files: sources,
      printer: printerOf(sweep, task),
      total: task.stretch.to - task.stretch.from,
      tooFew: issueOfWhole(sources[0]!, 'an answer of every thread', 'fewer'),
      chunks: (stopped) => throughAll(world, sweep, task, threads, stopped),
    },
    settings,
  );

interface Crew {
  readonly hands: readonly Hand<ChunkAnswer>[];
  readonly dismiss: () => void;
}

/** So many chunks are done sooner on the main thread than others have begun (a tenth of a second). */
const worthThreads = 6;

function crewFor({ threads: others }: World, sweep: Sweep, task: SweepTask, count: number): Crew {
  const chunks = chunksIn(task.stretch, task.chunkSize);
  if (others === null || count < 2 || chunks <= worthThreads) {
    const own = chunkWork(sweep, task);
    return { hands: [{ work: (chunk) => breathe().then(() => own(chunk)) }], dismiss: () => undefined };
  }
  const begun = Array.from({ length: Math.min(count, chunks) }, () => others.begin('sweep-thread', task));
  return {
    hands: begun.map((thread) => ({ work: (chunk) => thread.ask(chunk) as Promise<ChunkAnswer> })),
    dismiss: () => {
      for (const thread of begun) thread.end();
    },
  };
}

/** Between chunks a Ctrl-C is heard. */
export const breathe = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** Chunk by chunk; a Ctrl-C ends it after the one at hand. */
async function* throughAll(
  world: World,
  sweep: Sweep,
  task: SweepTask,
  threads: number,
  stopped: () => boolean,
): AsyncGenerator<ChunkAnswer> {
  const { stretch, chunkSize } = task;
  const total = stretch.to - stretch.from;
  const crew = crewFor(world, sweep, task, threads);
  const progress = progressOf(world, 'designs');
  let done = 0;
  try {
    for await (const answer of inOrder(chunksIn(stretch, chunkSize), crew.hands, stopped)) {
      yield answer;
      done += answer.summary.designs;
      progress.done(done, total);
    }
  } finally {
    progress.end();
    crew.dismiss();
  }
}
