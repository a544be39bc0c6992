import { Option, type Command } from 'commander';
import type { Calling } from '../commands.js';
import type { CompareSettings } from '../commands/compare.js';

export function declareCompare(program: Command, { world, commands, answer }: Calling): void {
  program
    .command('compare')
    .description('what moved between two versions of a design, verdicts first')
    .argument('<OLD>', 'design file, YAML or JSON; - is standard input')
    .argument('<NEW>', 'design file, YAML or JSON; - is standard input')
    .addOption(
      new Option('--format <format>', 'how to answer').choices(['text', 'json', 'markdown']).default('text'),
    )
    .option('--out <FILE>', 'write the answer to a file, whole or not at all')
    .option('--quiet', 'no answer, only the exit code and messages about mistakes')
    .addHelpText(
      'after',
      `
Exit code: that of NEW, 0 all limits met, 1 some limit not met, 2 could not judge; 2 when either
file is bad. Whether OLD meets its limits does not count.

Examples:
  $ trueroll compare before.yaml after.yaml
  $ git show main:design.yaml | trueroll compare - design.yaml --format markdown
`,
    )
    .action(async (old: string, now: string, settings: CompareSettings) => {
      const { compare } = await commands('compare');
      answer(await compare(world, old, now, settings));
    });
}
