import { Option, type Command } from 'commander';
import type { Calling } from '../commands.js';
import type { ToleranceArguments } from '../commands/tolerance.js';

export function declareTolerance(program: Command, { world, commands, answer }: Calling): void {
  program
    .command('tolerance')
    .description('how the shop’s errors, and the range of people, spread the measures of a chair')
    .argument('<FILE>', 'design file, YAML or JSON; - is standard input')
    .option('--samples <count>', 'chairs drawn; taken up to the next power of 2', '256')
    .option('--seed <number>', 'another seed draws other chairs; the same the same', '1')
    .option(
      '--chance <chance>',
      'seek the loosest tolerances with which some limit is missed no more often: 5% or 0.05',
    )
    .addOption(
      new Option('--people [whom]', 'draw who sits in it from published tables too')
        .choices(['women', 'men', 'both'])
        .preset('both'),
    )
    .addOption(
      new Option('--format <format>', 'how to answer').choices(['text', 'json', 'csv']).default('text'),
    )
    .option('--all', 'limits too that nothing moves')
    .option('--out <FILE>', 'write the answer to a file, whole or not at all')
    .option('--quiet', 'no answer, only the exit code and messages about mistakes')
    .addHelpText(
      'after',
      `
How far off the shop is stands in the design, a line of its own:
  errors: { radius: 1/32 in, tail: { normal: 1/16 in } }
Either way, evenly; \`normal\` is a standard deviation. Lengths without: 1/32 in, the trade's.

Exit code: 0 answered, 2 a mistake in the file or the arguments.

Examples:
  $ trueroll tolerance design.yaml
  $ trueroll tolerance design.yaml --chance 5%
  $ trueroll tolerance design.yaml --people women --samples 1024 --format json
`,
    )
    .action(async (path: string, settings: ToleranceArguments) => {
      const { tolerance } = await commands('tolerance');
      answer(await tolerance(world, path, settings));
    });
}
