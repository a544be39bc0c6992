/** The README's examples run, and its lists are those of the code. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { woodNames, woods } from '../src/wood/woods.js';
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

  it('shows limits that are read', async () => {
    const limits = /^limits: .*$/m.exec(readme)?.[0] ?? '';
    const { code, stderr } = await trueroll(['check', 'limits.yaml', '--quiet'], {
      files: { 'limits.yaml': `${files['cabin.yaml']}${limits}\n` },
    });
    expect([limits === '', code === 2, stderr]).toEqual([false, false, '']);
  });

  it('lists every wood with its other names', () => {
    for (const { name, aliases } of woods)
      for (const word of [name, ...aliases]) expect(readme).toContain(word);
    expect(woodNames().length).toBeGreaterThanOrEqual(woods.length);
  });

  it('names only commands, options and files that exist', async () => {
    const help = (await trueroll(['check', '--help'])).stdout;
    for (const [option] of readme.matchAll(/(?<=`)--[a-z-]+/g))
      if (option !== '--ignore-scripts') expect(help).toContain(option);
    for (const [, script] of readme.matchAll(/npm run ([a-z]+)/g))
      expect(readFileSync('package.json', 'utf8')).toContain(`"${script!}":`);
  });
});
