import { Option, type Command } from 'commander';
import type { SweepFormat } from '../../report/sweep-formats.js';
import type { Calling } from '../commands.js';
import type { SweepSettings } from '../sweep-settings.js';
import { each } from './each.js';

const formats: readonly SweepFormat[] = ['text', 'csv', 'jsonl', 'json'];

export function declareSweep(program: Command, { world, commands, answer }: Calling): void {
  program
    .command('sweep')
    .description('try named dimensions over ranges: which designs meet the limits, which are comfortable')
    .argument('[FILE]', 'design file, YAML or JSON; - is standard input')
    .option(
      '--vary <NAME=VALUES>',
      'a dimension, a size of a sitter (`NAME mass`, `NAME stature`) or an alteration (`tail-end`), and its values: from..to:step, from..to:13 values, or a, b, c; several make a grid',
      each,
      [],
    )
    .option(
      '--show <MEASURE>',
      'a measure as a column, named like a limit: period, seated/backAngle, seated/period/tallest; several may be given',
      each,
      [],
    )
    .option(
      '--loads <NAMES>',
      'roll and judge only these loads of the design, for instance empty,seated (some fifty times as fast); all if left out',
    )
    .addOption(new Option('--format <format>', 'how to answer (text if left out)').choices(formats))
    .option('--out <FILE>', 'write the answer to a file, whole or not at all')
    .option(
      '--threads <N>',
      'how many threads work at once, up to 256; as many as the machine runs if left out',
    )
    .option('--share <K/N>', 'only the Kth of N equal shares, to be joined later; always JSON Lines')
    .option('--join <FILES...>', 'put the shares of a sweep together; the answer is that of the whole sweep')
    .option('--quiet', 'no answer, only messages about mistakes')
    .addHelpText(
      'after',
      `
A design is comfortable when all limits are met, one full rock, seat slope and back of every sitter lie in the
middle three quarters of their ranges (of a range with one end: a quarter of that bound away from it), and a hard
lean leaves half as much rocker again as it must; without those loads none is told so. GOES OVER: a load that a
limit is about takes the chair over.

Exit code: 0 done, 2 could not; 130, 143, 129 stopped by Ctrl-C, SIGTERM, SIGHUP (whole lines are left; a file of
--out is not).

Examples:
  $ trueroll sweep design.yaml --vary "radius=34 in..42 in:1/2 in"
  $ trueroll sweep design.yaml --vary "radius=34 in..42 in:1 in" --vary "tail=18 in, 20 in, 22 in" --show period
  $ trueroll sweep design.yaml --vary "tallest mass=60 kg..120 kg:10 kg" --format csv --out heavy.csv
  $ trueroll sweep design.yaml --vary "radius=34 in..42 in:1/64 in" --share 3/16 --out share-3.jsonl
  $ trueroll sweep --join share-*.jsonl --format csv --out all.csv
`,
    )
    .action(async (path: string | undefined, settings: SweepSettings) => {
      const { sweep } = await commands('sweep');
      answer(await sweep(world, path, settings));
    });
}
