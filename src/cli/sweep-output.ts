/** The answer of a sweep written piece by piece as it comes, whole or told to be otherwise. */
import { printable } from '../report/printable.js';
import type { SweepPrinter } from '../report/sweep-formats.js';
import type { SweepSummaryObject } from '../report/sweep-schema.js';
import { noRows, together } from '../report/sweep-summary.js';
import type { Issue } from '../design/issue.js';
import { refuse, unwritable, type AnswerSettings } from './answer.js';
import { sinkFor, type Sink } from './sink.js';
import type { ChunkAnswer } from './sweep-work.js';
import { exitCodes, type World } from './world.js';

export interface SweepSource {
  /** The files it comes from, which are not written over. */
  readonly files: readonly string[];
  readonly printer: SweepPrinter;
  /** How many designs there are to be; fewer when it was stopped. */
  readonly total: number;
  /** What is wrong where there are fewer though nobody stopped it. */
  readonly tooFew: Issue;
  /** In their order, until it is asked to stop. */
  readonly chunks: (stopped: () => boolean) => AsyncIterable<ChunkAnswer>;
}

/** @returns the exit code */
export async function writeSweep(
  world: World,
  source: SweepSource,
  settings: AnswerSettings,
): Promise<number> {
  const sink = await sinkFor(world, settings, source.files);
  if (!sink.ok) return refuse(world, sink.issues);
  let stoppedWith: number | null = null;
  const takeBack = world.onStop((code) => (stoppedWith ??= code));
  const stopCode = (): number | null => stoppedWith;
  try {
    const { designs, heard } = await pour(source, sink.value, () => stopCode() !== null);
    if (designs === source.total || !heard) {
      await sink.value.finish();
      return exitCodes.met;
    }
    if (settings.out !== undefined) await sink.value.discard();
    const code = stopCode();
    if (code === null) return refuse(world, [source.tooFew]);
    const lost = settings.out === undefined ? '' : `; ${settings.out} was not written`;
    world.stderr.write(`${printable(`stopped after ${designs} of ${source.total} designs${lost}`)}\n`);
    return code;
  } catch (error) {
    await sink.value.discard();
    return refuse(world, [unwritable(settings.out ?? '', error)]);
  } finally {
    takeBack();
  }
}

/** @returns how many designs were done, and whether anybody still reads it */
async function pour(
  { printer, total, chunks }: SweepSource,
  sink: Sink,
  stopped: () => boolean,
): Promise<{ readonly designs: number; readonly heard: boolean }> {
  let summary: SweepSummaryObject = noRows;
  let heard = await sink.write(printer.opening);
  for await (const answer of chunks(stopped)) {
    summary = together(summary, answer.summary);
    heard = await sink.write(answer.text);
    if (!heard || stopped()) break;
  }
  const { designs } = summary;
  if (heard) await sink.write(printer.closing(summary, designs === total));
  return { designs, heard };
}
