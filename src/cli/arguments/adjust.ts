import { Option, type Command } from 'commander';
import type { Calling } from '../commands.js';
import type { AdjustSettings } from '../commands/adjust.js';
import { each } from './each.js';

export function declareAdjust(program: Command, { world, commands, answer }: Calling): void {
  program
    .command('adjust')
    .description(
      'find the size that brings a measure to a target, or the nearest design that meets all limits',
    )
    .argument('<FILE>', 'design file, YAML or JSON; - is standard input')
    .option(
      '--to <MEASURE=VALUE>',
      'a target, its measure named like a limit: period=2.2 s, seated/seatSlope/tallest=9 deg; several may be given; none: the nearest design that meets all limits',
      each,
      [],
    )
    .option(
      '--by <SIZE>',
      'what to change: radius, or radius=30 in..42 in; at least as many as targets; without a target every named size if left out',
      each,
      [],
    )
    .addOption(new Option('--format <format>', 'how to answer').choices(['text', 'json']).default('text'))
    .option('--out <FILE>', 'write the answer to a file, whole or not at all')
    .option('--quiet', 'no answer, only the exit code and messages about mistakes')
    .addHelpText(
      'after',
      `
Without a sitter a target is meant for the first, for whom the chair is made. The design file is not changed.

Exit code: 0 found, 1 not within reach, 2 a mistake in the file or the arguments, or no limit to meet.

Examples:
  $ trueroll adjust design.yaml --to "period=2.2 s" --by radius
  $ trueroll adjust design.yaml --to "period=2.2 s" --to "seatSlope=9 deg" --by radius --by touch
  $ trueroll adjust design.yaml --by tail --by noseLength
`,
    )
    .action(async (path: string, settings: AdjustSettings) => {
      const { adjust } = await commands('adjust');
      answer(await adjust(world, path, settings));
    });
}
