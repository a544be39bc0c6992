import { Option, type Command } from 'commander';
import type { Calling } from '../commands.js';
import type { CheckSettings } from '../commands/check.js';

export function declareCheck(program: Command, { world, commands, answer }: Calling): void {
  program
    .command('check')
    .description('roll a design under every load and judge every limit')
    .argument('<FILE...>', 'design files, YAML or JSON; - is standard input')
    .addOption(
      new Option('--format <format>', 'how to answer')
        .choices(['text', 'json', 'junit', 'markdown'])
        .default('text'),
    )
    .option('--out <FILE>', 'write the answer to a file, whole or not at all')
    .option('--all', 'every measure and limit, with what each is based on')
    .option('--parts', 'the weight of each part')
    .option('--assumed', 'every assumption with what it rests on')
    .option(
      '--histories',
      'instead of the report, what every moving load does moment by moment: JSON; with --out a table (CSV), unless FILE ends in .json',
    )
    .addOption(
      new Option(
        '--stage <stage>',
        'what can still be changed when a limit is not met: the drawing, parts that are cut, a chair that is glued up',
      )
        .choices(['drawing', 'cut', 'glued'])
        .default('drawing'),
    )
    .option('--quiet', 'no answer, only the exit code and messages about mistakes')
    .option('--no-second-opinion', 'leave out the second calculation, by a body free to slide and lift')
    .addHelpText(
      'after',
      `
Exit code: 0 all limits met, 1 some limit not met, 2 could not judge.

Examples:
  $ trueroll check design.yaml
  $ trueroll check design.yaml --format json --out report.json
  $ trueroll check designs/*.yaml --format junit --out report.xml
  $ trueroll check design.yaml --stage glued
  $ trueroll check design.yaml --histories --out histories.csv
  $ cat design.yaml | trueroll check -
`,
    )
    .action(async (paths: string[], settings: CheckSettings) => {
      const { check } = await commands('check');
      answer(await check(world, paths, settings));
    });
}
