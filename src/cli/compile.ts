/** The last step of the build: runs one check and keeps what V8 compiled for it. `node dist/compile.js DESIGN` */
import { readFile } from 'node:fs/promises';
import process from 'node:process';
import type { Commands } from './commands.js';
import { compiling } from './load-compiled.js';
import type { Output, World } from './world.js';

const unheard: Output = { write: () => undefined, isTTY: false, columns: undefined };

const world: World = {
  argv: ['check', ...process.argv.slice(2)],
  files: { read: (path) => readFile(path), write: () => Promise.resolve() },
  stdin: () => Promise.resolve(new Uint8Array()),
  stdout: unheard,
  stderr: unheard,
  env: {},
};

const dist = new URL('./', import.meta.url);
const program = compiling<typeof import('./main.js')>(new URL('main.cjs', dist));
const check = compiling<typeof import('./commands/check.js')>(new URL('check.cjs', dist));
const code = await program.exported.main(world, (() =>
  Promise.resolve(check.exported)) as unknown as Commands);
if (code !== 0) throw new Error(`the check that is compiled ended with ${code}`);
program.keep();
check.keep();
