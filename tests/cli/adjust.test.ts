import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkDesign } from '../../src/check-design.js';
import { adjustmentSchema } from '../../src/report/adjust-schema.js';
import { reportJson } from '../../src/report/json.js';
import { trueroll } from '../stand-in-world.js';

const fixture = (name: string): string => readFileSync(`fixtures/${name}/design.yaml`, 'utf8');
const porch = fixture('porch-rocker');
const files = {
  'porch.yaml': porch,
  'short.yaml': fixture('short-tails'),
  'metric.yaml': fixture('one-arc-metric'),
  'broken.yaml': 'trueroll: 1\nparts: [',
};
const adjust = (...argv: string[]) => trueroll(['adjust', ...argv], { files });
const answer = async (...argv: string[]) => {
  const { code, stdout } = await adjust(...argv, '--format', 'json');
  return { code, ...adjustmentSchema.parse(JSON.parse(stdout)) };
};

describe('trueroll adjust', () => {
  it('tells what to set, what comes of it, and the line for the design, in no more than 100 columns', async () => {
    const { code, stdout, stderr } = await adjust('porch.yaml', '--to', 'period=2.1 s', '--by', 'radius');
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(
      /^shortest: one full rock, small: 2\.1 s wanted, 2\.03 s as the design stands\.$/m,
    );
    expect(stdout).toMatch(/^ {2}exactly: radius 36 in → 35\.\d+ in$/m);
    expect(stdout).toMatch(/^ {2}set: radius 36 in → 35 in \(then one full rock, small 2\.1 s\)$/m);
    expect(stdout).toMatch(/^All listed limits are met then\.$/m);
    expect(stdout).toMatch(/^To put into the design: in `dimensions`, set `radius: 35 in`\.$/m);
    // The design goes over under no limit's load, before and after.
    expect(stdout).not.toContain('oes over');
    expect(stdout.split('\n').every((line) => line.length <= 100)).toBe(true);
  });

  it('answers in a JSON that its schema describes, with what a check of the changed design says', async () => {
    const { code, targets, by, solutions, closest } = await answer(
      'porch.yaml',
      '--to',
      'seated/period/tallest=2 s',
      '--by',
      'radius=36 in..48 in',
    );
    expect([code, closest, solutions.length]).toEqual([0, null, 1]);
    expect(targets[0]).toMatchObject({ sitter: 'tallest', measure: 'periodS', target: 2 });
    expect(by[0]).toMatchObject({ dimension: 'radius', unit: 'in', from: 36, least: 36, greatest: 48 });
    const [{ values, measures, notMet, broken, mended, verdict }] = solutions as [(typeof solutions)[0]];
    const changed = checkDesign(
      files['porch.yaml'].replace('radius: 36 in', `radius: ${values[0]!.to} in`),
      'porch.yaml',
    );
    if (!changed.ok) throw new Error('a changed porch rocker that cannot be built');
    const report = reportJson(changed.value);
    expect(report.verdict).toBe(verdict);
    expect(report.limits.filter((limit) => limit.verdict !== 'pass').map(({ id }) => id)).toEqual(notMet);
    // The design as it stands meets all: what is not met then is broken, and nothing is mended.
    expect([broken, mended]).toEqual([notMet, []]);
    expect(notMet).toContain('seated/period/shortest');
    const period = report.loads.find(({ id, sitter }) => id === 'seated' && sitter === 'tallest')!.measures
      .periodS!;
    expect(measures[0]! - period).toBeCloseTo(0, 9);
  });

  it('finds the nearest design that meets all limits, and changes nothing of one that does', async () => {
    const short = await answer('short.yaml');
    expect([short.code, short.solutions[0]!.verdict, short.solutions[0]!.mended.length]).toEqual([
      0,
      'pass',
      2,
    ]);
    const { stdout } = await adjust('short.yaml', '--by', 'tail');
    expect(stdout).toMatch(/^ {2}set: tail 12 in → 18-5\/16 in$/m);
    const porch = await adjust('porch.yaml', '--by', 'radius');
    expect([
      porch.code,
      /^ {2}set: as it stands$/m.test(porch.stdout),
      porch.stdout.includes('To put'),
    ]).toEqual([0, true, false]);
  });

  it('says what comes closest, with exit code 1, where a target is out of reach', async () => {
    const far = await answer('porch.yaml', '--to', 'period=9 s', '--by', 'radius=34 in..42 in');
    expect([far.code, far.solutions, far.closest!.values[0]!.to]).toEqual([1, [], 34]);
    expect(far.reach![1]).toBeLessThan(2.3);
    const { stdout } = await adjust('porch.yaml', '--to', 'period=9 s', '--by', 'radius=34 in..42 in');
    expect(stdout).toMatch(/^Not within reach: it goes from 1\.71 s to 2\.18 s there\.$/m);
    // Nobody is told to put in what does not do it.
    expect([stdout.includes('What comes closest'), stdout.includes('To put')]).toEqual([true, false]);
    const none = await adjust('short.yaml', '--by', 'noseLength');
    expect([none.code, /^No design within reach/m.test(none.stdout)]).toEqual([1, true]);
  });

  it('says so where the measure does not depend on the size, and offers nothing', async () => {
    const { code, stdout } = await adjust(
      'porch.yaml',
      ...['--to', 'seated/period/shortest=2.1 s', '--by', 'tallest mass=60 kg..120 kg'],
    );
    expect(code).toBe(1);
    expect(stdout).toMatch(
      /^Not within reach: it does not depend on tallest mass, and is 2\.03 s whatever that is\.$/m,
    );
    expect(stdout).not.toMatch(/closest|To put/);
  });

  it('says first who goes over then, and names limits as the other commands do', async () => {
    const argv = ['short.yaml', '--to', 'seated/period=2.2 s', '--by', 'tail=6 in..22 in'];
    const { stdout } = await adjust(...argv);
    const lines = stdout.split('\n');
    const at = lines.indexOf('Goes over then:');
    expect(lines[at + 1]).toBe('  reader, leaning back hard: goes over backwards, as it does now');
    const worse = await adjust(
      ...['porch.yaml', '--to', 'getting-up/kickBack/shortest=40 deg', '--by', 'noseLength=8 in..30 in'],
    );
    const [, told = ''] = worse.stdout.split('Goes over then:\n');
    expect(told).toMatch(/^ {2}shortest, getting up: goes over forwards, and does not now\n/);
    expect(told).toMatch(/^ {2}shortest, getting up: kicks back as far as +26\.5° +goes over$/m);
    expect(told).not.toMatch(/\w+\/\w+\/\w+/);
    expect(worse.stdout).toMatch(/^ {2}set: .*\(then kicks back as far as goes over\)$/m);
    const { closest } = await answer(...argv);
    expect(closest!.goesOver).toContainEqual({ load: 'leaning-back-hard', sitter: 'reader', way: 'back' });
  });

  it('changes alterations too', async () => {
    const trimmed = await adjust('porch.yaml', '--to', 'seatSlope=9 deg', '--by', 'front-legs');
    expect(trimmed.stdout).toMatch(
      /^ {2}set: front legs \d\/16 in shorter|^ {2}set: front legs 1\/8 in shorter/m,
    );
    expect(trimmed.stdout).toMatch(
      /^To put into the design: add the line `alterations: \{ front-legs: -[^`]+ \}`\.$/m,
    );
    const altered = { 'altered.yaml': `${porch}\nalterations: { tail-weight: 1 lb }\n` };
    const again = await trueroll(
      ['adjust', 'altered.yaml', '--to', 'seatSlope=9 deg', '--by', 'front-legs'],
      { files: altered },
    );
    expect(again.stdout).toMatch(/^To put into the design: in `alterations`, set `front-legs: -[^`]+`\.$/m);
  });

  it.each<[string, RegExp, string]>([
    ['tallest mass=60 kg..120 kg', /mass: 110 kg/, 'porch.yaml'],
    ['tallest stature=60 in..75 in', /stature: 5' 10"/, 'porch.yaml'],
    ['tallest mass=60 kg..120 kg', /weight: 110 kg/, 'weighed.yaml'],
  ])('a size of a sitter is written where it goes: %s as %s', async (by, written, file) => {
    const weighed = files['porch.yaml'].replace('mass: 110 kg', 'weight: 110 kg');
    const all = { files: { ...files, 'weighed.yaml': weighed } };
    const { code, stdout } = await trueroll(
      ['adjust', file, '--to', 'seated/period/tallest=2.35 s', '--by', by],
      all,
    );
    expect(code).toBe(0);
    const line = /^To put into the design: at the sitter tallest, set `(.+)`\.$/m.exec(stdout)![1]!;
    const changed = checkDesign(
      (file === 'porch.yaml' ? porch : weighed).replace(written, line),
      'porch.yaml',
    );
    if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
    const { loads } = reportJson(changed.value);
    const { periodS } = loads.find(({ id, sitter }) => id === 'seated' && sitter === 'tallest')!.measures;
    expect(periodS).toBeCloseTo(2.35, 2);
  });

  it('the line for the design, put into it, does what is told', async () => {
    const { stdout } = await adjust('porch.yaml', '--to', 'seatSlope=9 deg', '--by', 'front-legs');
    const line = /^To put into the design: add the line `(.+)`\.$/m.exec(stdout)![1]!;
    const changed = checkDesign(`${files['porch.yaml']}\n${line}\n`, 'porch.yaml');
    if (!changed.ok) throw new Error(JSON.stringify(changed.issues));
    const { limits } = reportJson(changed.value);
    const { value } = limits.find(({ id }) => id === 'seated/seatSlope/shortest')!;
    expect(value).toBeCloseTo(9, 0);
  });

  it.each<[string[], RegExp[]]>([
    [['missing.yaml', '--by', 'radius'], [/^missing\.yaml: expected a design file that can be read/]],
    [['broken.yaml', '--by', 'radius'], [/^broken\.yaml:\d+:\d+: /]],
    [['porch.yaml', '--to', 'period=2 s'], [/^--by: expected what to change/]],
    [
      ['porch.yaml', '--to', 'perod=2 s', '--by', 'radios'],
      [/did you mean `period`/, /did you mean `radius`/],
    ],
    [['porch.yaml', '--to', 'period=2 s', '--by', 'radius=42 in..34 in'], [/the lower end first/]],
    [['porch.yaml', '--to', 'period=2', '--by', 'radius'], [/Hint: write `2 s`$/m]],
    [
      ['porch.yaml', '--to', 'tallest/period=2 s', '--by', 'radius'],
      [/a load, found `tallest`\. Hint: did you mean `seated\/period\/tallest`\?$/m],
    ],
    [
      ['metric.yaml', '--to', 'empty/period=2 s', '--by', 'tail-wedge'],
      [/such as `tail-wedge=0 mm\.\.25 mm`/],
    ],
  ])('refuses %s, every mistake in a line of its own', async (argv, messages) => {
    const { code, stdout, stderr } = await adjust(...argv);
    expect([code, stdout]).toEqual([2, '']);
    for (const message of messages) expect(stderr).toMatch(message);
    expect(stderr.trimEnd().split('\n')).toHaveLength(messages.length);
  });
});
