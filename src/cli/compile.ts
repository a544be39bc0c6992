/** The last step of the build: runs the quick commands once and keeps what V8 compiled for them. `node dist/compile.js DESIGN` */
import { readFile } from 'node:fs/promises';
import process from 'node:process';
import type { Commands } from './commands.js';
import { compiling } from './load-compiled.js';
import type { Output, World } from './world.js';

const unheard: Output = {
  write: () => undefined,
  ready: () => Promise.resolve(true),
  isTTY: false,
  columns: undefined,
};

const unasked = (): never => {
  throw new Error('a command that is compiled writes no file');
};

const worldOf = (argv: readonly string[]): World => ({
  argv,
  files: { read: (path) => readFile(path), write: unasked, draft: unasked, isFile: unasked, lines: unasked },
  stdin: () => Promise.resolve(new Uint8Array()),
  stdout: unheard,
  stderr: unheard,
  env: {},
  threads: null,
  onStop: () => () => undefined,
});

const dist = new URL('./', import.meta.url);
const program = compiling(new URL('main.cjs', dist));
const { main } = program.exported as typeof import('./main.js');
const [, , design = ''] = process.argv;
for (const argv of [
  ['check', design],
  ['compare', design, design],
]) {
  const command = compiling(new URL(`${argv[0]!}.cjs`, dist));
  const code = await main(worldOf(argv), (() => Promise.resolve(command.exported)) as Commands);
  if (code !== 0) throw new Error(`${argv.join(' ')}, which is compiled, ended with ${code}`);
  command.keep();
}
program.keep();
