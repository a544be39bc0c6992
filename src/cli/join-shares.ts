/** Shares of a sweep put together: the same bytes as the whole sweep at once. Nothing is written before all are found whole. */
import { issueOfWhole, type Issue } from '../design/issue.js';
import { stretchOfShare } from '../explore/grid.js';
import { sweepPrinter, type ShareEnd } from '../report/sweep-formats.js';
import { shareHeadSchema, type ShareHeadObject, type SweepRowObject } from '../report/sweep-schema.js';
import { noRows, summaryOf, together } from '../report/sweep-summary.js';
import { refuse, screenFor, unwritable, settingsFor } from './answer.js';
import type { SweepSettings } from './commands/sweep.js';
import { sinkFor } from './sink.js';
import { exitCodes, isFileTrouble, type World } from './world.js';

interface Share {
  readonly path: string;
  readonly head: ShareHeadObject;
}

export async function joinShares(
  world: World,
  path: string | undefined,
  paths: readonly string[],
  settings: SweepSettings,
): Promise<number> {
  const others = (['vary', 'show'] as const).filter((key) => settings[key].length > 0);
  const given = [
    ...others,
    ...(['loads', 'share', 'threads'] as const).filter((key) => settings[key] !== undefined),
  ];
  const stray = [...(path === undefined ? [] : [`the design ${path}`]), ...given.map((key) => `--${key}`)];
  if (stray.length > 0)
    return refuse(world, [
      issueOfWhole(
        '--join',
        'nothing beside the shares but --format, --out and --quiet',
        stray.join(' and '),
      ),
    ]);
  const looked: (Share | Issue)[] = [];
  for (const each of paths) looked.push(await lookAt(world, each));
  const issues = looked.filter((one): one is Issue => 'expected' in one);
  const shares = looked
    .filter((one): one is Share => 'head' in one)
    .sort((a, b) => a.head.share - b.head.share);
  if (issues.length === 0) issues.push(...mismatches(shares));
  return issues.length > 0 ? refuse(world, issues) : write(world, shares, settings);
}

/** Reads it through: its head, its rows in their order, its end. */
async function lookAt({ files }: World, path: string): Promise<Share | Issue> {
  let head: ShareHeadObject | undefined;
  let [line, next] = [0, 0];
  let end: ShareEnd | undefined;
  try {
    for await (const text of files.lines(path)) {
      line++;
      const found = parsed(text);
      if (head === undefined) {
        const checked = shareHeadSchema.safeParse(found);
        if (!checked.success)
          return issueOfWhole(path, 'a share as `trueroll sweep --share` writes it', 'another file');
        head = checked.data;
        next = stretchOfShare(head.head.designs, head.share, head.of).from + 1;
      } else if (isEnd(found)) end = found;
      else if ((found as SweepRowObject | undefined)?.design !== next++ || end !== undefined)
        return { ...issueOfWhole(path, `design ${next - 1}`, 'something else'), line, column: 1 };
    }
  } catch (error) {
    if (!isFileTrouble(error)) throw error;
    return issueOfWhole(path, 'a share that can be read', error.message);
  }
  if (head === undefined)
    return issueOfWhole(path, 'a share as `trueroll sweep --share` writes it', 'an empty file');
  const {
    share,
    of,
    head: { designs },
  } = head;
  const due = stretchOfShare(designs, share, of).to + 1;
  if (end?.end !== share || next !== due)
    return issueOfWhole(
      path,
      'a whole share',
      'one that was cut off',
      `make it again: --share ${share}/${of}`,
    );
  return { path, head };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isEnd = (found: unknown): found is ShareEnd =>
  typeof found === 'object' && found !== null && 'end' in found;

/** Every share of one sweep once. */
function mismatches(shares: readonly Share[]): Issue[] {
  const first = shares[0];
  if (first === undefined) return [issueOfWhole('--join', 'the shares of a sweep', 'none')];
  const { sweep, of } = first.head;
  const strangers = shares
    .filter(({ head }) => head.sweep !== sweep || head.of !== of)
    .map(({ path }) =>
      issueOfWhole(
        path,
        `a share of the same sweep as ${first.path}`,
        'one of another design, request or number of shares',
      ),
    );
  const twice = shares
    .filter(({ head }, i) => shares[i - 1]?.head.share === head.share)
    .map(({ path, head }) => issueOfWhole(path, 'each share once', `share ${head.share} again`));
  const missing = Array.from({ length: of }, (_, i) => i + 1)
    .filter((number) => shares.every(({ head }) => head.share !== number))
    .map((number) =>
      issueOfWhole('--join', `share ${number}/${of}`, 'none', `make it: --share ${number}/${of}`),
    );
  return strangers.length > 0 ? strangers : [...twice, ...missing];
}

async function write(world: World, shares: readonly Share[], settings: SweepSettings): Promise<number> {
  const sink = await sinkFor(
    world,
    settings,
    shares.map(({ path }) => path),
  );
  if ('expected' in sink) return refuse(world, [sink]);
  const printer = sweepPrinter(
    settings.format ?? 'text',
    shares[0]!.head.head,
    settingsFor(screenFor(world, settings)),
  );
  let summary = noRows;
  try {
    let heard = await sink.write(printer.opening);
    for (const { path } of shares)
      for await (const rows of rowsOf(world, path)) {
        summary = together(summary, summaryOf(rows));
        if (heard) heard = await sink.write(rows.map(printer.row).join(''));
      }
    if (heard) await sink.write(printer.closing(summary, true));
    await sink.finish();
    return exitCodes.met;
  } catch (error) {
    await sink.discard();
    return refuse(world, [unwritable(settings.out ?? '', error)]);
  }
}

/** So many rows are written at once. */
const batch = 256;

async function* rowsOf({ files }: World, path: string): AsyncGenerator<SweepRowObject[]> {
  let rows: SweepRowObject[] = [];
  for await (const line of files.lines(path)) {
    const found = JSON.parse(line) as object;
    if (!('design' in found)) continue;
    rows.push(found as SweepRowObject);
    if (rows.length < batch) continue;
    yield rows;
    rows = [];
  }
  yield rows;
}
