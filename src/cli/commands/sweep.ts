/** `trueroll sweep FILE --vary …` and `trueroll sweep --join FILES` */
import { issueOfWhole, type Issue } from '../../design/issue.js';
import { argumentIssue } from '../../explore/argument.js';
import { chunksIn, stretchOfShare } from '../../explore/grid.js';
import { inOrder, type Hand } from '../../explore/in-order.js';
import { compileSweep, type Sweep, type SweepRequest } from '../../explore/sweep.js';
import { loads as loadFacts } from '../../names.js';
import type { SweepFormat } from '../../report/sweep-formats.js';
import { noRows, together } from '../../report/sweep-summary.js';
import { refuse, screenFor, unwritable, type AnswerSettings } from '../answer.js';
import { readDesignText, digestOf } from '../design-file.js';
import { joinShares } from '../join-shares.js';
import { progressOf } from '../progress.js';
import { sinkFor } from '../sink.js';
import { chunkWork, printerOf, type ChunkAnswer, type SweepTask } from '../sweep-work.js';
import { exitCodes, type Thread, type World } from '../world.js';

export interface SweepSettings extends AnswerSettings {
  readonly vary: readonly string[];
  readonly show: readonly string[];
  readonly loads?: string;
  readonly format?: SweepFormat;
  readonly share?: string;
  readonly join?: readonly string[];
  readonly threads?: string;
}

export async function sweep(
  world: World,
  path: string | undefined,
  settings: SweepSettings,
): Promise<number> {
  if (settings.join !== undefined) return joinShares(world, path, settings.join, settings);
  if (path === undefined) return refuse(world, [noFile]);
  const read = await readDesignText(world, path);
  if (!read.ok) return refuse(world, read.issues);
  const { text, bytes } = read.value;
  const { vary, show, loads = null } = settings;
  const request: SweepRequest = { text, file: path, vary, show, loads };
  const [compiled, share, threads] = [
    compileSweep(request),
    readShare(settings),
    readThreads(world, settings),
  ];
  const issues = [...(compiled.ok ? [] : compiled.issues), ...[share, threads].filter(isIssue)];
  if (!compiled.ok || isIssue(share) || isIssue(threads)) return refuse(world, issues);
  const sweep = compiled.value;
  const stretch = share
    ? stretchOfShare(sweep.grid.count, share.share, share.of)
    : { from: 0, to: sweep.grid.count };
  const task: SweepTask = {
    request,
    sha256: await digestOf(bytes),
    stretch,
    chunkSize: chunkSizeFor(sweep),
    format: settings.format ?? 'text',
    share: share && { ...share, sweep: await digestOf(new TextEncoder().encode(JSON.stringify(request))) },
    screen: screenFor(world, settings),
  };
  return run(world, path, sweep, task, threads, settings);
}

const noFile = issueOfWhole('sweep', 'a design file, or --join with the shares of a sweep', 'neither');

const isIssue = (found: unknown): found is Issue =>
  typeof found === 'object' && found !== null && 'expected' in found;

/** Chunks of some tens of milliseconds: long against a message to a thread, short enough to stop soon. */
const chunkSizeFor = ({ loads }: Sweep): number => (loads.some((load) => loadFacts[load].moving) ? 8 : 256);

/** So many chunks are done sooner on the main thread than others have begun (a tenth of a second). */
const worthThreads = 6;

function readShare({ share, format }: SweepSettings): { share: number; of: number } | Issue | null {
  if (share === undefined) return null;
  const argument = { option: '--share', text: share };
  const parts = /^(\d+)\/(\d+)$/.exec(share);
  const [number, of] = [Number(parts?.[1]), Number(parts?.[2])];
  if (!(number >= 1 && number <= of))
    return argumentIssue(argument, { expected: 'which share of how many, such as 3/16', found: share });
  if (format !== undefined && format !== 'jsonl')
    return argumentIssue(argument, {
      expected: 'no --format but jsonl with a share',
      found: format,
      hint: 'say the format when the shares are joined',
    });
  return { share: number, of };
}

function readThreads({ threads }: World, { threads: asked }: SweepSettings): number | Issue {
  if (asked === undefined) return threads?.count ?? 1;
  if (/^[1-9]\d{0,2}$/.test(asked)) return Number(asked);
  return argumentIssue(
    { option: '--threads', text: asked },
    { expected: 'how many threads, 1 or more', found: asked },
  );
}

async function run(
  world: World,
  path: string,
  sweep: Sweep,
  task: SweepTask,
  threads: number,
  settings: SweepSettings,
): Promise<number> {
  const sink = await sinkFor(world, settings, [path]);
  if (isIssue(sink)) return refuse(world, [sink]);
  const { stretch, chunkSize } = task;
  const chunks = chunksIn(stretch, chunkSize);
  const printer = printerOf(sweep, task);
  const progress = progressOf(world, 'designs');
  const others =
    world.threads && threads > 1 && chunks > worthThreads ? begin(world.threads, threads, task) : [];
  const own = chunkWork(sweep, task);
  const hands: Hand<ChunkAnswer>[] =
    others.length > 0
      ? others.map((thread) => ({ work: (chunk) => thread.ask(chunk) as Promise<ChunkAnswer> }))
      : [{ work: (chunk) => breathe().then(() => own(chunk)) }];
  let [stopped, summary] = [false, noRows];
  const free = world.onStop(() => (stopped = true));
  try {
    let heard = await sink.write(printer.opening);
    for await (const answer of inOrder(chunks, hands, () => stopped || !heard)) {
      summary = together(summary, answer.summary);
      if (heard) heard = await sink.write(answer.text);
      progress.done(summary.designs, stretch.to - stretch.from);
      if (stopped) break;
    }
    const whole = summary.designs === stretch.to - stretch.from;
    progress.end();
    if (heard) await sink.write(printer.closing(summary, whole));
    if (whole || !heard) {
      await sink.finish();
      return exitCodes.met;
    }
    if (settings.out !== undefined) await sink.discard();
    world.stderr.write(sayStopped(summary.designs, stretch.to - stretch.from, settings));
    return stoppedByUser;
  } catch (error) {
    progress.end();
    await sink.discard();
    return refuse(world, [unwritable(settings.out ?? '', error)]);
  } finally {
    free();
    for (const thread of others) thread.end();
  }
}

/** 128 and the number of the signal, as shells have it. */
const stoppedByUser = 130;

const sayStopped = (done: number, of: number, { out }: SweepSettings): string =>
  `stopped after ${done} of ${of} designs${out === undefined ? '' : `; ${out} was not written`}\n`;

const begin = ({ begin: start }: NonNullable<World['threads']>, count: number, task: SweepTask): Thread[] =>
  Array.from({ length: count }, () => start('sweep-thread', task));

/** Between chunks a Ctrl-C is heard. */
const breathe = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
