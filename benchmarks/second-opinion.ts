/** What a second calculation costs, and what it is worth beside the exact one on the same question. */
import { readFileSync } from 'node:fs';
import { checkDesign } from '../src/check-design.js';
import { secondOpinions } from '../src/checks/second-calculation.js';
import { freeSwingSeen } from '../src/contact/free-swing.js';
import { courseAlone, stepFor } from '../src/contact/second-opinion.js';
import { profileOf } from '../src/geometry/profile.js';
import { runningSurface } from '../src/geometry/running-surface.js';
import { rocker } from '../src/geometry/words/rocker.js';
import { isMissing } from '../src/numeric/missing.js';
import { landscapeOf } from '../src/rolling/landscape.js';
import { wholeSwing } from '../src/rolling/rolling-time.js';
import { freeSwing } from '../src/rolling/swing.js';
import type { Finding } from './finding.js';
import { microsecondsPerCall } from './timing.js';

export const question =
  'What does the second calculation of a load cost, and how far is it from the exact one?';

const design = 'fixtures/porch-rocker/design.yaml';
/** Milliseconds for one load at rest. */
const target = 500;
/** The exact period is to be so much faster, and so much nearer to the truth. */
const fasterBy = 1e4;
const nearerBy = 1e5;

const degree = Math.PI / 180;
const swing = 8 * degree;
const machineEpsilon = 2 ** -52;

/** Persons of 60 to 100 kg on one arc of 1.07 m. */
const bodies = [60, 80, 100].map((mass) => ({ mass, centre: { x: 0, y: 0.6 }, inertia: mass / 9 }));

export function run(): Promise<Finding[]> {
  const { profile, surface } = runnerOfOneArc();
  const asked = bodies.map((body) => {
    const landscape = landscapeOf(profile, body.centre);
    const stretch = landscape.stretches
      .filter((each) => each.kind === 'round')
      .find(({ radius }) => radius > 0)!;
    // The same integral with far more steps than it needs.
    const truth = wholeSwing(stretch, body.inertia / body.mass, swing, 400);
    const exact = (): number => {
      const found = freeSwing(landscape, surface, body, 0, swing);
      return isMissing(found) ? NaN : found.period;
    };
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
    ...['empty', 'seated'].map(costOf),
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

function runnerOfOneArc() {
  const made = rocker({
    arcs: [{ radius: 1.07, until: null }],
    depth: 0.05,
    nose: 0.5,
    tail: 0.5,
    at: 0,
    along: 'level',
  });
  if (!made.ok) throw new Error('the benchmark’s rocker is none');
  const profile = profileOf([[made.boundary]]);
  return { profile, surface: runningSurface(profile, () => [made.ends.tail, made.ends.nose]) };
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
