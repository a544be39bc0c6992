/** The command line. Each command is a bundle of its own, loaded only when it is called. */
import { Command, CommanderError, Option } from 'commander';
import { tool } from '../report/tool.js';
import type { Commands } from './commands.js';
import type { CheckSettings } from './commands/check.js';
import { loadCompiled } from './load-compiled.js';
import { processWorld } from './process-world.js';
import { exitCodes, type World } from './world.js';

/**
 * Runs the command line on the real world.
 * @param dist folder of the built commands
 * @returns the exit code
 */
export const run = (own: NodeJS.Process, dist: URL): Promise<number> =>
  main(processWorld(own), (name) => Promise.resolve(loadCompiled(new URL(`${name}.cjs`, dist))));

export async function main(world: World, commands: Commands): Promise<number> {
  if (world.argv.length === 0) {
    world.stdout.write(whatNext);
    return exitCodes.met;
  }
  let code: number = exitCodes.met;
  const program = programFor(world, commands, (answer) => (code = answer));
  try {
    await program.parseAsync(world.argv, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.met : exitCodes.cannotJudge;
    world.stderr.write(`trueroll: stopped by a fault of its own: ${String(error)}\n`);
    return exitCodes.cannotJudge;
  }
}

const whatNext = `trueroll rolls a rocking-chair design on the floor before the wood is cut.

  trueroll check design.yaml           where it rests, how fast it rocks, whether it goes over
  trueroll check design.yaml --all     every measure and limit;  --parts: the weights
  trueroll schema design               the JSON Schema of a design file, for your editor
  trueroll --help                      every command; trueroll check --help: one command with an example
`;

type Answer = (code: number) => void;

function programFor(world: World, commands: Commands, answer: Answer): Command {
  const program = new Command('trueroll')
    .description('Rolls a rocking-chair design on the floor as a rigid body, before the wood is cut.')
    .version(tool.version)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => {
        world.stdout.write(text);
      },
      writeErr: (text) => {
        world.stderr.write(text);
      },
    })
    .addHelpText('after', '\nExample:\n  $ trueroll check design.yaml\n');
  addCheck(program, world, commands, answer);
  addSchema(program, world, commands, answer);
  return program;
}

function addCheck(program: Command, world: World, commands: Commands, answer: Answer): void {
  program
    .command('check')
    .description('roll a design under every load and judge every limit')
    .argument('<FILE...>', 'design files, YAML or JSON; - is standard input')
    .addOption(new Option('--format <format>', 'how to answer').choices(['text', 'json']).default('text'))
    .option('--out <FILE>', 'write the answer to a file, whole or not at all')
    .option('--all', 'every measure and limit, with what each is based on')
    .option('--parts', 'the weight of each part')
    .option('--assumed', 'every assumption with what it rests on')
    .option('--quiet', 'no answer, only the exit code and messages about mistakes')
    .option('--no-second-opinion', 'leave out the second calculation (this version makes none)')
    .addHelpText(
      'after',
      `
Exit code: 0 all limits met, 1 some limit not met, 2 could not judge.

Examples:
  $ trueroll check design.yaml
  $ trueroll check design.yaml --format json --out report.json
  $ cat design.yaml | trueroll check -
`,
    )
    .action(async (paths: string[], settings: CheckSettings) => {
      const { check } = await commands('check');
      answer(await check(world, paths, settings));
    });
}

function addSchema(program: Command, world: World, commands: Commands, answer: Answer): void {
  program
    .command('schema')
    .description('print the JSON Schema of the design file or of the report')
    .argument('<of>', 'design or report')
    .addHelpText('after', '\nExample:\n  $ trueroll schema design > design.schema.json\n')
    .action(async (of: string) => {
      const { schema } = await commands('schema');
      answer(schema(world, of));
    });
}
