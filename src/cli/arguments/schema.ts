import type { Command } from 'commander';
import type { Calling } from '../commands.js';

export function declareSchema(program: Command, { world, commands, answer }: Calling): void {
  program
    .command('schema')
    .description('print the JSON Schema of the design file, of the report, or of the JSON of another command')
    .argument('<of>', 'design, report, comparison, sweep, adjustment or tolerance')
    .addHelpText('after', '\nExample:\n  $ trueroll schema design > design.schema.json\n')
    .action(async (of: string) => {
      const { schema } = await commands('schema');
      answer(schema(world, of));
    });
}
