/** Runs every benchmark in turn and writes benchmarks/results.md. `npm run bench`, from the top folder. */
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

const answers: { question: string; findings: Finding[] }[] = [];
for (const { question, run } of benchmarks) {
  console.error(question);
  answers.push({ question, findings: await run() });
}

const machine = {
  node: process.version,
  cpu: cpus()[0]?.model.trim() ?? 'unknown',
  cores: cpus().length,
  date: new Date().toISOString().slice(0, 10),
};
const page = resultsPage(machine, answers);
writeFileSync('benchmarks/results.md', page);
console.log(page);
