/** `trueroll sweep FILE --vary …` and `trueroll sweep --join FILES` */
import { issueOfWhole, type Checked } from '../../design/issue.js';
import type { Words } from '../../design/places.js';
import { argumentIssue } from '../../explore/argument.js';
import { stretchOfShare } from '../../explore/grid.js';
import { compileSweep, type Sweep, type SweepRequest } from '../../explore/sweep.js';
import { loads as loadFacts } from '../../names.js';
import { mostShares } from '../../report/sweep-schema.js';
import { tool } from '../../report/tool.js';
import { refuse, screenFor } from '../answer.js';
import { issuesOf, refused } from '../checked.js';
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
  const { text, bytes, drawings, sources } = read.value;
  const { vary, show, loads = null } = settings;
  const request: SweepRequest = { text, file: path, drawings, vary, show, loads };
  const [compiled, share, threads] = [
    compileSweep(request),
    shareAsked(settings),
    threadsAsked(world, settings),
  ];
  if (!compiled.ok || !share.ok || !threads.ok)
    return refuse(world, [compiled, share, threads].flatMap(issuesOf));
  const [sweep, part] = [compiled.value, share.value];
  const { count } = sweep.grid;
  const task: SweepTask = {
    request,
    sha256: await digestOf(bytes),
    stretch: part ? stretchOfShare(count, part.share, part.of) : { from: 0, to: count },
    chunkSize: chunkSizeFor(sweep),
    format: settings.format ?? 'text',
    share: part && {
      ...part,
      sweep: await digestOf(bytesOf({ tool, request, drawings: [...drawings].map(contentsOf) })),
    },
    screen: screenFor(world, settings),
  };
  return runSweep(world, sources, sweep, task, threads.value, settings);
}

const contentsOf = ([name, bytes]: [string, Uint8Array | string]): string[] => [
  name,
  typeof bytes === 'string' ? bytes : Buffer.from(bytes).toString('base64'),
];

const bytesOf = (what: object): Uint8Array => new TextEncoder().encode(JSON.stringify(what));

const noFile = issueOfWhole('sweep', 'a design file, or --join with the shares of a sweep', 'neither');

/** Chunks of some tens of milliseconds: long against a message to a thread, short enough to stop soon. */
const chunkSizeFor = ({ loads }: Sweep): number => (loads.some((load) => loadFacts[load].moving) ? 8 : 256);

function shareAsked({ share, format }: SweepSettings): Checked<{ share: number; of: number } | null> {
  if (share === undefined) return { ok: true, value: null };
  const wrong = (words: Words) => refused(argumentIssue({ option: '--share', text: share }, words));
  const parts = /^(\d+)\/(\d+)$/.exec(share);
  const [number, of] = [Number(parts?.[1]), Number(parts?.[2])];
  if (!(number >= 1 && number <= of))
    return wrong({ expected: 'which share of how many, such as 3/16', found: foundIn(share) });
  if (of > mostShares)
    return wrong({ expected: `at most ${mostShares.toLocaleString('en')} shares`, found: parts![2]! });
  if (format !== undefined && format !== 'jsonl')
    return wrong({
      expected: 'no --format but jsonl with a share',
      found: format,
      hint: 'say the format when the shares are joined',
    });
  return { ok: true, value: { share: number, of } };
}

/** A thread takes some tens of megabytes; no machine that this is for has more cores. */
const mostThreads = 256;

function threadsAsked({ threads }: World, { threads: asked }: SweepSettings): Checked<number> {
  if (asked === undefined) return { ok: true, value: Math.min(threads?.count ?? 1, mostThreads) };
  const count = /^\d+$/.test(asked) ? Number(asked) : NaN;
  if (count >= 1 && count <= mostThreads) return { ok: true, value: count };
  const words = { expected: `how many threads, from 1 to ${mostThreads}`, found: foundIn(asked) };
  return refused(argumentIssue({ option: '--threads', text: asked }, words));
}

const foundIn = (text: string): string => (text.trim() === '' ? 'nothing' : text);
