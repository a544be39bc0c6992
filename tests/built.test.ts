/** The built command line as a process, as a maker or a build server starts it. */
import { spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  lstatSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const trueroll = (args: readonly string[], input = '') =>
  spawnSync(process.execPath, ['bin/trueroll.js', ...args], { encoding: 'utf8', input, timeout: 20_000 });

const good = 'fixtures/porch-rocker/design.yaml';
const bad = 'fixtures/short-tails/design.yaml';
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'trueroll-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('the built command line', () => {
  it.each(['text', 'json', 'junit', 'markdown'])('checks in %s', (format) => {
    expect(trueroll(['check', good, '--format', format])).toMatchObject({ status: 0, stderr: '' });
    expect(trueroll(['check', bad, '--format', format])).toMatchObject({ status: 1, stderr: '' });
  });

  it.each(['text', 'json', 'markdown'])('compares in %s', (format) => {
    const { status, stdout, stderr } = trueroll(['compare', good, bad, '--format', format]);
    expect([status, stdout === '', stderr]).toEqual([1, false, '']);
  });

  it.each(['design', 'report', 'comparison'])('prints the schema of the %s', (of) => {
    expect(JSON.parse(trueroll(['schema', of]).stdout)).toHaveProperty('$schema');
  });

  it('reads standard input, and says what it cannot read', () => {
    expect(trueroll(['check', '-', '--quiet'], readFileSync(good, 'utf8'))).toMatchObject({
      status: 0,
      stdout: '',
    });
    for (const path of ['no-such-file.yaml', 'fixtures'])
      expect(trueroll(['check', path])).toMatchObject({
        status: 2,
        stdout: '',
        stderr: expect.stringMatching(
          /^\S+: expected a design file that can be read, found [^\n]+\n$/,
        ) as string,
      });
  });

  it('does not read without end', () => {
    expect(trueroll(['check', '-'], 'x'.repeat(20_000_000))).toMatchObject({ status: 2, stdout: '' });
    if (existsSync('/dev/zero'))
      expect(trueroll(['check', '/dev/zero'])).toMatchObject({ status: 2, stdout: '' });
  });
});

describe('--out', () => {
  it('writes the whole answer', () => {
    const path = join(folder, 'report.json');
    expect(trueroll(['check', good, '--format', 'json', '--out', path])).toMatchObject({
      status: 0,
      stdout: '',
    });
    expect(JSON.parse(readFileSync(path, 'utf8'))).toMatchObject({ verdict: 'pass' });
  });

  it('never writes over a file that was read, by whatever name', () => {
    const [design, link] = [join(folder, 'own.yaml'), join(folder, 'link.yaml')];
    writeFileSync(design, readFileSync(good));
    symlinkSync(design, link);
    for (const out of [design, link]) {
      expect(trueroll(['check', design, '--out', out])).toMatchObject({ status: 2, stdout: '' });
      expect(trueroll(['compare', good, design, '--out', out])).toMatchObject({ status: 2, stdout: '' });
    }
    expect(readFileSync(design, 'utf8')).toBe(readFileSync(good, 'utf8'));
  });

  it('writes where a link points, and leaves the link', () => {
    const [target, link] = [join(folder, 'target.txt'), join(folder, 'to-target.txt')];
    writeFileSync(target, 'old');
    symlinkSync(target, link);
    expect(trueroll(['check', good, '--out', link])).toMatchObject({ status: 0 });
    expect(readFileSync(target, 'utf8')).toContain('Porch rocker');
    expect(readFileSync(link, 'utf8')).toBe(readFileSync(target, 'utf8'));
  });

  it('leaves nothing behind when a design is bad, or the place cannot be written', () => {
    const path = join(folder, 'never.txt');
    expect(trueroll(['check', good, 'no-such-file.yaml', '--out', path])).toMatchObject({ status: 2 });
    expect(trueroll(['check', good, '--out', join(folder, 'no', 'such', 'folder')])).toMatchObject({
      status: 2,
    });
    expect(trueroll(['check', good, '--out', folder])).toMatchObject({ status: 2 });
    expect(existsSync(path)).toBe(false);
  });
});

describe('a sweep of the built command line', () => {
  const many = (steps: number): string[] => [
    ...['sweep', good, '--vary', `radius=34 in..42 in:${steps} values`, '--loads', 'empty,seated'],
    ...['--format', 'jsonl'],
  ];

  it('gives the same bytes however many threads work', () => {
    const [one, three] = ['1', '3'].map((count) => trueroll([...many(2500), '--threads', count]));
    expect([one!.status, one!.stderr, three!.status, three!.stderr]).toEqual([0, '', 0, '']);
    expect(one!.stdout.split('\n')).toHaveLength(2501);
    expect(three!.stdout === one!.stdout).toBe(true);
  });

  it('leaves whole lines when it is stopped by Ctrl-C', async () => {
    const running = spawn(process.execPath, ['bin/trueroll.js', ...many(1_000_000)]);
    const said = { stdout: '', stderr: '' };
    running.stderr.on('data', (text: Buffer) => (said.stderr += text.toString()));
    running.stdout.on('data', (text: Buffer) => {
      if (said.stdout === '') running.kill('SIGINT');
      said.stdout += text.toString();
    });
    const code = await new Promise((resolve) => running.on('close', resolve));
    expect(code).toBe(130);
    const lines = said.stdout.split('\n');
    expect(lines.pop()).toBe('');
    lines.forEach((line, i) => {
      expect((JSON.parse(line) as { design: number }).design).toBe(i + 1);
    });
    expect(said.stderr).toBe(`stopped after ${lines.length} of 1000000 designs\n`);
  });

  it.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
    ['SIGHUP', 129],
  ] as const)('leaves no file behind when it is stopped by %s', async (signal, code) => {
    const out = join(folder, `stopped-${signal}.jsonl`);
    const running = spawn(process.execPath, ['bin/trueroll.js', ...many(1_000_000), '--out', out]);
    const part = (): boolean => readdirSync(folder).some((name) => name.endsWith('.part'));
    while (!part()) await new Promise((resolve) => setTimeout(resolve, 20));
    await new Promise((resolve) => setTimeout(resolve, 500));
    running.kill(signal);
    const ended = await new Promise((resolve) => running.on('close', resolve));
    expect([ended, part(), existsSync(out)]).toEqual([code, false, false]);
  });

  it('ends quietly when nobody reads any more', () => {
    const head = spawnSync(
      'sh',
      [
        '-c',
        `${process.execPath} bin/trueroll.js ${many(200_000)
          .map((word) => `'${word}'`)
          .join(' ')} | head -3`,
      ],
      { encoding: 'utf8', timeout: 20_000 },
    );
    expect([head.status, head.stderr, head.stdout.split('\n').length]).toEqual([0, '', 4]);
  });
});

