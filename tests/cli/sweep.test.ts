import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkDesign } from '../../src/check-design.js';
import { sweepSchema, type SweepRowObject } from '../../src/report/sweep-schema.js';
import { jsonFactor, type MeasureKey } from '../../src/names.js';
import { tool } from '../../src/report/tool.js';
import { trueroll, type StandIn } from '../stand-in-world.js';

const porch = readFileSync('fixtures/porch-rocker/design.yaml', 'utf8');
const files = {
  'porch.yaml': porch,
  'broken.yaml': 'trueroll: 1\nparts: [',
  'standard.yaml': porch.replace(/^sitters:\n( {2}- .*\n)+/m, 'sitters: standard\n'),
};
const sweep = (argv: readonly string[], more: StandIn = {}) =>
  trueroll(['sweep', ...argv], { files, ...more });
const still = ['--loads', 'empty,seated'];
const radii = ['porch.yaml', '--vary', 'radius=34 in..42 in:1/4 in', ...still];
const formats = ['text', 'csv', 'jsonl', 'json'] as const;

const rowsOf = (text: string): SweepRowObject[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as SweepRowObject);

describe('trueroll sweep', () => {
  it('says of each design what a check of it says', async () => {
    const argv = [
      '--vary',
      'radius=35 in..41 in:2 in',
      '--vary',
      'tail=14 in, 21 in',
      '--show',
      'period',
      '--show',
      'rockerLeftBack',
    ];
    const { code, stdout } = await sweep(['porch.yaml', ...argv, '--format', 'jsonl']);
    expect(code).toBe(0);
    const rows = rowsOf(stdout);
    expect(rows.map(({ values }) => values)).toEqual(
      [35, 37, 39, 41].flatMap((radius) => [
        [radius, 14],
        [radius, 21],
      ]),
    );
    for (const { values, measures, verdict, notMet } of rows) {
      const [radius, tail] = values as [number, number];
      const text = porch
        .replace('radius: 36 in', `radius: ${radius} in`)
        .replace('tail: 21 in', `tail: ${tail} in`);
      const alone = checkDesign(text, 'porch.yaml');
      if (!alone.ok) throw new Error('a changed porch rocker that cannot be checked');
      const { limits, loads, verdict: same } = alone.value;
      expect(verdict).toBe(same);
      expect(notMet).toEqual(limits.filter((limit) => limit.verdict !== 'pass').map(({ id }) => id));
      const asked = [
        ['seated', 'periodS'],
        ['leaning-back-hard', 'rockerLeftBackM'],
      ] as const;
      const values12 = asked.flatMap(([id, key]: readonly [string, MeasureKey]) =>
        loads
          .filter(({ record }) => record.load.id === id)
          .map(({ measured }) => Number(((measured.get(key) as number) * jsonFactor(key)).toPrecision(12))),
      );
      // To the last of 12 digits: a dimension of 35 in comes by two ways into SI.
      measures.forEach((value, i) => {
        expect(Math.abs(value! - values12[i]!)).toBeLessThan(1e-10);
      });
    }
    expect(new Set(rows.map(({ verdict }) => verdict)).size).toBeGreaterThan(1);
  });

  it('answers in a JSON that its schema describes, with what came of it', async () => {
    const { code, stdout, stderr } = await sweep([...radii, '--format', 'json']);
    expect([code, stderr]).toEqual([0, '']);
    const { rows, summary, whole, designs } = sweepSchema.parse(JSON.parse(stdout));
    expect([rows.length, designs, summary.designs, whole]).toEqual([33, 33, 33, true]);
    expect(summary.pass).toBe(rows.filter(({ verdict }) => verdict === 'pass').length);
    expect(summary.comfortable).toBe(rows.filter(({ comfortable }) => comfortable).length);
    const passing = rows.filter(({ verdict }) => verdict === 'pass').map(({ values }) => values[0]!);
    expect(summary.passing).toEqual([[Math.min(...passing), Math.max(...passing)]]);
    expect(summary.roomiest).toEqual(rows[summary.roomiest!.design - 1]);
  });

  it('prints a table, a line a design, in no more than 100 columns', async () => {
    const { stdout } = await sweep(radii);
    expect(stdout.split('\n').every((line) => line.length <= 100)).toBe(true);
    expect(stdout).toMatch(/^33 designs: radius 34 in to 42 in, 33 values\.$/m);
    expect(stdout).toMatch(/^ *36 in +2\.03 \/ 2\.41 s +10 \/ 8\.5° +met +seated\/\w+\/\w+$/m);
    expect(stdout).toMatch(/^ *42 in .* NOT MET +seated\/period\/shortest/m);
    expect(stdout).toMatch(/^All limits met by 17 of 33: radius from 34 in to 38 in\.$/m);
    // Nobody leaned back in it: nothing is said of how that was.
    expect(stdout).not.toMatch(/comfortable|hard lean/i);
  });

  it('tells what cannot be built, and goes on', async () => {
    const argv = ['porch.yaml', '--vary', 'depth=2 in, 40 in', ...still, '--format', 'csv'];
    const { code, stdout } = await sweep(argv);
    const lines = stdout.trimEnd().split('\r\n');
    expect([code, lines.length]).toEqual([0, 3]);
    expect(lines[2]).toMatch(/^2,40,,,,,unknown,false,,,,,"porch\.yaml:\d+:\d+: expected a depth less than/);
  });

  it('varies the sizes of sitters', async () => {
    const { stdout } = await sweep([
      'porch.yaml',
      '--vary',
      'tallest mass=60 kg..120 kg:20 kg',
      ...still,
      '--format',
      'jsonl',
      '--show',
      'seated/period/tallest',
    ]);
    const periods = rowsOf(stdout).map(({ measures }) => measures[0]!);
    expect(periods).toHaveLength(4);
    expect(new Set(periods).size).toBe(4);
  });

  it.each<[string[], RegExp[]]>([
    [['porch.yaml'], [/^--vary: expected what to vary/m]],
    [['--vary', 'radius=1 m'], [/a design file, or --join/]],
    [['missing.yaml', '--vary', 'radius=1 m'], [/^missing\.yaml: expected a design file that can be read/]],
    [['broken.yaml', '--vary', 'radius=1 m'], [/^broken\.yaml:\d+:\d+: /]],
    [
      [
        'porch.yaml',
        '--vary',
        'radios=1 m',
        '--vary',
        'tail=2 m..1 m',
        '--show',
        'perod',
        '--loads',
        'emty',
        '--threads',
        'all',
        '--share',
        '3/2',
      ],
      [
        /`radios`\. Hint: did you mean `radius`/,
        /lower end first/,
        /did you mean `period`/,
        /did you mean `empty`/,
        /--threads `all`/,
        /--share `3\/2`/,
      ],
    ],
    [['porch.yaml', '--vary', 'radius=1 m', '--vary', 'radius=2 m'], [/each once, found radius again/]],
    [
      ['porch.yaml', '--vary', 'radius=0.9 m..1 m:1e6 values'],
      [/expected a unit or a name of this design, found `values`/],
    ],
    [
      [
        'porch.yaml',
        '--vary',
        'radius=0.9 m..1 m:1000000 values',
        '--vary',
        'tail=0.4 m..0.5 m:1000000 values',
      ],
      [/at most 1,000,000,000 designs in one sweep, found 1,000,000,000,000 designs/],
    ],
    [[...radii, '--share', '1/2', '--format', 'csv'], [/no --format but jsonl with a share/]],
    [
      [...radii, '--show', 'seated/period/nobody'],
      [/a sitter, found `nobody`\. Hint: there are shortest, tallest/],
    ],
    [[...radii, '--out', 'nowhere/a.csv'], [/^nowhere\/a\.csv: expected a file that can be written/]],
    [['porch.yaml', '--join', 'a.jsonl'], [/nothing beside the shares/]],
    [['porch.yaml', '--vary', 'radius=36 in, 36 in'], [/expected each value once, found `36 in` again/]],
    [
      [...radii, '--show', 'period', '--show', 'seated/period'],
      [/expected each measure once, found one again/],
    ],
    [[...radii, '--out', 'a.csv', '--out', 'b.csv'], [/^--out: expected it once, found it again$/m]],
    [
      ['porch.yaml', '--vary', 'radius=36 in..40 in:1e-300 in'],
      [/found more than 1,000,000,000,000,000 designs\. Hint: take larger steps/],
    ],
    [
      ['standard.yaml', '--vary', 'tallest mass=60 kg..120 kg'],
      [/found `tallest mass` of `sitters: standard`\. Hint: write the sitters out one by one/],
    ],
  ])('refuses %s, every mistake in a line of its own', async (argv, messages) => {
    const { code, stdout, stderr, written } = await sweep(argv);
    expect([code, stdout, written.size]).toEqual([2, '', 0]);
    for (const message of messages) expect(stderr).toMatch(message);
    expect(stderr.trimEnd().split('\n')).toHaveLength(messages.length);
  });

  it('stops when it is asked to, with whole lines; a file of --out is not written then', async () => {
    const many = ['porch.yaml', '--vary', 'radius=34 in..42 in:1/256 in', ...still];
    const soon = { stopping: (stop: () => void) => void setImmediate(() => setImmediate(stop)) };
    const { code, stdout, stderr } = await sweep([...many, '--format', 'jsonl'], soon);
    expect(code).toBe(130);
    const done = rowsOf(stdout).length;
    expect(done).toBeGreaterThan(0);
    expect(done).toBeLessThan(2049);
    expect(stderr).toBe(`stopped after ${done} of 2049 designs\n`);
    const kept = await sweep([...many, '--out', 'all.csv', '--format', 'csv'], soon);
    expect([kept.code, kept.written.size]).toEqual([130, 0]);
    const json = await sweep([...many, '--format', 'json'], soon);
    expect(sweepSchema.parse(JSON.parse(json.stdout)).whole).toBe(false);
  }, 30_000);
});

describe('who goes over in a sweep', () => {
  const short = { files: { 'short.yaml': readFileSync('fixtures/short-tails/design.yaml', 'utf8') } };
  const tails = ['sweep', 'short.yaml', '--vary', 'tail=12 in, 20 in'];

  it('is told before all else that is not met, and in its columns', async () => {
    const { stdout } = await trueroll([...tails, '--show', 'leaning-back-hard/rockerLeftBack'], short);
    expect(stdout).toMatch(/^12 in +over {2}GOES OVER {4}reader, leaning back hard$/m);
    expect(stdout).toMatch(/^20 in +\S+ in {2}met/m);
    expect(stdout).toMatch(/^In 1 of 2 a load takes the chair over: GOES OVER, `over` in its columns\.$/m);
  });

  it('is told in CSV and JSON; a child on the tails, of whom no limit asks anything, is not counted', async () => {
    const json = await trueroll([...tails, '--format', 'json'], short);
    const { rows, summary } = sweepSchema.parse(JSON.parse(json.stdout));
    const reader = { load: 'leaning-back-hard', sitter: 'reader', way: 'back' };
    expect(rows.map(({ goesOver }) => goesOver.filter(({ sitter }) => sitter !== null))).toEqual([
      [reader],
      [],
    ]);
    expect(summary.goesOver).toBe(1);
    const csv = await trueroll([...tails, '--format', 'csv'], short);
    expect(csv.stdout.split('\r\n')[1]).toMatch(/,fail,false,leaning-back-hard\/reader: back(;|,)/);
  });
});

it('a sitter whose name has an equals sign is varied', async () => {
  const named = { 'named.yaml': porch.replace('name: tallest', 'name: "a=b"') };
  const argv = ['sweep', 'named.yaml', '--vary', 'a=b mass=100 kg, 110 kg', ...still];
  expect(await trueroll(argv, { files: named })).toMatchObject({ code: 0, stderr: '' });
  const aimed = ['adjust', 'named.yaml', '--to', 'seated/period/a=b=2.4 s', '--by', 'a=b mass'];
  expect(await trueroll(aimed, { files: named })).toMatchObject({ code: 0, stderr: '' });
});

describe('a table of a sweep', () => {
  it('tells columns of one measure apart by load and sitter', async () => {
    const shows = [
      'getting-up/kickBack/shortest',
      'seated/period',
      'seated/frictionDemand/tallest',
      'empty/frictionDemand',
    ];
    const { stdout } = await sweep([
      ...['porch.yaml', '--vary', 'radius=36 in,37 in'],
      ...shows.flatMap((show) => ['--show', show]),
    ]);
    const lines = stdout.split('\n');
    const at = lines.findIndex((line) => line.startsWith('radius'));
    expect(lines[at]).toMatch(/^radius +kickBack +period +frictionDemand +frictionDemand +not met/);
    expect(lines[at - 1]!.trim().split(/ {2,}/)).toEqual(['shortest', 'seated tallest', 'empty']);
    for (const [word, below] of [
      ['shortest', 'kickBack'],
      ['seated tallest', 'frictionDemand'],
    ] as const)
      expect(lines[at - 1]!.indexOf(word) + word.length).toBe(lines[at]!.indexOf(below) + below.length);
  });

  it('has one line of headings where they tell the columns apart', async () => {
    const { stdout } = await sweep(radii);
    expect(stdout).toMatch(/\n\n *radius +period/);
  });

  it('has tenths of a pound where kilograms were asked for', async () => {
    const masses = ['porch.yaml', '--vary', 'tallest mass=60 kg, 80 kg', ...still];
    expect((await sweep(masses)).stdout).toMatch(/^ *132\.3 lb /m);
    expect((await sweep([...masses, '--format', 'csv'])).stdout).toMatch(/^1,132\.277\d+,/m);
  });
});

describe('a sweep in CSV', () => {
  it('keeps ids of limits apart whatever names have in them, and moves no cursor', async () => {
    const named = porch.replaceAll('name: shortest', 'name: "old \\e[31maunt"');
    const argv = ['sweep', 'named.yaml', '--vary', 'radius=44 in', ...still, '--format', 'csv'];
    const { stdout } = await trueroll(argv, { files: { 'named.yaml': named } });
    expect(stdout).not.toContain('\u001b');
    expect(stdout).toContain('seated/period/old  [31maunt; seated/');
  });
});

describe('loads of a sweep', () => {
  const nobody = { files: { 'empty.yaml': porch.replace(/^sitters:\n( {2}- .*\n)+/m, '') } };
  const varied = ['sweep', 'empty.yaml', '--vary', 'radius=36 in, 38 in'];

  it.each([
    ['seated', 'seated', 'the design has no sitters'],
    ['empty, getting-up', 'getting-up', 'the design has no sitters'],
  ])('%s, that the design has not, are refused', async (loads, load, why) => {
    const { code, stdout, stderr } = await trueroll([...varied, '--loads', loads], nobody);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toBe(
      `--loads \`${loads}\`: expected loads that this design has, found \`${load}\`: ${why}\n`,
    );
  });

  it('are named; nothing is said once', async () => {
    const { code, stderr } = await trueroll([...varied, '--loads', ','], nobody);
    expect([code, stderr.trimEnd().split('\n')]).toEqual([2, [expect.stringMatching(/^--loads `,`: /)]]);
  });

  it('of which no limit asks anything are not met but unknown', async () => {
    const argv = ['porch.yaml', '--vary', 'radius=36 in, 38 in', '--loads', 'child-on-the-tails'];
    const { stdout } = await sweep(argv);
    expect(stdout).toMatch(/^ *36 in {2}unknown +no limit is about these loads: nothing was judged$/m);
    expect(stdout).toMatch(/^All limits met by 0 of 2\.$/m);
    const { summary } = sweepSchema.parse(JSON.parse((await sweep([...argv, '--format', 'json'])).stdout));
    expect([summary.pass, summary.unknown]).toEqual([0, 2]);
  });
});

describe('shares of a sweep', () => {
  let shares: Record<string, string> = {};
  const share = async (which: string): Promise<string> => (await sweep([...radii, '--share', which])).stdout;

  beforeAll(async () => {
    const texts = await Promise.all([1, 2, 3, 4, 5].map((number) => share(`${number}/5`)));
    shares = Object.fromEntries(texts.map((text, i) => [`${i + 1}.jsonl`, text]));
  });
  const join = (given: Record<string, string>, ...argv: string[]) =>
    sweep(['--join', ...Object.keys(given), ...argv], { files: { ...files, ...given } });

  it.each(formats)('joined are the whole sweep byte for byte, in whatever order: %s', async (format) => {
    const whole = await sweep([...radii, '--format', format]);
    const turned = Object.fromEntries(Object.entries(shares).reverse());
    const joined = await join(turned, '--format', format);
    expect([joined.code, joined.stderr]).toEqual([0, '']);
    expect(joined.stdout).toBe(whole.stdout);
  });

  it('one that was cut off is told and, made again, joins', async () => {
    const cut = { ...shares, '3.jsonl': shares['3.jsonl']!.slice(0, -300) };
    const refused = await join(cut, '--out', 'all.csv');
    expect([refused.code, refused.stdout, refused.written.size]).toEqual([2, '', 0]);
    expect(refused.stderr).toMatch(/^3\.jsonl:?\d*:?\d*: expected (a whole share|design \d+), found/);
    const again = await join({ ...cut, '3.jsonl': await share('3/5') }, '--format', 'csv');
    expect(again.stdout).toBe((await sweep([...radii, '--format', 'csv'])).stdout);
  });

  it('a missing, a doubled, a strange one and another file are told', async () => {
    const others = Object.fromEntries(Object.entries(shares).filter(([name]) => name !== '2.jsonl'));
    expect((await join(others)).stderr).toBe(
      '--join: expected share 2/5, found none. Hint: make it: --share 2/5\n',
    );
    expect((await join({ ...shares, 'again.jsonl': shares['4.jsonl']! })).stderr).toMatch(
      /each share once, found share 4 again/,
    );
    const other = (await sweep([...radii, '--show', 'tipBack', '--share', '3/5'])).stdout;
    expect((await join({ ...shares, '3.jsonl': other })).stderr).toMatch(
      /^3\.jsonl: expected a share of the same sweep as 1\.jsonl/,
    );
    expect((await join({ 'a.yaml': porch })).stderr).toMatch(/a share as `trueroll sweep --share` writes it/);
    const torn = shares['1.jsonl']!.split('\n')
      .filter((_, line) => line !== 2)
      .join('\n');
    expect((await join({ ...shares, '1.jsonl': torn })).stderr).toMatch(/^1\.jsonl:3:1: expected design 2/);
  });

  /** The third line of the second share, or its last, as another. */
  const broken = (
    change: (line: Record<string, unknown>) => unknown,
    last = false,
  ): Record<string, string> => {
    const lines = shares['2.jsonl']!.trimEnd().split('\n');
    const at = last ? lines.length - 1 : 2;
    lines[at] = JSON.stringify(change(JSON.parse(lines[at]!) as Record<string, unknown>));
    return { ...shares, '2.jsonl': `${lines.join('\n')}\n` };
  };
  const place = (): string => `2.jsonl:3:1: expected design ${rowsOf(shares['1.jsonl']!).length}`;

  it.each<[string, (row: Record<string, unknown>) => unknown]>([
    ['nothing but its number', ({ design }) => ({ design })],
    ['no object', ({ design }) => [design]],
    ['a value too many', (row) => ({ ...row, values: [36, 37] })],
    ['a measure too few', (row) => ({ ...row, measures: (row['measures'] as unknown[]).slice(1) })],
    ['words for a number', (row) => ({ ...row, values: ['36'] })],
    ['a verdict that is none', (row) => ({ ...row, verdict: 'maybe' })],
    ['a field too many', (row) => ({ ...row, remark: 'new' })],
  ])('a row that holds %s is told before anything is written', async (_, change) => {
    for (const format of formats) {
      const { code, stdout, stderr, written } = await join(broken(change), '--format', format);
      expect([code, stdout, written.size]).toEqual([2, '', 0]);
      expect(stderr.startsWith(place())).toBe(true);
      expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    }
  });

  it('an end that counts other rows is no end', async () => {
    const { code, stdout, stderr } = await join(broken((end) => ({ ...end, rows: 99 }), true));
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(/^2\.jsonl: expected a whole share, found one that .*--share 2\/5\n$/);
  });

  it('a head with a unit that is none, by whatever name, is no head', async () => {
    for (const unit of ['__proto__', 'constructor', 'furlong']) {
      const other = shares['1.jsonl']!.replace('"unit":"in"', `"unit":"${unit}"`);
      const { code, stdout, stderr } = await join({ ...shares, '1.jsonl': other });
      expect([code, stdout, stderr]).toEqual([
        2,
        '',
        expect.stringMatching(/^1\.jsonl: expected a share as `/),
      ]);
    }
  });

  it('rows that are others when they are read again are told, and leave no file', async () => {
    const { code, stdout, stderr, written } = await sweep(
      ['--join', ...Object.keys(shares), '--out', 'all.csv', '--format', 'csv'],
      { files: { ...files, ...shares }, readTwice: false },
    );
    expect([code, stdout, written.size]).toEqual([2, '', 0]);
    expect(stderr).toBe('--join: expected 33 rows in the shares, found others when they were read again\n');
  });

  it.each([
    ['1/10001', 'at most 10,000 shares, found 10001'],
    [`1/${'9'.repeat(400)}`, `at most 10,000 shares, found ${'9'.repeat(400)}`],
    ['', 'which share of how many, such as 3/16, found nothing'],
    ['0/3', 'which share of how many, such as 3/16, found 0/3'],
  ])('--share %s is refused', async (which, words) => {
    const { code, stdout, stderr } = await sweep([...radii, '--share', which]);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain(`: expected ${words}`);
  });

  it.each([
    ['0', '0'],
    ['257', '257'],
    ['1000', '1000'],
    ['', 'nothing'],
    ['1.5', '1.5'],
  ])('--threads %s is refused, with how many there may be', async (count, found) => {
    const { code, stderr } = await sweep([...radii, '--threads', count]);
    expect(code).toBe(2);
    expect(stderr).toContain(`: expected how many threads, from 1 to 256, found ${found}\n`);
  });

  it('one made by another version is told, and how to make it again', async () => {
    const older = (text: string): string => text.replace(`"version":"${tool.version}"`, '"version":"0.0.9"');
    expect(older(shares['3.jsonl']!)).not.toBe(shares['3.jsonl']);
    const one = await join({ ...shares, '3.jsonl': older(shares['3.jsonl']!) });
    expect([one.code, one.stdout]).toEqual([2, '']);
    expect(one.stderr).toBe(
      `3.jsonl: expected a share made by trueroll ${tool.version}, found one by trueroll 0.0.9. Hint: make it again: --share 3/5\n`,
    );
    const all = await join(
      Object.fromEntries(Object.entries(shares).map(([name, text]) => [name, older(text)])),
    );
    expect([all.code, all.stdout]).toEqual([2, '']);
  });

  it('one whose head tells of another sweep is told, whatever its digest says', async () => {
    const other = shares['4.jsonl']!.replace('"last":42', '"last":43');
    expect(other).not.toBe(shares['4.jsonl']);
    const { code, stdout, stderr } = await join({ ...shares, '4.jsonl': other });
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(/^4\.jsonl: expected a share of the same sweep as 1\.jsonl/);
  });

  it('a head that no sweep has is none', async () => {
    const head = (change: object): Record<string, string> => {
      const [first = '', ...rows] = shares['1.jsonl']!.split('\n');
      const changed = { ...(JSON.parse(first) as object), ...change };
      return { '1.jsonl': [JSON.stringify(changed), ...rows].join('\n') };
    };
    for (const change of [{ share: 6 }, { share: 0 }, { of: 0 }, { share: 1.5 }]) {
      const { code, stderr } = await join(head(change));
      expect([code, stderr]).toEqual([2, expect.stringMatching(/^1\.jsonl: expected a share as `/)]);
    }
    const few = await join({ '1.jsonl': await share('1/10000') });
    expect(few.code).toBe(2);
    expect(few.stderr.split('\n').length).toBeLessThan(20);
    const many = await join(head({ of: 10_001 }));
    expect(many.stderr).toMatch(/^1\.jsonl: expected a share as `/);
  });
});
