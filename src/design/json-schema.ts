/** The JSON Schema of a design file (draft 2020-12), by which an editor helps the maker. Not loaded when a design is read. */
import * as z from 'zod';
import type { Compile } from './compile-values.js';
import { designSchema } from './schema.js';

export function designJsonSchema(): object {
  const schema = z.toJSONSchema(designSchema(nothingToCompile), {
    io: 'input',
    reused: 'ref',
    override: ({ zodSchema, jsonSchema }) => {
      const expected = expectedBy(zodSchema);
      if (expected !== undefined) jsonSchema.description ??= expected;
    },
  });
  return { ...schema, title: 'Design file of trueroll' };
}

/** What a schema says when something else stands there is what an editor should say beforehand. */
function expectedBy({ _zod: { def } }: z.core.$ZodType): string | undefined {
  const words = def.error?.({ code: 'invalid_type', input: undefined } as never);
  return typeof words === 'string' ? words : undefined;
}

const nothingToCompile: Compile = {
  value: (source) => ({ ok: false, mistake: { expected: 'no value', found: String(source) } }),
  range: (source) => ({ ok: false, mistake: { expected: 'no range', found: String(source) } }),
  names: [],
  kindOf: () => 'unknown',
};
