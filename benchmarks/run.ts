/**
 * Runs every benchmark in turn and writes benchmarks/results.md. `npm run bench`, from the top folder. Each in a process
 * of its own: what V8 has made of the code for one would slow the next.
 */
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import type { Benchmark, Finding } from './finding.js';
import * as curves from './curves.js';
import * as drawings from './drawings.js';
import * as lookUp from './look-up.js';
import * as movingLoads from './moving-loads.js';
import * as period from './period.js';
import { resultsPage } from './results-page.js';
import * as secondOpinion from './second-opinion.js';
import * as startUp from './start-up.js';
import * as steadyMeasures from './steady-measures.js';
import * as sweeps from './sweeps.js';

const benchmarks: readonly Benchmark[] = [
  startUp,
  steadyMeasures,
  movingLoads,
  secondOpinion,
  sweeps,
  lookUp,
  period,
  curves,
  drawings,
];

const [, program, asked] = process.argv;
if (asked === undefined) writePage();
else console.log(JSON.stringify(await benchmarks[Number(asked)]!.run()));

function writePage(): void {
  const answers = benchmarks.map(({ question }, i) => {
    console.error(question);
    return { question, findings: askedAlone(i) };
  });
  const machine = {
    node: process.version,
    cpu: cpus()[0]?.model.trim() ?? 'unknown',
    cores: cpus().length,
    date: new Date().toISOString().slice(0, 10),
  };
  const page = resultsPage(machine, answers);
  writeFileSync('benchmarks/results.md', page);
  console.log(page);
}

function askedAlone(i: number): Finding[] {
  const { status, stdout } = spawnSync(process.execPath, [program!, String(i)], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  if (status !== 0) throw new Error(`the benchmark ended with ${status}`);
  return JSON.parse(stdout) as Finding[];
}
