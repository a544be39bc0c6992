import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tool } from '../src/report/tool.js';
import { reportSchema } from '../src/report/schema.js';
import { trueroll } from './stand-in-world.js';

const fixture = (name: string): string => readFileSync(`fixtures/${name}/design.yaml`, 'utf8');
const files = {
  'good.yaml': fixture('porch-rocker'),
  'bad.yaml': fixture('short-tails'),
  'broken.yaml': 'trueroll: 1\nparts: [',
};
/** A period without a load means the sitters, and nobody sits in it. */
const unknown = `${fixture('one-arc-metric')}limits: { period: 1 s .. 3 s }\n`;

describe('trueroll', () => {
  it('alone says in six lines what to type next', async () => {
    const { code, stdout, stderr } = await trueroll([]);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout.trimEnd().split('\n')).toHaveLength(6);
  });

  it('says the version of the package', async () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(await trueroll(['--version'])).toMatchObject({ code: 0, stdout: `${version}\n` });
    expect(tool.version).toBe(version);
  });

  it.each([
    [['--help']],
    [['new', '--help']],
    [['check', '--help']],
    [['compare', '--help']],
    [['tolerance', '--help']],
    [['schema', '--help']],
  ])('%s shows an example', async (argv) => {
    const { code, stdout } = await trueroll(argv);
    expect(code).toBe(0);
    expect(stdout).toMatch(/Examples?:\n {2}\$ trueroll /);
  });

  it.each([
    [['chek', 'good.yaml']],
    [['check']],
    [['check', '--format', 'xml', 'good.yaml']],
    [['check', '--nonsense', 'good.yaml']],
    [['schema']],
    [['schema', 'chair']],
    [['schema', '__proto__']],
  ])('%s is bad usage: 2, nothing on stdout', async (argv) => {
    const { code, stdout, stderr } = await trueroll(argv, { files });
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).not.toBe('');
  });
});

describe('exit codes', () => {
  it.each([
    ['all limits met', ['good.yaml'], 0],
    ['a limit not met', ['bad.yaml'], 1],
    ['a limit unknown', ['unknown.yaml'], 2],
    ['a bad file', ['broken.yaml'], 2],
    ['no file', ['missing.yaml'], 2],
    ['the worst of several', ['good.yaml', 'bad.yaml'], 1],
    ['the worst of several, unknown', ['bad.yaml', 'unknown.yaml'], 2],
    ['a bad file among good ones', ['good.yaml', 'broken.yaml'], 2],
  ])('%s', async (_, paths, code) => {
    for (const format of ['text', 'json', 'junit', 'markdown'])
      expect(
        // With the second calculation too in JSON: the exit code must not hang on the format.
        await trueroll(
          ['check', ...paths, '--format', format, ...(format === 'json' ? [] : ['--no-second-opinion'])],
          {
            files: { ...files, 'unknown.yaml': unknown },
          },
        ),
      ).toMatchObject({ code });
  });
});

