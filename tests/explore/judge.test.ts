/** Verdicts of a sweep or a search, held against a check of the same chair. */
import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { checkDesign, withRemedies, type CheckResult } from '../../src/check-design.js';
import { defaultLimits } from '../../src/checks/default-limits.js';
import { readDesign } from '../../src/design/read-design.js';
import { designFunction, type BuiltDesign } from '../../src/explore/design-function.js';
import { judgeFor } from '../../src/explore/judge.js';
import { loadIds } from '../../src/names.js';

const fixture = (name: string): string => readFileSync(`fixtures/${name}/design.yaml`, 'utf8');

function checked(text: string): CheckResult {
  const result = checkDesign(text, 'design.yaml');
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}
function built(text: string): BuiltDesign {
  const read = readDesign(text, 'design.yaml');
  const tried = read.ok ? designFunction(read.value, []).at([]) : null;
  if (!tried?.ok) throw new Error('a design that cannot be built');
  return tried;
}

/** Kicks back past the ends of its rockers with the child in her arms, and misses nothing else that it is asked. */
const kicksWithChild = `${fixture('porch-rocker')
  .replace('radius: 36 in', 'radius: 32 in')
  .replace('tail: 21 in', 'tail: 20 in')
  .replace(/^limits:[^]*$/m, '')}
child: { mass: 12 kg }
limits: { period: off, kneeHollowGap: off, seatSlope: off, wallClearance: off, getting-up: { kickBack: off }, leaning-back-hard: { rockerLeftBack: off }, leaning-back-hard-with-a-child: { rockerLeftBack: off } }
`;

describe.each([
  ['porch-rocker', fixture('porch-rocker')],
  ['nursing', fixture('nursing')],
  ['kicks-back', fixture('kicks-back')],
  ['porch-rocker with a child', kicksWithChild],
])('%s', (_, text) => {
  it('is judged load by load, each rolled alone, as a check judges it', () => {
    const all = checked(text).limits;
    for (const load of loadIds)
      expect(judgeFor([load])(built(text)).limits).toEqual(all.filter((limit) => limit.load === load));
  });
});

test('a limit that is missed only with a child in the arms has what mends it', () => {
  const result = checked(kicksWithChild);
  const failing = result.limits.filter(({ verdict }) => verdict === 'fail').map(({ id }) => id);
  expect(failing).toEqual(['getting-up-with-a-child/kickBack/shortest']);
  const remedies = withRemedies(result, kicksWithChild, { stage: 'drawing' }).remedies.get(failing[0]!)!;
  expect(remedies.length).toBeGreaterThan(0);
  const [change] = remedies.find(({ changes }) => changes[0]!.change.variable.name === 'radius')!.changes;
  expect(checked(kicksWithChild.replace('radius: 32 in', `radius: ${change!.to / 0.0254} in`)).verdict).toBe(
    'pass',
  );
});

test('a default limit that is not against the seated rest is the same whatever that is', () => {
  const { design } = checked(fixture('nursing'));
  for (const { range, againstSeated } of defaultLimits) {
    const [one, other] = [0.3, 0.4].map((rockerEndBack) => range(design, { rockerEndBack }));
    if (againstSeated) expect(one).not.toEqual(other);
    else expect(one).toEqual(other);
  }
});
