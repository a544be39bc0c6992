/** Schemas of those who sit in the chair. */
import * as z from 'zod';
import { isBlock } from './plain-data.js';
import type { ValueSchemas } from './schema-values.js';
import { block, custom, oneOf, rule, text, words, type Keys } from './schema-words.js';

export function sittersSchema({ value, size, mass }: ValueSchemas) {
  const sitter = block('a sitter: name, body, stature, mass', {
    name: text('a name'),
    body: words(['female', 'male']),
    stature: size.optional(),
    height: size.optional(),
    mass: mass.optional(),
    weight: mass.optional(),
    percentile: value('number', 'percentile').optional(),
    measured: block('measures of the body: kneeHollow, buttockToKneeHollow, elbowAboveSeat', {
      kneeHollow: size.optional(),
      buttockToKneeHollow: size.optional(),
      elbowAboveSeat: size.optional(),
    }).optional(),
  });
  const sitters = z
    .array(rule(sitter, statureAndMass), { error: 'a list of sitters' })
    .superRefine(uniqueNames, { when: ({ value }) => Array.isArray(value) });
  const standard = z.literal('standard', { error: '`standard`' });
  return z.union([standard, sitters], { error: '`standard`, or a list of sitters' });
}

/** Both are stated, or a percentile stands for what is not. */
function statureAndMass(keys: Keys): void {
  const { has, strange, say } = keys;
  oneOf(keys, 'stature', 'height');
  oneOf(keys, 'mass', 'weight');
  const missing = [
    ...(has('stature') || has('height') ? [] : ['`stature`']),
    ...(has('mass') || has('weight') ? [] : ['`mass`']),
  ].join(' and ');
  if (missing === '' || has('percentile') || strange) return;
  say({ expected: missing, found: 'none', hint: 'or a `percentile`, which gives what is not stated' });
}

function uniqueNames(sitters: readonly unknown[], context: z.RefinementCtx): void {
  const met = new Set<unknown>();
  sitters.forEach((sitter, index) => {
    const name = isBlock(sitter) ? sitter['name'] : undefined;
    if (typeof name === 'string' && met.has(name)) {
      context.addIssue(custom({ expected: 'a name that no sitter before has' }, [index, 'name']));
    }
    met.add(name);
  });
}

export function childSchema({ value, mass }: ValueSchemas) {
  const child = block('a child: body and age, or mass', {
    body: words(['girl', 'boy']).optional(),
    age: value('time', 'not negative').optional(),
    mass: mass.optional(),
    weight: mass.optional(),
  });
  return rule(child, (keys) => {
    const { has, strange, say } = keys;
    oneOf(keys, 'mass', 'weight');
    if (has('mass') || has('weight') || (has('body') && has('age')) || strange) return;
    say({
      expected: '`body` and `age`, or `mass`',
      found: has('body') || has('age') ? 'one of them' : 'none',
    });
  });
}
