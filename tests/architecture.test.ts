/** The layout of DEVELOPERS.md, held: what a file may import, what it may be called, what may not stand in it. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { importsOf, importProblems, nameProblems, roomOf, rooms, wordProblems } from './architecture.js';

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name).replaceAll('\\', '/'))
    .filter((path) => statSync(path).isFile())
    .toSorted();
}
const textOf = (path: string) => readFileSync(path, 'utf8');
const sources = filesUnder('src');

describe('the tree', () => {
  it('has sources to look at', () => {
    expect(sources).toContain('src/names.ts');
    expect(sources.flatMap((path) => importsOf(textOf(path))).length).toBeGreaterThan(5);
  });

  it('imports only upwards', () => {
    expect(sources.flatMap((path) => importProblems(path, textOf(path)))).toEqual([]);
  });

  it('has files and folders that say what they hold', () => {
    expect(sources.flatMap(nameProblems)).toEqual([]);
  });

  it.each(['src', 'tests', 'bin', 'benchmarks', 'fixtures'])('%s is free of loose ends', (folder) => {
    const problems = filesUnder(folder).flatMap((path) => wordProblems(path, textOf(path)));
    expect(problems).toEqual([]);
  });

  it('has a bin of five lines that imports the built command line', () => {
    const bin = textOf('bin/trueroll.js');
    expect(bin.trimEnd().split('\n').length).toBeLessThanOrEqual(5);
    expect(importsOf(bin)).toEqual(['node:process', '../dist/load-compiled.js']);
    expect(bin).toContain('main.cjs');
  });
});

describe('the checks themselves', () => {
  it('read every form of import, and nothing that only looks like one', () => {
    const text = `
      import type { A } from './a.js';
      import { type B } from './b.js';
      import './c.js';
      export * from './d.js';
      export type { E } from './e.js';
      type F = import('./f.js').F;
      const quote = /'/;
      const g = await import('./g.js');
      const no = "import './no.js'"; // import './no.js'
      const hidden = await import(name);`;
    expect(importsOf(text)).toEqual(
      ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((l) => `./${l}.js`).concat('(computed)'),
    );
  });

  it('know the room of a file', () => {
    expect(roomOf('src/names.ts')).toBe('names.ts');
    expect(roomOf('src/drawing/read/dxf.ts')).toBe('drawing');
    expect(rooms.indexOf('geometry')).toBeLessThan(rooms.indexOf('rolling'));
  });

  it.each([
    ['src/geometry/piece.ts', './point.js'],
    ['src/rolling/rest.ts', '../geometry/point.js'],
    ['src/index.ts', './check-design.js'],
    ['src/drawing/read/dxf.ts', '../../geometry/piece.js'],
    ['src/cli/main.ts', 'node:fs'],
    ['src/cli/real-threads.ts', 'node:worker_threads'],
    ['src/quantity/expression.ts', 'mathjs/number'],
  ])('let %s import %s', (path, specifier) => {
    expect(importProblems(path, `import '${specifier}';`)).toEqual([]);
  });

  it.each([
    ['src/geometry/piece.ts', '../rolling/rest.js', 'stands below'],
    ['src/names.ts', './mass.js', 'stands below'],
    ['src/report/text.ts', '../cli/main.js', 'stands below'],
    ['src/geometry/piece.ts', '../shapes/circle.js', 'no room'],
    ['src/geometry/piece.ts', '../../tests/oracles/arc.js', 'outside src'],
    ['src/geometry/piece.ts', './point.ts', 'end in .js'],
    ['src/drawing/read/dxf.ts', '../write/dxf.js', 'share nothing'],
    ['src/drawing/write/dxf.ts', '../read/dxf.js', 'share nothing'],
    ['src/report/text.ts', 'node:fs', 'touches the world'],
    ['src/explore/pool.ts', 'node:worker_threads', 'touches the world'],
    ['src/report/text.ts', 'fs', 'no room for the package'],
    ['src/rolling/rest.ts', 'mathjs/number', 'only in quantity'],
    ['src/cli/main.ts', 'yaml', 'only in design'],
    ['src/cli/main.ts', '@scope/package/part', 'no room for the package @scope/package'],
  ])('stop %s from importing %s', (path, specifier, reason) => {
    for (const text of [`import '${specifier}';`, `type T = import('${specifier}').T;`]) {
      expect(importProblems(path, text)).toEqual([expect.stringContaining(reason)]);
    }
  });

  it('stop an import whose target is computed', () => {
    expect(importProblems('src/cli/main.ts', 'await import(name)')).toEqual([
      expect.stringContaining('computed'),
    ]);
  });

  it.each([
    'src/geometry/utils.ts',
    'src/wood/wood-helpers.ts',
    'src/services/x.ts',
    'src/misc.ts',
    'src/rest.ts',
  ])('stop a file called %s', (path) => {
    expect(nameProblems(path).length).toBeGreaterThan(0);
  });

  // The tilde keeps this file free of them itself.
  it.each([
    '// TO~DO: later',
    '// FIX~ME',
    "it.sk~ip('x')",
    'it.sk~ip.each([])',
    "describe.on~ly('x')",
    "it.to~do('x')",
    '/* eslint~-disable */',
    '// @ts~-ignore',
    '// @ts~-expect-error',
    'file: /ho~me/someone/chair.dxf',
    String.raw`"C:\\Us~ers\\someone"`,
  ])('stop the line %s', (line) => {
    const text = `first line\n${line.replace('~', '')}`;
    expect(wordProblems('tests/x.test.ts', text)).toEqual([expect.stringMatching(/^tests\/x\.test\.ts:2: /)]);
  });

  it('let ordinary words stand', () => {
    const line =
      "read('fixtures/home/workbench.yaml'); // skip the empty lines only; https://example.org/home/";
    expect(wordProblems('tests/x.test.ts', line)).toEqual([]);
  });
});
