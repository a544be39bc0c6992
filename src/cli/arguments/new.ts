import { Option, type Command } from 'commander';
import { chairKinds } from '../../names.js';
import { lengthUnits } from '../../quantity/units.js';
import type { Calling } from '../commands.js';
import type { NewSettings } from '../commands/new.js';

export function declareNew(program: Command, { world, commands, answer }: Calling): void {
  program
    .command('new')
    .description('begin a design file: a whole chair fitted to its sitter, or the parts of a drawing')
    .option('--from <FILE>', 'begin from a drawing, DXF (ASCII) or SVG: a part for each of its layers')
    .addOption(
      new Option(
        '--kind <kind>',
        'kind of chair, which chooses the limits (without a drawing adult if left out)',
      ).choices(chairKinds),
    )
    .addOption(
      new Option(
        '--body <body>',
        'whom it is for, with --stature and --mass; the usual people of the kind if left out',
      ).choices(['female', 'male']),
    )
    .option('--stature <length>', 'barefoot: 5\' 4", 163 cm')
    .option('--mass <mass>', '140 lb, 64 kg')
    .addOption(
      new Option(
        '--units <unit>',
        'units of the design, in or mm; with --from those of the drawing, whatever it declares, needed where it declares none',
      ).choices(lengthUnits),
    )
    .option('--mirror', 'with --from: the drawing shows the chair facing left')
    .option('--name <name>', 'name of the design')
    .option('--out <FILE>', 'write the design to a file, whole or not at all, and over no other')
    .option('--overwrite', 'with --out: over a file that is there; never over the drawing')
    .option('--quiet', 'the design alone, and messages about mistakes')
    .addHelpText(
      'after',
      `
Without --from: rockers, legs, posts, arms, seat and back of straight sticks, sizes sought until all limits are met.
With --from each layer (in SVG each named group, else each id) with outlines is a part. A layer named seat, back or
arms that holds one straight line is the seat line, the back line or the line of the arms. What a drawing cannot tell
is left blank.

Exit code: 0 written, 1 written, but some limit is not met, 2 a mistake in the drawing or the arguments.

Examples:
  $ trueroll new --kind porch --out chair.yaml
  $ trueroll new --body female --stature "5' 4\\"" --mass "140 lb" > chair.yaml
  $ trueroll new --from chair.dxf --out chair.yaml
  $ trueroll new --from chair.svg --units in --kind porch --name "Porch rocker" > chair.yaml
`,
    )
    .action(async (settings: NewSettings) => {
      const { begin } = await commands('new');
      answer(await begin(world, settings));
    });
}
