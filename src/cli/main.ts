/** The command line. Each command is a bundle of its own, loaded only when it is called. */
import { Command, CommanderError } from 'commander';
import { printable } from '../report/printable.js';
import { tool } from '../report/tool.js';
import { declareAdjust } from './arguments/adjust.js';
import { declareCheck } from './arguments/check.js';
import { declareCompare } from './arguments/compare.js';
import { declareNew } from './arguments/new.js';
import { declareSchema } from './arguments/schema.js';
import { declareSweep } from './arguments/sweep.js';
import { declareTolerance } from './arguments/tolerance.js';
import type { Calling, Commands } from './commands.js';
import { loadCompiled } from './load-compiled.js';
import { processWorld } from './process-world.js';
import { exitCodes, type World } from './world.js';

/**
 * Runs the command line on the real world.
 * @param dist folder of the built commands
 * @returns the exit code
 */
export async function run(own: NodeJS.Process, dist: URL): Promise<number> {
  const { world, said } = processWorld(own, dist);
  const commands = (name: string): Promise<unknown> =>
    Promise.resolve(loadCompiled(new URL(`${name}.cjs`, dist)));
  const code = await main(world, commands as Commands);
  return (await said()) ? code : exitCodes.cannotJudge;
}

export async function main(world: World, commands: Commands): Promise<number> {
  if (world.argv.length === 0) {
    world.stdout.write(whatNext);
    return exitCodes.met;
  }
  let code: number = exitCodes.met;
  const program = programFor({ world, commands, answer: (answer) => (code = answer) });
  try {
    await program.parseAsync(world.argv, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.met : exitCodes.cannotJudge;
    world.stderr.write(`trueroll: stopped by a fault of its own: ${printable(String(error))}\n`);
    return exitCodes.cannotJudge;
  }
}

const declarations = [
  declareNew,
  declareCheck,
  declareSweep,
  declareAdjust,
  declareTolerance,
  declareCompare,
  declareSchema,
];

const whatNext = `trueroll rolls a rocking-chair design on the floor before the wood is cut.
  trueroll new --out design.yaml       a chair to begin with; new --from chair.dxf: your drawing
  trueroll check design.yaml           where it rests, how fast it rocks, whether it goes over
  trueroll sweep design.yaml --vary "radius=34 in..42 in:1/2 in"   which radii do
  trueroll adjust design.yaml --to "period=2.2 s" --by radius      the one that rocks so
  trueroll --help                      every command; trueroll check --help: one command with an example
`;

function programFor(calling: Calling): Command {
  const { stdout, stderr } = calling.world;
  const program = new Command('trueroll')
    .description('Rolls a rocking-chair design on the floor as a rigid body, before the wood is cut.')
    .version(tool.version)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => {
        stdout.write(text);
      },
      writeErr: (text) => {
        // Commander repeats what was typed, whatever that is.
        stderr.write(text.split('\n').map(printable).join('\n'));
      },
    })
    .addHelpText('after', '\nExample:\n  $ trueroll check design.yaml\n');
  for (const declare of declarations) declare(program, calling);
  for (const command of program.commands) onceEach(command);
  return program;
}

/** Of an option given twice the last would count, and nobody be told; those that are meant to be given again collect. */
function onceEach(command: Command): void {
  for (const option of command.options) {
    if (!(option.required || option.optional) || option.variadic || Array.isArray(option.defaultValue))
      continue;
    let given = false;
    command.on(`option:${option.name()}`, () => {
      if (given) command.error(`--${option.name()}: expected it once, found it again`);
      given = true;
    });
  }
}