describe('where answers go', () => {
  const shell = (line: string) =>
    spawnSync('bash', ['-c', line], { encoding: 'utf8', timeout: 20_000, cwd: folder });
  const bin = join(process.cwd(), 'bin/trueroll.js');
  const run = `${process.execPath} ${bin}`;
  const design = join(process.cwd(), good);

  it('is never the file that standard input is taken from', () => {
    const own = join(folder, 'own-in.yaml');
    writeFileSync(own, readFileSync(good));
    for (const command of ['check -', 'sweep - --vary radius=1m --loads empty', 'adjust - --by tail'])
      expect(shell(`${run} ${command} --out ${own} < ${own}`)).toMatchObject({
        status: 2,
        stderr: `${own}: expected a file that can be written, found a file that was read\n`,
      });
    expect(readFileSync(own, 'utf8')).toBe(readFileSync(good, 'utf8'));
  });

  it('is where links point, though nothing is there yet; never in place of a link', () => {
    const absolute = join(folder, 'made', 'absolute.txt');
    shell(`mkdir -p made far && ln -s ${absolute} to-absolute && ln -s made/relative.txt far-link`);
    shell('ln -s ../far-link far/twice && ln -s loop loop');
    for (const link of ['to-absolute', 'far/twice'])
      expect(shell(`${run} check ${design} --out ${link}`)).toMatchObject({ status: 0, stderr: '' });
    for (const path of [absolute, join(folder, 'made', 'relative.txt')])
      expect(readFileSync(path, 'utf8')).toContain('Porch rocker');
    expect(shell(`${run} check ${design} --out loop`)).toMatchObject({
      status: 2,
      stderr: 'loop: expected a file that can be written, found a link that leads back to itself\n',
    });
    expect(lstatSync(join(folder, 'loop')).isSymbolicLink()).toBe(true);
  });

  it('is full: that is said once', () => {
    if (!existsSync('/dev/full')) return;
    for (const command of [
      `check ${design}`,
      `sweep ${design} --vary 'radius=34 in..42 in:3000 values' --loads empty --threads 1`,
    ])
      expect(shell(`${run} ${command} > /dev/full`)).toMatchObject({
        status: 2,
        stderr: 'standard output: expected to take the answer, found no space left\n',
      });
  });

  it('says so where standard input is a folder', () => {
    for (const command of ['check -', 'sweep - --vary radius=1m'])
      expect(shell(`${run} ${command} < ${folder}`)).toMatchObject({
        status: 2,
        stderr: '-: expected a design file that can be read, found a directory\n',
      });
  });

  it('moves no cursor by what was typed', () => {
    const red = '\u001b[31mred';
    for (const args of [
      [red],
      ['check', good, `--${red}`],
      ['check', good, '--format', red],
      ['schema', red],
    ]) {
      const { status, stderr } = trueroll(args);
      expect([status, stderr.includes('red'), stderr.includes('\u001b')]).toEqual([2, true, false]);
    }
  });
});

describe('shares that are no files', () => {
  const share = (which: string): string =>
    trueroll([
      ...['sweep', good, '--vary', 'radius=34 in..42 in:1 in', '--loads', 'empty,seated'],
      ...['--share', which],
    ]).stdout;
  const shell = (line: string) => spawnSync('bash', ['-c', line], { encoding: 'utf8', timeout: 20_000 });
  const joins = (...paths: string[]): string =>
    `${process.execPath} bin/trueroll.js sweep --join ${paths.join(' ')}`;

  it('are refused: pipes, named or not, devices, folders', () => {
    const [one, pipe] = [join(folder, 'one.jsonl'), join(folder, 'pipe.jsonl')];
    writeFileSync(one, share('1/1'));
    expect(shell(joins(one))).toMatchObject({ status: 0, stderr: '' });
    shell(`mkfifo ${pipe}`);
    for (const path of [`<(cat ${one})`, pipe, '/dev/zero', folder])
      expect(shell(joins(path))).toMatchObject({
        status: 2,
        stdout: '',
        stderr: expect.stringMatching(/^\S+: expected a share that can be read, found [^\n]+\n$/) as string,
      });
  });

  it('and a line without an end is not read to its end', () => {
    const path = join(folder, 'endless.jsonl');
    writeFileSync(path, '');
    truncateSync(path, 600 * 2 ** 20);
    expect(shell(joins(path))).toMatchObject({
      status: 2,
      stdout: '',
      stderr: `${path}: expected a share that can be read, found a line of more than 16 MB\n`,
    });
  });
});