describe('check', () => {
  it('with a bad file among good ones says nothing on stdout and writes nothing', async () => {
    const outcome = await trueroll(['check', 'good.yaml', 'broken.yaml', '--out', 'report.txt'], { files });
    expect(outcome).toMatchObject({ code: 2, stdout: '' });
    expect(outcome.stderr).toMatch(/^broken\.yaml:\d+:\d+: /);
    expect(outcome.written.size).toBe(0);
  });

  it('names a file that cannot be read', async () => {
    const { stderr } = await trueroll(['check', 'missing.yaml'], { files });
    expect(stderr).toBe(
      'missing.yaml: expected a design file that can be read, found no such file or folder\n',
    );
  });

  it('refuses bytes that are no text', async () => {
    const { code, stderr } = await trueroll(['check', 'photo.yaml'], {
      files: { 'photo.yaml': Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0) },
    });
    expect([code, stderr]).toEqual([2, 'photo.yaml: expected text (UTF-8), found bytes that are no text\n']);
  });

  it('reads standard input', async () => {
    const typed = await trueroll(['check', '-', '--format', 'json'], { stdin: files['good.yaml'] });
    expect(typed.code).toBe(0);
    expect(JSON.parse(typed.stdout)).toMatchObject({ verdict: 'pass', design: { file: '-' } });
  });

  it('writes to a file what it would have said', async () => {
    const said = await trueroll(['check', 'good.yaml'], { files });
    const outcome = await trueroll(['check', 'good.yaml', '--out', 'report.txt'], { files });
    expect(outcome).toMatchObject({ code: 0, stdout: '' });
    expect(outcome.written.get('report.txt')).toBe(said.stdout);
  });

  it('says when the answer cannot be written', async () => {
    const outcome = await trueroll(['check', 'good.yaml', '--out', 'nowhere/report.txt'], { files });
    expect(outcome).toMatchObject({ code: 2, stdout: '' });
    expect(outcome.stderr).toMatch(/^nowhere\/report\.txt: expected a file that can be written/);
  });

  it('is quiet when asked', async () => {
    expect(await trueroll(['check', 'bad.yaml', '--quiet'], { files })).toMatchObject({
      code: 1,
      stdout: '',
      stderr: '',
    });
  });

  it('calculates a second time in every format unless --no-second-opinion', async () => {
    for (const format of ['text', 'json', 'junit', 'markdown']) {
      const ask = ['check', 'good.yaml', '--format', format];
      const [plain, without] = await Promise.all([
        trueroll(ask, { files }),
        trueroll([...ask, '--no-second-opinion'], { files }),
      ]);
      expect(plain.code).toBe(0);
      expect(without.code).toBe(0);
      expect(plain.stdout).toMatch(
        format === 'json' ? /"tipBackEnergyJ": \d+\.\d+,\n\s+"slideM"/ : /free to slide and lift, agrees/,
      );
      expect(without.stdout).toMatch(
        format === 'json' ? /"secondOpinion": null/ : /No second calculation was made/,
      );
    }
  });

  it('is coloured on a terminal only, and not with NO_COLOR', async () => {
    const coloured = await trueroll(['check', 'good.yaml'], { files, tty: true, columns: 100 });
    const plain = await trueroll(['check', 'good.yaml'], {
      files,
      tty: true,
      columns: 100,
      env: { NO_COLOR: '1' },
    });
    const piped = await trueroll(['check', 'good.yaml'], { files });
    const escape = String.fromCharCode(27);
    expect(coloured.stdout).toContain(escape);
    expect(plain.stdout).not.toContain(escape);
    expect(piped.stdout).toBe(plain.stdout);
  });

  it('keeps to the width of the terminal', async () => {
    const { stdout } = await trueroll(['check', 'bad.yaml', '--all', '--parts'], {
      files,
      tty: true,
      columns: 80,
      env: { NO_COLOR: '1' },
    });
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });
});

describe('check --format json', () => {
  it('is one object for one file, an array for several, by its own schema', async () => {
    const one = await trueroll(['check', 'bad.yaml', '--format', 'json'], { files });
    expect(() => reportSchema.parse(JSON.parse(one.stdout))).not.toThrow();
    const two = await trueroll(['check', 'bad.yaml', 'good.yaml', '--format', 'json'], { files });
    expect((JSON.parse(two.stdout) as object[])[0]).toEqual(JSON.parse(one.stdout));
    for (const report of JSON.parse(two.stdout) as object[])
      expect(() => reportSchema.parse(report)).not.toThrow();
  });

  it('gives the same bytes for the same input', async () => {
    const runs = await Promise.all(
      [1, 2].map(() => trueroll(['check', 'bad.yaml', '--format', 'json'], { files })),
    );
    expect(runs[0]).toEqual(runs[1]);
  });

  it('carries the digest of the bytes: SHA-256 of “abc” by FIPS 180-4, appendix example', async () => {
    const { createHash } = await import('node:crypto');
    expect(createHash('sha256').update('abc').digest('hex').slice(0, 16)).toBe('ba7816bf8f01cfea');
    const { stdout } = await trueroll(['check', 'good.yaml', '--format', 'json'], { files });
    const digest = createHash('sha256').update(files['good.yaml']).digest('hex');
    expect(JSON.parse(stdout)).toMatchObject({ design: { sha256: digest } });
  });
});

describe('schema', () => {
  it.each(['design', 'report', 'comparison'])('%s is a JSON Schema', async (of) => {
    const { code, stdout } = await trueroll(['schema', of]);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      type: 'object',
    });
  });
});
