/** The README's examples run, and its lists are those of the code. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { woodNames, woods } from '../src/wood/woods.js';
import { junitProblems } from './oracles/junit-format.js';
import { readXml } from './oracles/xml.js';
import { trueroll } from './stand-in-world.js';

const readme = readFileSync('README.md', 'utf8');

/** The fenced block after a comment such as `<!-- example: cabin.yaml -->`. */
function blockAfter(comment: string): string {
  const at = readme.indexOf(`<!-- ${comment} -->`);
  const fence = readme.indexOf('```', at);
  const start = readme.indexOf('\n', fence) + 1;
  if (at < 0 || fence < 0) throw new Error(`the README has no block ${comment}`);
  return readme.slice(start, readme.indexOf('```', start));
}

const files = { 'cabin.yaml': blockAfter('example: cabin.yaml') };

describe('the README', () => {
  it('shows a design that passes, and what is said of it', async () => {
    const { code, stdout } = await trueroll(['check', 'cabin.yaml'], { files });
    expect(code).toBe(0);
    expect(blockAfter('output: check cabin.yaml')).toBe(stdout);
  });

  it('shows lines that are answered, in their order', async () => {
    const excerpts = [...readme.matchAll(/<!-- (lines of: (.*)) -->/g)];
    expect(excerpts).toHaveLength(2);
    const porch = { 'porch.yaml': readFileSync('fixtures/porch-rocker/design.yaml', 'utf8') };
    for (const [, comment = '', command = ''] of excerpts) {
      expect(readme).toContain(`\ntrueroll ${command}\n`);
      const argv = [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');
      const { code, stdout } = await trueroll(argv, { files: porch });
      expect(code).toBe(0);
      // Between two marks the lines follow each other.
      let left = stdout;
      for (const piece of blockAfter(comment).split(/^…\n/m)) {
        expect(left).toContain(piece);
        left = left.slice(left.indexOf(piece) + piece.length);
      }
    }
  }, 30_000);

  it('shows limits that are read', async () => {
    const limits = /^limits: .*$/m.exec(readme)?.[0] ?? '';
    const { code, stderr } = await trueroll(['check', 'limits.yaml', '--quiet'], {
      files: { 'limits.yaml': `${files['cabin.yaml']}${limits}\n` },
    });
    expect([limits === '', code === 2, stderr]).toEqual([false, false, '']);
  });

  it('shows names that may be kept', async () => {
    const keep = /`(keep: \[.*?\])`/.exec(readme)?.[1] ?? '';
    const { code, stderr } = await trueroll(['check', 'kept.yaml', '--quiet'], {
      files: { 'kept.yaml': `${files['cabin.yaml']}${keep}\n` },
    });
    expect([keep === '', code, stderr]).toEqual([false, 0, '']);
  });

  it('says as --help does what a comfortable design is where a range has one end', async () => {
    const { stdout } = await trueroll(['sweep', '--help']);
    for (const text of [stdout, readme])
      expect(text.replace(/\s+/g, ' ')).toMatch(
        /of a range with one end[:,] a quarter of that bound away from it/,
      );
  });

  it('lists every wood with its other names', () => {
    for (const { name, aliases } of woods)
      for (const word of [name, ...aliases]) expect(readme).toContain(word);
    expect(woodNames().length).toBeGreaterThanOrEqual(woods.length);
  });

  it('names only commands, options and files that exist', async () => {
    const helps = await Promise.all(
      ['new', 'check', 'compare', 'sweep', 'adjust', 'tolerance'].map((of) => trueroll([of, '--help'])),
    );
    const help = helps.map(({ stdout }) => stdout).join('\n');
    for (const [option] of readme.matchAll(/(?<=`)--[a-z-]+/g))
      if (option !== '--ignore-scripts') expect(help).toContain(option);
    for (const [, script] of readme.matchAll(/npm run ([a-z]+)/g))
      expect(readFileSync('package.json', 'utf8')).toContain(`"${script!}":`);
  });
});

describe('the workflow of the README', () => {
  interface Step {
    readonly run?: string;
    readonly uses?: string;
    readonly with?: Readonly<Record<string, string | number>>;
  }
  const { jobs } = parse(blockAfter('workflow')) as { jobs: { roll: { steps: readonly Step[] } } };
  const { steps } = jobs.roll;
  const lines = steps.flatMap(({ run }) => run?.trim().split('\n') ?? []);
  const designs = ['designs/cabin.yaml', 'designs/porch.yaml'];
  const world = {
    files: Object.fromEntries(designs.map((path) => [path, files['cabin.yaml']])),
    stdin: files['cabin.yaml'],
  };

  /** The arguments of a line's call of trueroll, as a shell would hand them on. */
  function argumentsIn(line: string): string[] {
    const [, words = ''] = /(?:^|\| )trueroll ([^|>]+)/.exec(line) ?? [];
    return words
      .trim()
      .split(' ')
      .flatMap((word) => (word === 'designs/*.yaml' ? designs : [word]));
  }
  const calls = lines.filter((line) => line.includes('trueroll ')).map(argumentsIn);

  it('calls trueroll as it may be called, and is answered', async () => {
    expect(calls.map(([command]) => command)).toEqual(['check', 'check', 'compare']);
    const outcomes = await Promise.all(calls.map((argv) => trueroll(argv, world)));
    expect(outcomes.map(({ code, stderr }) => [code, stderr])).toEqual(calls.map(() => [0, '']));
    const [judged, summary, moved] = outcomes;
    expect(junitProblems(readXml(judged!.written.get('report.xml')!))).toEqual([]);
    expect(summary!.stdout).toMatch(/^### All listed limits met, /);
    expect(moved!.stdout).toContain('Nothing moved');
  });

  it('keeps the report that it writes, and installs as the first page says', () => {
    const kept = steps.find(({ uses }) => uses?.startsWith('actions/upload-artifact@'));
    expect(calls[0]!.slice(-2)).toEqual(['--out', kept?.with?.['path']]);
    expect(lines).toContain('npm ci && npm link');
    const { engines } = JSON.parse(readFileSync('package.json', 'utf8')) as { engines: { node: string } };
    const node = steps.find(({ uses }) => uses?.startsWith('actions/setup-node@'))?.with?.['node-version'];
    expect(engines.node).toContain(`>=${String(node)}.`);
  });
});
