/** Shares of a sweep put together: the same bytes as the whole sweep at once. Nothing is written before all are found whole. */
import { issueOfWhole, type Checked, type Issue } from '../design/issue.js';
import { sweepPrinter, type SweepPrinter } from '../report/sweep-formats.js';
import type { ShareHeadObject } from '../report/sweep-schema.js';
import { summaryOf } from '../report/sweep-summary.js';
import { refuse, screenFor, settingsFor } from './answer.js';
import { issuesOf } from './checked.js';
import { readShare, rowsOf, type Share } from './share.js';
import { breathe } from './sweep-run.js';
import { writeSweep } from './sweep-output.js';
import type { SweepSettings } from './sweep-settings.js';
import type { ChunkAnswer } from './sweep-work.js';
import type { World } from './world.js';

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
  const looked: Checked<Share>[] = [];
  for (const each of paths) looked.push(await readShare(world, each));
  const issues = looked.flatMap(issuesOf);
  const shares = looked
    .flatMap((one) => (one.ok ? [one.value] : []))
    .sort((a, b) => a.head.share - b.head.share);
  if (issues.length === 0) issues.push(...mismatches(shares));
  return issues.length > 0 ? refuse(world, issues) : write(world, shares, settings);
}

/** Every share of one sweep once. */
function mismatches(shares: readonly Share[]): Issue[] {
  const first = shares[0];
  if (first === undefined) return [issueOfWhole('--join', 'the shares of a sweep', 'none')];
  const strangers = shares
    .filter(({ head }) => !sameSweep(head, first.head))
    .map(({ path }) =>
      issueOfWhole(
        path,
        `a share of the same sweep as ${first.path}`,
        'one of another design, request or number of shares',
      ),
    );
  const { of } = first.head;
  const twice = shares
    .filter(({ head }, i) => shares[i - 1]?.head.share === head.share)
    .map(({ path, head }) => issueOfWhole(path, 'each share once', `share ${head.share} again`));
  const missing = missingOf(shares, of).map((number) =>
    issueOfWhole('--join', `share ${number}/${of}`, 'none', `make it: --share ${number}/${of}`),
  );
  return strangers.length > 0 ? strangers : [...twice, ...missing];
}

/** All but which share it is. */
const sameSweep = (one: ShareHeadObject, other: ShareHeadObject): boolean =>
  JSON.stringify({ ...one, share: null }) === JSON.stringify({ ...other, share: null });

/** As many missing shares are told: who lacks more does not make them one by one. */
const mostTold = 12;

function missingOf(shares: readonly Share[], of: number): number[] {
  const there = new Set(shares.map(({ head }) => head.share));
  const missing: number[] = [];
  for (let number = 1; number <= of && missing.length < mostTold; number++)
    if (!there.has(number)) missing.push(number);
  return missing;
}

function write(world: World, shares: readonly Share[], settings: SweepSettings): Promise<number> {
  const { head } = shares[0]!.head;
  const printer = sweepPrinter(settings.format ?? 'text', head, settingsFor(screenFor(world, settings)));
  const source = {
    files: shares.map(({ path }) => path),
    printer,
    total: head.designs,
    tooFew: issueOfWhole('--join', `${head.designs} rows in the shares`, 'others when they were read again'),
    chunks: (stopped: () => boolean) => rowsInOrder(world, shares, printer, stopped),
  };
  return writeSweep(world, source, settings);
}

async function* rowsInOrder(
  world: World,
  shares: readonly Share[],
  printer: SweepPrinter,
  stopped: () => boolean,
): AsyncGenerator<ChunkAnswer> {
  for (const share of shares)
    for await (const rows of rowsOf(world, share)) {
      // A signal is heard between two turns of the loop.
      await breathe();
      if (stopped()) return;
      yield { text: rows.map(printer.row).join(''), summary: summaryOf(rows) };
    }
}
