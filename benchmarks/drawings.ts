/** What it costs to read a large drawing, each reader in a process of its own. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Finding } from './finding.js';
import { quartiles } from './timing.js';

export const question =
  'How long does a drawing of 300,000 lines take to read, in how much memory, beside the readers of npm?';

const lines = 300_000;
const rounds = 5;

/** Each says how many it found: a reader that gives up is quick for the wrong reason. */
const readers = {
  trueroll: `const { readDrawing } = await import(${JSON.stringify(pathToFileURL('dist/index.js').href)});
    const read = (bytes) => readDrawing(bytes).drawn.curves.length;`,
  dxf: `const { parseString } = (await import('dxf')).default;
    const read = (bytes) => parseString(bytes.toString('utf8')).entities.length;`,
  'dxf-parser': `const Parser = (await import('dxf-parser')).default;
    const read = (bytes) => new (Parser.default ?? Parser)().parseSync(bytes.toString('utf8')).entities.length;`,
} as const;
type Reader = keyof typeof readers;

interface Run {
  readonly seconds: number;
  /** At most, of the process, MB. */
  readonly memory: number;
}

function reading(reader: Reader, path: string): Run {
  const code = `${readers[reader]}
    const bytes = (await import('node:fs')).readFileSync(${JSON.stringify(path)});
    const start = performance.now();
    const found = read(bytes);
    const seconds = (performance.now() - start) / 1000;
    console.log(JSON.stringify({ found, seconds, memory: process.resourceUsage().maxRSS / 1024 }));`;
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', code], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`${reader} ended with ${status ?? 'a signal'}: ${stderr}`);
  const { found, seconds, memory } = JSON.parse(stdout) as Run & { readonly found: number };
  if (found !== lines) throw new Error(`${reader} found ${found} of ${lines} lines`);
  return { seconds, memory };
}

/** Loose lines in rows, 28 MB as drawing programs write them. */
function* dxf(): Generator<string> {
  yield '0\nSECTION\n2\nENTITIES\n';
  for (let i = 0; i < lines; i++) {
    const [x, y] = [(i % 1000) * 3, Math.floor(i / 1000) * 3];
    const places = [10, x, 20, y, 30, 0, 11, x + 1, 21, y + 1, 31, 0];
    const groups = [0, 'LINE', 8, '0', ...places.map((each, k) => (k % 2 === 0 ? each : each.toFixed(9)))];
    yield `${groups.join('\n')}\n`;
  }
  yield '0\nENDSEC\n0\nEOF\n';
}

function* svg(): Generator<string> {
  yield '<svg xmlns="http://www.w3.org/2000/svg" width="3000mm" height="900mm" viewBox="0 0 3000 900">\n';
  for (let i = 0; i < lines; i++) {
    const [x, y] = [(i % 1000) * 3, Math.floor(i / 1000) * 3];
    const ends = `x1="${x.toFixed(4)}" y1="${y.toFixed(4)}" x2="${(x + 1).toFixed(4)}" y2="${(y + 1).toFixed(4)}"`;
    yield `<line ${ends} stroke="black"/>\n`;
  }
  yield '</svg>\n';
}

const median = (runs: readonly Run[], of: keyof Run): number => quartiles(runs.map((run) => run[of])).median;

export function run(): Promise<Finding[]> {
  const folder = mkdtempSync(join(tmpdir(), 'trueroll-bench-'));
  try {
    const [drawing, page] = [join(folder, 'lines.dxf'), join(folder, 'lines.svg')];
    writeFileSync(drawing, [...dxf()].join(''));
    writeFileSync(page, [...svg()].join(''));
    return Promise.resolve(findingsOf(drawing, page));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function findingsOf(drawing: string, page: string): Finding[] {
  const names = Object.keys(readers) as Reader[];
  // In turn, so that a slow minute falls on all.
  const turns = Array.from({ length: rounds }, () => ({
    of: Object.fromEntries(names.map((name) => [name, reading(name, drawing)])) as Record<Reader, Run>,
    page: reading('trueroll', page),
  }));
  const own = turns.map(({ of }) => of.trueroll);
  const pages = turns.map(({ page: one }) => one);
  const [seconds, memory] = [median(own, 'seconds'), median(own, 'memory')];
  const over = (name: Reader): Finding => {
    const ratios = quartiles(turns.map(({ of }) => of.trueroll.seconds / of[name].seconds));
    return {
      what: `the same DXF, over npm ${name}`,
      value: ratios.median,
      spread: { low: ratios.low, high: ratios.high },
      unit: '×',
    };
  };
  return [
    { what: 'DXF, 28 MB, 300,000 LINE', value: seconds, unit: 's', target: 2, met: seconds < 2 },
    { what: 'memory, of the process', value: memory, unit: 'MB', target: 500, met: memory < 500 },
    over('dxf'),
    over('dxf-parser'),
    ...(['dxf', 'dxf-parser'] as const).map((name): Finding => ({
      what: `memory, npm ${name}`,
      value: median(
        turns.map(({ of }) => of[name]),
        'memory',
      ),
      unit: 'MB',
    })),
    { what: 'SVG, 24 MB, 300,000 line', value: median(pages, 'seconds'), unit: 's' },
    { what: 'memory, SVG', value: median(pages, 'memory'), unit: 'MB' },
  ];
}
