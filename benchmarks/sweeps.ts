/** What a sweep costs: a whole design, more of everything, another thread, and memory. */
import { spawn } from 'node:child_process';
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import { readDesign } from '../src/design/read-design.js';
import { designFunction } from '../src/explore/design-function.js';
import { judgeFor } from '../src/explore/judge.js';
import { dimensionVariables } from '../src/explore/variables.js';
import type { Finding } from './finding.js';
import { microsecondsPerCall, quartiles, type Quartiles } from './timing.js';

export const question =
  'How many designs does a sweep build, roll and judge in a second, and in how much memory?';

/** Rockers and so many parts in all, empty and so many sitters seated. */
function designText(parts: number, sitters: number): string {
  const slats = Array.from({ length: parts - 4 }, (_, i) => {
    const x = -9 + (16 * i) / Math.max(1, parts - 5);
    return `  - { name: slat ${i + 1}, count: 2, wood: white ash, across: 1-1/2 in, outline: { bar: { from: [${x.toFixed(3)}, 13], to: [${(x - 1).toFixed(3)}, 16], width: 1/2 } } }`;
  });
  const people = Array.from({ length: sitters }, (_, i) => {
    const tall = 60 + (12 * i) / Math.max(1, sitters - 1);
    return `  - { name: sitter ${i + 1}, body: ${i % 2 ? 'male' : 'female'}, stature: ${tall.toFixed(2)} in, mass: ${50 + 10 * i} kg }`;
  });
  return `trueroll: 1
units: in
dimensions: { radius: 37 in }
spacing: 20 in
sitters:
${people.join('\n')}
parts:
  - { name: rocker, count: 2, wood: white ash, across: 1-1/8 in, outline: { rocker: { radius: radius, depth: 2, nose: 21, tail: 22, at: 4 } } }
  - { name: front leg, count: 2, wood: white ash, across: 1-5/8 in, outline: { bar: { from: [14, 3], to: [14, 22], width: 1-5/8 } } }
  - { name: back post, count: 2, wood: white ash, across: 1-1/4 in, outline: { bar: { from: [-2, 3], to: [-10, 40], width: 1-1/2 } } }
  - { name: seat, wood: white ash, across: 19 in, outline: { rectangle: { from: [-1, 12], to: [15, 13] } } }
${slats.join('\n')}
seat: { front: [15, 13-5/8], rear: [0, 12-1/4] }
back: { foot: [0, 12-1/4], top: [-9-3/4, 38-1/2] }
arms: { rear: [-1, 21], front: [16, 22-1/2] }
`;
}

/** Microseconds a design, its radius another every time. */
function wholeDesign(parts: number, sitters: number): Quartiles {
  const read = readDesign(designText(parts, sitters), 'benchmark.yaml');
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const { at } = designFunction(read.value, dimensionVariables(read.value));
  const judge = judgeFor(['empty', 'seated']);
  let count = 0;
  return microsecondsPerCall(() => {
    const tried = at([0.9 + 1e-4 * (count++ % 500)]);
    if (!tried.ok) throw new Error('the benchmark’s design cannot be built');
    return judge(tried);
  });
}

const target = 100;
const fixture = 'fixtures/porch-rocker/design.yaml';

interface Run {
  readonly seconds: number;
  /** Of the process with its threads, MB. */
  readonly memory: number;
}

/** A whole process; what it used at most it tells itself when it ends. */
async function swept(designs: number, threads: number, share: readonly string[] = []): Promise<Run> {
  const argv = [
    ...['sweep', fixture, '--vary', `radius=34 in..42 in:${designs} values`, '--loads', 'empty,seated'],
    ...['--format', 'jsonl', '--threads', String(threads), ...share],
  ];
  const code = `process.argv.splice(1, 0, 'trueroll');
    process.on('exit', () => process.stderr.write(String(process.resourceUsage().maxRSS)));
    import(${JSON.stringify(pathToFileURL('bin/trueroll.js').href)});`;
  const start = performance.now();
  const running = spawn(process.execPath, ['-e', code, '--', ...argv], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  running.stderr.on('data', (text: Buffer) => (said += text.toString()));
  const status = await new Promise((resolve) => running.on('close', resolve));
  if (status !== 0) throw new Error(`a sweep ended with ${String(status)}: ${said}`);
  return { seconds: (performance.now() - start) / 1000, memory: Number(said) / 1024 };
}

/** What two threads could come to at best: two processes that have nothing to do with each other, half each. */
async function inTwoProcesses(designs: number): Promise<Run> {
  const halves = ['1/2', '2/2'].map((half) => swept(designs, 1, ['--share', half]));
  const [one, other] = await Promise.all(halves);
  return { seconds: Math.max(one!.seconds, other!.seconds), memory: one!.memory + other!.memory };
}

/** In turn, so that a slow minute falls on both of a pair. */
async function pairs(one: () => Promise<Run>, other: () => Promise<Run>): Promise<Quartiles> {
  const ratios: number[] = [];
  for (let turn = 0; turn < turns; turn++) ratios.push((await one()).seconds / (await other()).seconds);
  return quartiles(ratios);
}

/** Odd, so that the median is a measured pair. */
const turns = 5;

export async function run(): Promise<Finding[]> {
  const base = wholeDesign(12, 2);
  const over = (parts: number, sitters: number): number => wholeDesign(parts, sitters).median / base.median;
  const [moreParts, moreSitters] = [over(24, 2), over(12, 4)];
  const alone = (): Promise<Run> => swept(100_000, 1);
  const designs = await pairs(alone, () => swept(50_000, 1));
  const threads = await pairs(alone, () => swept(100_000, 2));
  const processes = await pairs(alone, () => inTwoProcesses(100_000));
  const [few, many] = [await swept(100_000, 2), await swept(1_000_000, 2)];
  const { low, median, high } = base;
  return [
    {
      what: 'a whole design: 12 parts, empty and two seated, limits judged; one core',
      value: median,
      spread: { low, high },
      unit: 'µs',
      target,
      met: median <= target,
    },
    { what: '24 parts over 12', value: moreParts, unit: '×', target: 2, met: moreParts <= 2 },
    { what: 'four sitters over two', value: moreSitters, unit: '×', target: 2, met: moreSitters <= 2 },
    {
      what: '100,000 designs over 50,000, whole processes',
      value: designs.median,
      spread: { low: designs.low, high: designs.high },
      unit: '×',
      target: 2.1,
      met: designs.median <= 2.1,
    },
    {
      what: '100,000 designs on one thread over two, whole processes (1.7 at least)',
      value: threads.median,
      spread: { low: threads.low, high: threads.high },
      unit: '×',
      met: threads.median >= 1.7,
    },
    {
      what: 'the same over two processes apart: what this machine gives',
      value: processes.median,
      spread: { low: processes.low, high: processes.high },
      unit: '×',
    },
    {
      what: 'memory, 1,000,000 designs on two threads',
      value: many.memory,
      unit: 'MB',
      target: 300,
      met: many.memory < 300,
    },
    { what: 'memory, over that of 100,000', value: many.memory / few.memory, unit: '×' },
  ];
}
