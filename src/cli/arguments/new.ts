import { Option, type Command } from 'commander';
import { chairKinds } from '../../names.js';
import { lengthUnits } from '../../quantity/units.js';
import type { Calling } from '../commands.js';
import type { NewSettings } from '../commands/new.js';

export function declareNew(program: Command, { world, commands, answer }: Calling): void {
  program
    .command('new')
    .description('begin a design file from a drawing, a part for each of its layers')
    .requiredOption('--from <FILE>', 'the drawing: DXF (ASCII) or SVG')
    .addOption(
      new Option(
        '--units <unit>',
        'what the units of the drawing are, whatever it declares; needed where it declares none',
      ).choices(lengthUnits),
    )
    .option('--mirror', 'the drawing shows the chair facing left')
    .addOption(new Option('--kind <kind>', 'kind of chair: it chooses the limits').choices(chairKinds))
    .option('--name <name>', 'name of the design; that of the file if left out')
    .option('--out <FILE>', 'write the design to a file, whole or not at all, and over no other')
    .option('--overwrite', 'with --out: over a file that is there; never over the drawing')
    .option('--quiet', 'say nothing of the drawing, only messages about mistakes')
    .addHelpText(
      'after',
      `
Each layer (in SVG each named group) with outlines is a part. A layer named seat, back or arms that holds one
straight line is the seat line, the back line or the line of the arms. What a drawing cannot tell is left blank.

Exit code: 0 written, 2 a mistake in the drawing or the arguments.

Examples:
  $ trueroll new --from chair.dxf --out chair.yaml
  $ trueroll new --from chair.svg --units in --kind porch --name "Porch rocker" > chair.yaml
`,
    )
    .action(async (settings: NewSettings) => {
      const { begin } = await commands('new');
      answer(await begin(world, settings));
    });
}
