/** What a second calculation costs, and what it is worth beside the exact one on the same question. */
import { readFileSync } from 'node:fs';
import { checkDesign } from '../src/check-design.js';
import { secondOpinions } from '../src/checks/second-calculation.js';
import { freeSwingSeen } from '../src/contact/free-swing.js';
import { courseAlone, stepFor } from '../src/contact/second-opinion.js';
import type { Finding } from './finding.js';
import { degree, periodsOn, runnerOfOneArc } from './one-arc.js';
import { microsecondsPerCall } from './timing.js';

export const question =
  'What does the second calculation of a load cost, and how far is it from the exact one?';

const design = 'fixtures/porch-rocker/design.yaml';
/** Milliseconds for one load at rest. */
const target = 500;
/** The exact period is to be so much faster, and so much nearer to the truth. */
const fasterBy = 1e4;
const nearerBy = 1e5;

const swing = 8 * degree;
const machineEpsilon = 2 ** -52;

/** Persons of 60 to 100 kg on one arc of 1.07 m. */
const bodies = [60, 80, 100].map((mass) => ({ mass, centre: { x: 0, y: 0.6 }, inertia: mass / 9 }));

export function run(): Promise<Finding[]> {
  const runner = runnerOfOneArc();
  const { profile } = runner;
  const asked = bodies.map((body) => {
    const periods = periodsOn(runner, body);
    const truth = periods.truth(swing, 400);
    const exact = (): number => periods.exact(swing);
    const course = courseAlone({ profile, body }, { until: 0 });
    const contact = (): number =>
      freeSwingSeen(course, { lean: swing, other: -swing, period: truth }, stepFor(truth, body.centre.y))
        ?.period ?? NaN;
    return { truth, exact, contact };
  });
  const worst = (of: 'exact' | 'contact'): number =>
    Math.max(...asked.map((one) => Math.abs(one[of]() / one.truth - 1)));
  const [first] = asked;
  const exactTime = microsecondsPerCall(first!.exact).median;
  const contactTime = microsecondsPerCall(first!.contact).median;
  const errors = worst('contact') / Math.max(worst('exact'), machineEpsilon);
  return Promise.resolve([
    ...['empty', 'seated', 'leaning-back-hard', 'getting-up'].map(costOf),
    {
      what: 'time of a period at 8°, a free body over the exact one (10,000 at least)',
      value: contactTime / exactTime,
      unit: '×',
      met: contactTime / exactTime >= fasterBy,
    },
    { what: 'error of that period by a free body', value: 1e6 * worst('contact'), unit: '10⁻⁶' },
    {
      what: 'that error over the exact one’s (100,000 at least)',
      value: errors,
      unit: '×',
      met: errors >= nearerBy,
    },
  ]);
}

function costOf(id: string): Finding {
  const answer = checkDesign(readFileSync(design, 'utf8'), design);
  if (!answer.ok) throw new Error(`the benchmark’s design ${design} has mistakes`);
  const { loads, people, design: made } = answer.value;
  const sitter = people.persons[0]!.name;
  const record = loads
    .map((one) => one.record)
    .find(({ load }) => load.id === id && (load.sitter ?? sitter) === sitter)!;
  const { low, median, high } = microsecondsPerCall(() => {
    secondOpinions([record], made.floor.friction, sitter);
  });
  return {
    what: `${id}, a second time`,
    value: median / 1000,
    spread: { low: low / 1000, high: high / 1000 },
    unit: 'ms',
    target,
    met: median / 1000 < target,
  };
}
