/** Schemas of what is measured: values, ranges, points. */
import * as z from 'zod';
import type { Kind } from '../names.js';
import type { Compile, Compiled } from './compile-values.js';
import type { Source } from './dimensions.js';
import { custom } from './schema-words.js';
import type { Must, ValueRange } from './value.js';

const examples: Readonly<Record<Kind, string>> = {
  length: 'a length such as `1-3/4 in`',
  mass: 'a mass such as `105 lb`',
  time: 'a time such as `0.4 s`',
  angle: 'an angle such as `6 deg`',
  number: 'a number without unit',
  force: 'a force such as `50 N`',
  energy: 'an energy such as `20 J`',
  density: 'a density such as `700 kg/m³`',
  inertia: 'a moment of inertia such as `0.2 kg m²`',
};

export const scalar = (error: string) => z.union([z.number(), z.string()], { error });

function compiled<T>(error: string, compile: (source: Source) => Compiled<T>) {
  return scalar(error).transform((source, context) => {
    const outcome = compile(source);
    if (outcome.ok) return outcome.value;
    context.issues.push({ ...custom(outcome.mistake), input: source });
    return z.NEVER;
  });
}

export type ValueSchemas = ReturnType<typeof valueSchemas>;

/** Each is made once and shared: a file has some three hundred places for a value, and making them takes longer than reading. */
export function valueSchemas(compile: Compile) {
  const value = sharedBy((kind: Kind, must: Must = 'any') =>
    compiled(examples[kind], (source) => compile.value(source, kind, must)),
  );
  const range = sharedBy((kind: Kind) =>
    compiled<ValueRange | null>(
      `a range a .. b, a .. or .. b (each end ${examples[kind]}), or \`off\``,
      (source) => (source === 'off' ? { ok: true, value: null } : compile.range(source, kind)),
    ).optional(),
  );
  const length = value('length');
  return {
    compile,
    value,
    range,
    length,
    size: value('length', 'positive'),
    mass: value('mass', 'positive'),
    point: z.tuple([length, length], { error: 'a point [x, y]: two lengths' }),
  };
}

function sharedBy<Key extends readonly unknown[], T>(make: (...key: Key) => T): (...key: Key) => T {
  const made = new Map<string, T>();
  return (...key) => {
    const name = key.join();
    const one = made.get(name) ?? make(...key);
    made.set(name, one);
    return one;
  };
}
