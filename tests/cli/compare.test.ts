import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { comparisonSchema } from '../../src/report/compare-schema.js';
import { designText } from '../report/made-up.js';
import { trueroll } from '../stand-in-world.js';

/** Verdicts that hang on no rolling: the slope of the seat as drawn on a symmetrical chair is 0 or near it. */
const judged = (limits: string): string => `${designText([])}limits: { empty: { ${limits} } }\n`;
const files = {
  'met.yaml': judged('seatSlope: -20 deg .. 20 deg'),
  'not-met.yaml': judged('seatSlope: 45 deg ..'),
  'unknown.yaml': judged('seatSlope: -20 deg .. 20 deg').replace(/^seat: .*\n/m, ''),
  'broken.yaml': 'trueroll: 1\nparts: [',
  'wrong.yaml': 'trueroll: 1\nkind: throne\nparts: []\n',
};
const compare = (...argv: string[]) => trueroll(['compare', ...argv], { files });

describe('trueroll compare', () => {
  it.each([
    ['met.yaml', 'met.yaml', 0],
    ['not-met.yaml', 'met.yaml', 0],
    ['unknown.yaml', 'met.yaml', 0],
    ['met.yaml', 'not-met.yaml', 1],
    ['met.yaml', 'unknown.yaml', 2],
    ['broken.yaml', 'met.yaml', 2],
    ['met.yaml', 'broken.yaml', 2],
    ['met.yaml', 'missing.yaml', 2],
  ])('%s with %s ends with the exit code of the new one, or 2: %i', async (old, now, code) => {
    for (const format of ['text', 'json', 'markdown'])
      expect(await compare(old, now, '--format', format)).toMatchObject({ code });
  });

  it('tells the mistakes of both files, and nothing else', async () => {
    const { code, stdout, stderr } = await compare('broken.yaml', 'wrong.yaml');
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(/^broken\.yaml:\d+:\d+: /m);
    expect(stderr).toMatch(/^wrong\.yaml:2:\d+: .*throne/m);
  });

  it('reads one design from standard input, not both', async () => {
    const piped = await trueroll(['compare', '-', 'not-met.yaml'], { files, stdin: files['met.yaml'] });
    expect(piped.code).toBe(1);
    expect(piped.stdout).toContain('met → NOT MET');
    const twice = await trueroll(['compare', '-', '-'], { files, stdin: files['met.yaml'] });
    expect(twice).toMatchObject({
      code: 2,
      stdout: '',
      stderr: '-: expected standard input for one of the two designs, found it named for both\n',
    });
  });

  it('writes to a file what it would have said, and is quiet when asked', async () => {
    const said = await compare('met.yaml', 'not-met.yaml');
    const written = await compare('met.yaml', 'not-met.yaml', '--out', 'moved.txt');
    expect(written).toMatchObject({ code: 1, stdout: '' });
    expect(written.written.get('moved.txt')).toBe(said.stdout);
    expect(await compare('met.yaml', 'not-met.yaml', '--quiet')).toMatchObject({
      code: 1,
      stdout: '',
      stderr: '',
    });
    expect(await compare('met.yaml', 'met.yaml', '--out', 'nowhere/moved.txt')).toMatchObject({ code: 2 });
  });

  it('in JSON is by its own schema, with the digests of both files', async () => {
    const { stdout } = await compare('met.yaml', 'not-met.yaml', '--format', 'json');
    const said = comparisonSchema.parse(JSON.parse(stdout));
    expect([said.old.file, said.new.file]).toEqual(['met.yaml', 'not-met.yaml']);
    expect(said.old.sha256).toMatch(/^[\da-f]{64}$/);
    expect(said.old.sha256).not.toBe(said.new.sha256);
    expect(said.limits.map(({ id, change }) => [id, change])).toEqual([['empty/seatSlope', 'flipped']]);
  });

  it.each([
    [['met.yaml']],
    [['met.yaml', 'met.yaml', 'met.yaml']],
    [['met.yaml', 'met.yaml', '--format', 'junit']],
  ])('%s is bad usage', async (argv) => {
    const { code, stdout, stderr } = await compare(...argv);
    expect([code, stdout, stderr === '']).toEqual([2, '', false]);
  });

  it('is coloured on a terminal only', async () => {
    const escape = String.fromCharCode(27);
    const coloured = await trueroll(['compare', 'met.yaml', 'not-met.yaml'], {
      files,
      tty: true,
      columns: 90,
    });
    expect(coloured.stdout).toContain(escape);
    expect((await compare('met.yaml', 'not-met.yaml')).stdout).not.toContain(escape);
  });
});

describe('a chair from the fixtures', () => {
  it('with its tails uncut goes over later, and the verdict flips', async () => {
    const short = readFileSync('fixtures/short-tails/design.yaml', 'utf8');
    const long = short.replace('tail: 12 in', 'tail: 22 in');
    expect(long).not.toBe(short);
    const { code, stdout } = await trueroll(['compare', 'short.yaml', 'long.yaml', '--format', 'json'], {
      files: { 'short.yaml': short, 'long.yaml': long },
    });
    const { limits, loads, dimensions } = comparisonSchema.parse(JSON.parse(stdout));
    expect(code).toBe(0);
    expect(limits.map(({ id, change, old, new: now }) => [id, change, old?.verdict, now?.verdict])).toEqual([
      ['leaning-back-hard/leftToTipBack/reader', 'flipped', 'fail', 'pass'],
      ['leaning-back-hard/rockerLeftBack/reader', 'flipped', 'fail', 'pass'],
      // Held against the tail end of the rockers, which is farther off now.
      ['getting-up/kickBack/reader', 'bounds', 'pass', 'pass'],
    ]);
    // fixtures/short-tails/why.md: 156 mm of rocker are left with the tails uncut, none as it goes over.
    const { rockerLeftBackM } = loads.find(({ id }) => id === 'leaning-back-hard')!.measures;
    expect(rockerLeftBackM!.old).toBeNull();
    expect(rockerLeftBackM!.new).toBeCloseTo(0.156, 3);
    expect(dimensions.map(({ name, old, new: now }) => [name, old?.written, now?.written])).toEqual([
      ['tail', '12 in', '22 in'],
    ]);
  });
});
