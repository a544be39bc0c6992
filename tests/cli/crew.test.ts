/** How many threads a sweep begins. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { chunkWorkFrom, type SweepTask } from '../../src/cli/sweep-work.js';
import { trueroll } from '../stand-in-world.js';

const files = { 'porch.yaml': readFileSync('fixtures/porch-rocker/design.yaml', 'utf8') };

it.each([
  // Chunks of 8 designs where somebody is thrown about; a few are done sooner without another thread.
  [48, '60', 0],
  [66, '60', 9],
  [66, '3', 3],
])(
  'for %i designs with --threads %s it is %i',
  async (designs, asked, count) => {
    let begun = 0;
    const threads = {
      count: 1,
      begin: (_: string, task: unknown) => {
        begun++;
        const work = chunkWorkFrom(task as SweepTask);
        return { ask: (chunk: unknown) => Promise.resolve(work(chunk as number)), end: () => undefined };
      },
    };
    const argv = ['sweep', 'porch.yaml', '--vary', `radius=34 in..42 in:${designs} values`];
    const { code } = await trueroll([...argv, '--threads', asked, '--quiet'], { files, threads });
    expect([code, begun]).toEqual([0, count]);
  },
  60_000,
);
