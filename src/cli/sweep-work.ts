/** The work of a sweep chunk by chunk, the same on the main thread and on others. */
import { compileSweep, type Sweep, type SweepRequest } from '../explore/sweep.js';
import { chunkOf, type Stretch } from '../explore/grid.js';
import { sharePrinter, sweepPrinter, type SweepFormat, type SweepPrinter } from '../report/sweep-formats.js';
import { sweepHead, sweepRowsOf } from '../report/sweep-rows.js';
import type { SweepRowObject, SweepSummaryObject } from '../report/sweep-schema.js';
import { summaryOf } from '../report/sweep-summary.js';
import { settingsFor, type Screen } from './answer.js';

/** Plain data, copied to every thread. */
export interface SweepTask {
  readonly request: SweepRequest;
  /** Of the design file. */
  readonly sha256: string;
  readonly stretch: Stretch;
  readonly chunkSize: number;
  readonly format: SweepFormat;
  /** null: the whole. `sweep`: digest of what is asked. */
  readonly share: { readonly share: number; readonly of: number; readonly sweep: string } | null;
  readonly screen: Screen;
}

export interface ChunkAnswer {
  readonly text: string;
  readonly summary: SweepSummaryObject;
}

export function printerOf(sweep: Sweep, { sha256, format, share, screen, stretch }: SweepTask): SweepPrinter {
  const head = sweepHead(sweep, sha256);
  return share ? sharePrinter({ ...share, head }, stretch) : sweepPrinter(format, head, settingsFor(screen));
}

export function chunkWork(sweep: Sweep, task: SweepTask): (chunk: number) => ChunkAnswer {
  const printer = printerOf(sweep, task);
  const objectOf = sweepRowsOf(sweep);
  return (chunk) => {
    const { from, to } = chunkOf(task.stretch, task.chunkSize, chunk);
    const rows: SweepRowObject[] = [];
    let text = '';
    for (let index = from; index < to; index++) {
      const row = objectOf(sweep.rowAt(index));
      rows.push(row);
      text += printer.row(row);
    }
    return { text, summary: summaryOf(rows) };
  };
}

/** On another thread, where the design is read once more. */
export function chunkWorkFrom(task: SweepTask): (chunk: number) => ChunkAnswer {
  const sweep = compileSweep(task.request);
  if (!sweep.ok) throw new RangeError('chunkWorkFrom: a request that was read before');
  return chunkWork(sweep.value, task);
}
