/**
 * Every fixture against its answers. They were got outside this code: closed forms, hand calculation, brute force with
 * 34 digits and more; each case's why.md says how, and each answer's `how`.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkDesign, type CheckResult } from '../src/check-design.js';
import { measuresOf } from '../src/names.js';
import type { ReportObject } from '../src/report/schema.js';
import { trueroll } from './stand-in-world.js';

interface Answer {
  readonly of: string;
  readonly measure: string;
  readonly value: number | string | null | readonly number[];
  /** Absolute; not stated: exactly this. */
  readonly tolerance?: number;
  /** Of a measure without a value: what its reason has to say. */
  readonly says?: string;
  readonly how: string;
}
interface Answers {
  readonly exitCode: number;
  readonly verdict: string;
  readonly answers: readonly Answer[];
}

const cases = readdirSync('fixtures', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);
const designOf = (name: string): string => `fixtures/${name}/design.yaml`;
const answersOf = (name: string): Answers =>
  JSON.parse(readFileSync(`fixtures/${name}/answers.json`, 'utf8')) as Answers;

/** The command line on one file. */
async function check(path: string): Promise<{ exitCode: number; report: ReportObject }> {
  const files = { [path]: readFileSync(path) };
  const { code, stdout, stderr } = await trueroll(['check', path, '--format', 'json'], { files });
  expect(stderr).toBe('');
  return { exitCode: code, report: JSON.parse(stdout) as ReportObject };
}

function resultOf(path: string): CheckResult {
  const checked = checkDesign(readFileSync(path, 'utf8'), path);
  if (!checked.ok) throw new RangeError(`resultOf: ${path} is no design`);
  return checked.value;
}

/** What the report says there; undefined where it has no such thing. */
function found(report: ReportObject, result: CheckResult, { of, measure }: Answer): unknown {
  const [what, name] = [of.split(' ', 1)[0], of.slice(of.indexOf(' ') + 1)];
  if (of === 'chair') return field(report.chair, measure);
  if (what === 'part') return field(named(report.chair.parts, 'name', name), measure);
  if (measure === 'leastRadiusM' || measure === 'leastReachM')
    return field(named(result.limits, 'id', name)?.reason, measure.slice(0, -1));
  if (what === 'limit') return field(named(report.limits, 'id', name), measure);
  const load = loadOf(report, of);
  return measure in (load?.measures ?? {}) ? field(load?.measures, measure) : field(load, measure);
}

/** `empty`, or `seated/shortest`. */
function loadOf(report: ReportObject, of: string): ReportObject['loads'][number] | undefined {
  const [id, sitter = null] = of.split(/\/(.*)/u, 2);
  return report.loads.find((load) => load.id === id && load.sitter === sitter);
}

const field = (object: unknown, key: string): unknown =>
  (object as Readonly<Record<string, unknown>> | null | undefined)?.[key];
const named = <Key extends string, T extends Readonly<Record<Key, unknown>>>(
  list: readonly T[],
  key: Key,
  name: string,
): T | undefined => list.find((item) => item[key] === name);

/** NaN agrees with nothing; neither does a number with a missing one. */
function agrees(value: unknown, answer: Pick<Answer, 'value' | 'tolerance'>): boolean {
  const { value: wanted, tolerance = 0 } = answer;
  if (Array.isArray(wanted) && Array.isArray(value))
    return (
      wanted.length === value.length &&
      wanted.every((number: number, i) => agrees(value[i], { value: number, tolerance }))
    );
  if (typeof wanted === 'number' && typeof value === 'number') return Math.abs(value - wanted) <= tolerance;
  return value === wanted;
}

describe.each(cases)('%s', (name) => {
  const wanted = answersOf(name);
  let exitCode: number;
  let report: ReportObject;
  let result: CheckResult;
  beforeAll(async () => {
    ({ exitCode, report } = await check(designOf(name)));
    result = resultOf(designOf(name));
  });

  it(`ends with exit code ${wanted.exitCode}, verdict ${wanted.verdict}`, () => {
    expect({ exitCode, verdict: report.verdict }).toEqual({
      exitCode: wanted.exitCode,
      verdict: wanted.verdict,
    });
  });

  it.each(wanted.answers.map((answer) => [answer.of, answer.measure, answer] as const))(
    '%s: %s',
    (of, measure, answer) => {
      const value = found(report, result, answer);
      const shown = `${of} ${measure}: found ${JSON.stringify(value)}, answer ${JSON.stringify(answer)}`;
      expect(agrees(value, answer), shown).toBe(true);
      if (answer.says !== undefined)
        expect(field(loadOf(report, of)?.missing, measure)).toContain(answer.says);
    },
  );

  it('has an answer for every measure of every load', () => {
    const answered = wanted.answers.map(({ of, measure }) => `${of} ${measure}`);
    for (const { id, sitter, measures } of report.loads)
      for (const key of Object.keys(measures))
        expect(answered).toContain(`${sitter === null ? id : `${id}/${sitter}`} ${key}`);
  });

  it('has an answer for every limit that was judged', () => {
    const answered = wanted.answers.filter(({ measure }) => measure === 'verdict').map(({ of }) => of);
    expect(answered.toSorted()).toEqual(report.limits.map(({ id }) => `limit ${id}`).toSorted());
  });

  it('says why each measure without a value has none', () => {
    for (const { measures, missing } of report.loads)
      for (const [key, value] of Object.entries(measures))
        expect(field(missing, key) !== undefined, key).toBe(value === null);
  });

  it('says why it exists', () => {
    expect(readFileSync(`fixtures/${name}/why.md`, 'utf8')).toMatch(/^# .+\n\n\S/);
  });
});

describe('the fixtures together', () => {
  it('have a number for every measure of every load that they are put through', () => {
    const answered = new Set(
      cases.flatMap((name) =>
        answersOf(name)
          .answers.filter(({ value }) => typeof value === 'number')
          .map(({ of, measure }) => `${of.split('/', 1)[0]} ${measure}`),
      ),
    );
    const rolled = new Set(
      cases.flatMap((name) => resultOf(designOf(name)).loads.map(({ record }) => record.load.id)),
    );
    expect(rolled).toContain('empty');
    for (const load of rolled)
      for (const measure of measuresOf(load)) expect(answered).toContain(`${load} ${measure}`);
  });

  it('include one that passes and one for each way to fail', () => {
    const codes = cases.map((name) => answersOf(name).exitCode);
    expect(new Set(codes)).toEqual(new Set([0, 1]));
  });
});

describe('the comparison itself', () => {
  it.each([
    [1, 1 + 2e-9],
    [1, NaN],
    [1, null],
    [null, 0],
    [null, undefined],
    ['pass', 'fail'],
    [[1, 2], [1]],
    [
      [1, 2],
      [1, 2.1],
    ],
  ])('%j is not %j', (value, other) => {
    expect(agrees(other, { value, tolerance: 1e-9 })).toBe(false);
  });

  it('allows what the tolerance allows', () => {
    expect(agrees(1 + 1e-10, { value: 1, tolerance: 1e-9 })).toBe(true);
    expect(agrees([1, 2 - 1e-10], { value: [1, 2], tolerance: 1e-9 })).toBe(true);
  });
});
