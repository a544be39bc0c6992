/** Whole processes, as a maker or a build server starts them, over a Node process that does nothing. */
import { spawnSync } from 'node:child_process';
import type { Finding } from './finding.js';
import { timeRatio } from './timing.js';

export const question = 'How long does a command take from the prompt and back?';

const design = 'fixtures/porch-rocker/design.yaml';

/** Odd, so that the median is a measured pair; enough that ten disturbed pairs do not move it far. */
const repeats = 21;

/** Runs Node once and insists on exit code 0: a command that fails early is quick for the wrong reason. */
function runNode(args: readonly string[]): void {
  const { status, stderr, error } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (error) throw error;
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status ?? 'a signal'}: ${stderr}`);
}

async function startUp(args: readonly string[], target?: number): Promise<Finding> {
  const { low, median, high } = await timeRatio(
    () => {
      runNode(['bin/trueroll.js', ...args]);
    },
    () => {
      runNode(['-e', '0']);
    },
    repeats,
  );
  return {
    what: `trueroll ${args.join(' ')}, over node -e 0`,
    value: median,
    spread: { low, high },
    unit: '×',
    ...(target !== undefined && { target, met: median <= target }),
  };
}

export async function run(): Promise<Finding[]> {
  return [
    await startUp(['--version'], 1.3),
    await startUp(['check', design, '--no-second-opinion'], 2.5),
    await startUp(['check', design]),
  ];
}
