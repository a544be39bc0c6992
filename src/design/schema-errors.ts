/** Schema of how far off the shop may be in each named dimension, and in alterations such as the legs. */
import * as z from 'zod';
import { alterationNames, alterations, type Kind } from '../names.js';
import type { Compile, Compiled } from './compile-values.js';
import type { Source } from './dimensions.js';
import { isBlock } from './plain-data.js';
import { scalar, type ValueSchemas } from './schema-values.js';
import { block, custom, hintFor, type Said } from './schema-words.js';
import type { Value } from './value.js';

/** Half the width of an even spread, or the standard deviation of a normal one. */
export type WrittenError = Value | { readonly normal: Value };

export function errorsSchema({ compile }: ValueSchemas) {
  const size = scalar('how far off, such as `1/32 in`');
  const normal = block('the standard deviation: normal', { normal: size });
  const one = z.union([size, normal], { error: 'how far off: `1/32 in` either way, or { normal: 1/16 in }' });
  return z
    .record(z.string(), one, { error: 'how far off named dimensions may be, such as { radius: 1/32 in }' })
    .superRefine(
      (errors, context) => {
        for (const [name, error] of Object.entries(errors))
          for (const { said, path } of mistakesIn(name, error, compile))
            context.addIssue(custom(said, [name, ...path]));
      },
      { when: ({ value }) => isBlock(value) },
    )
    .transform((errors) => Object.fromEntries(Object.entries(errors).flatMap(written(compile))));
}

/** Of a named dimension, or of an alteration: the shop cuts those too. */
function kindOf(name: string, compile: Compile): ReturnType<Compile['kindOf']> {
  const kind = compile.kindOf(name);
  const alteration = alterationNames.find((one) => one === name);
  return kind === 'unknown' && alteration !== undefined ? alterations[alteration] : kind;
}

type Read = Source | { readonly normal: Source };

const sizeOf = (error: Read): Source => (typeof error === 'object' ? error.normal : error);

function mistakesIn(
  name: string,
  error: Read,
  compile: Compile,
): { readonly said: Said; readonly path: string[] }[] {
  const kind = kindOf(name, compile);
  if (kind === 'unsure') return [];
  if (kind === 'unknown') {
    const expected = 'a named dimension of this design, or an alteration';
    return [
      {
        said: {
          expected,
          found: `\`${name}\``,
          onKey: true,
          ...hintFor(name, [...compile.names, ...alterationNames]),
        },
        path: [],
      },
    ];
  }
  if (kind === 'other') {
    const expected = 'a dimension that is a length, an angle, a mass, a time or a number';
    return [{ said: { expected, found: `\`${name}\`, which is none`, onKey: true }, path: [] }];
  }
  if (isBlock(error) && !isSource(error['normal'])) return [];
  if (!isBlock(error) && !isSource(error)) return [];
  const size = compiled(kind, sizeOf(error), compile);
  return size.ok ? [] : [{ said: size.mistake, path: typeof error === 'object' ? ['normal'] : [] }];
}

/** The schema tells of what is neither. */
const isSource = (value: unknown): boolean => typeof value === 'string' || typeof value === 'number';

const compiled = (kind: Kind, source: Source, compile: Compile): Compiled<Value> =>
  compile.value(source, kind, 'positive');

/** What is at fault was told of before, and the design is refused for it. */
const written =
  (compile: Compile) =>
  ([name, error]: [string, Read]): [string, WrittenError][] => {
    const kind = kindOf(name, compile);
    if (kind === 'unknown' || kind === 'unsure' || kind === 'other') return [];
    const size = compiled(kind, sizeOf(error), compile);
    if (!size.ok) return [];
    return [[name, typeof error === 'object' ? { normal: size.value } : size.value]];
  };
