/** `trueroll sweep FILE --vary …` and `trueroll sweep --join FILES` */
import { issueOfWhole, type Issue } from '../../design/issue.js';
import { argumentIssue } from '../../explore/argument.js';
import { stretchOfShare } from '../../explore/grid.js';
import { compileSweep, type Sweep, type SweepRequest } from '../../explore/sweep.js';
import { loads as loadFacts } from '../../names.js';
import { tool } from '../../report/tool.js';
import { refuse, screenFor } from '../answer.js';
import { readDesignText, digestOf } from '../design-file.js';
import { joinShares } from '../join-shares.js';
import { runSweep } from '../sweep-run.js';
import type { SweepSettings } from '../sweep-settings.js';
import type { SweepTask } from '../sweep-work.js';
import type { World } from '../world.js';

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
    share: share && { ...share, sweep: await digestOf(bytesOf({ tool, request })) },
    screen: screenFor(world, settings),
  };
  return runSweep(world, path, sweep, task, threads, settings);
}

const bytesOf = (what: object): Uint8Array => new TextEncoder().encode(JSON.stringify(what));

const noFile = issueOfWhole('sweep', 'a design file, or --join with the shares of a sweep', 'neither');

const isIssue = (found: unknown): found is Issue =>
  typeof found === 'object' && found !== null && 'expected' in found;

/** Chunks of some tens of milliseconds: long against a message to a thread, short enough to stop soon. */
const chunkSizeFor = ({ loads }: Sweep): number => (loads.some((load) => loadFacts[load].moving) ? 8 : 256);

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
