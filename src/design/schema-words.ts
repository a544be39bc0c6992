/** What the schemas are made of. An `error` of a schema says what is expected there. */
import * as z from 'zod';
import { nearestWord } from '../quantity/nearest.js';
import { isBlock } from './plain-data.js';
import type { ValueFault } from './compile-values.js';

/** What a schema says besides its `error`: the params of a custom issue. */
export type Said = Omit<ValueFault, 'found'> & { readonly found?: string; readonly onKey?: true };

export const custom = (said: Said, path: (string | number)[] = []) =>
  ({ code: 'custom', message: said.expected, path, params: { ...said } }) as const;

/** The hint for a word that is not known. */
export function meant(word: string, known: readonly string[]): { hint?: string } {
  const nearest = nearestWord(word, known);
  return nearest === undefined ? {} : { hint: `did you mean \`${nearest}\`?` };
}

/** As many as a line holds. */
const most = 6;

/** The same, or those of which the word is a part (`ash` of `white ash`), or all when they are few. */
export function hintFor(word: string, known: readonly string[]): { hint?: string } {
  const near = meant(word, known);
  if (near.hint !== undefined) return near;
  const holding = known.filter((each) => each.toLowerCase().split(' ').includes(word.trim().toLowerCase()));
  if (holding.length > 0) return { hint: `say which: ${holding.slice(0, most).join(', ')}` };
  return known.length <= 16 ? { hint: `known are ${known.join(', ')}` } : {};
}

export const text = (error: string) => z.string({ error }).min(1, { error });

export const listOf = <Item extends z.ZodType>(item: Item, error: string) =>
  z.array(item, { error }).min(1, { error });

export const words = <const Words extends readonly string[]>(known: Words) =>
  z.enum(known, { error: `one of ${known.join(', ')}` });

export const switchedOff = z.literal('off', { error: '`off`' });

/** A block of keys. For an unknown key its `error` is the list of those it knows. */
export const block = <Shape extends z.ZodRawShape>(what: string, shape: Shape) =>
  z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? Object.keys(shape).join('\n') : what),
  });

export interface Keys {
  readonly has: (key: string) => boolean;
  readonly at: (key: string) => unknown;
  /** A key is not known: it may have been meant for one that seems to be missing. */
  readonly strange: boolean;
  /** At a key of the block, or at the block. */
  readonly say: (said: Said, key?: string) => void;
}

/** A rule of which keys go together; it holds whatever their values are. */
export const rule = <Schema extends z.ZodType>(schema: Schema, check: (keys: Keys) => void): Schema =>
  schema.superRefine(
    (value, context) => {
      check({
        has: (key) => Object.hasOwn(value as object, key),
        at: (key) => (value as Record<string, unknown>)[key],
        strange: context.issues.some((issue) => issue.code === 'unrecognized_keys' && !issue.path?.length),
        say: (said, key) => {
          context.addIssue(custom(said, key === undefined ? [] : [key]));
        },
      });
    },
    { when: ({ value }) => isBlock(value) },
  );

/** Two names of one thing: `weight` is read as `mass`. */
export function oneOf({ has, say }: Keys, key: string, otherKey: string): void {
  if (!has(key) || !has(otherKey)) return;
  say({ onKey: true, expected: `\`${key}\` or \`${otherKey}\`, not both`, found: 'both' }, otherKey);
}

/** At least one of the keys; `expected` names those it tells of. */
export function needsOneOf({ has, strange, say }: Keys, expected: string, keys: readonly string[]): void {
  if (!strange && !keys.some(has)) say({ expected, found: 'none' });
}
