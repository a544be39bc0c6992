/** Schemas of what the chair is made of. */
import * as z from 'zod';
import { woodNamed, woodNames } from '../wood/woods.js';
import { outlineSchema } from './schema-outlines.js';
import type { ValueSchemas } from './schema-values.js';
import { block, custom, hintFor, needsOneOf, oneOf, rule, text, words, type Keys } from './schema-words.js';

const woodSchema = text('a wood such as `white ash`').transform((wood, context) => {
  const known = woodNamed(wood);
  if (known) return { name: wood, density: known.density };
  context.issues.push({
    ...custom({ expected: 'a wood of the tables', ...hintFor(wood, woodNames()) }),
    input: wood,
  });
  return z.NEVER;
});

export function partSchema(schemas: ValueSchemas) {
  const { value, size, mass, point } = schemas;
  const part = block('a part: name, outline, wood or mass', {
    name: text('a name'),
    count: value('number', 'count').optional(),
    wood: woodSchema.optional(),
    density: value('density', 'positive').optional(),
    mass: mass.optional(),
    weight: mass.optional(),
    across: size.optional(),
    side: words(['left', 'right']).optional(),
    runs: block('where the part runs: from, to', { from: point, to: point }).optional(),
    outline: outlineSchema(schemas),
  });
  return rule(part, massOfPart);
}

/** A part is weighed, or its volume is known and what it is made of. */
function massOfPart(keys: Keys): void {
  const { has, strange, say } = keys;
  const weighed = has('mass') || has('weight');
  oneOf(keys, 'mass', 'weight');
  oneOf(keys, 'wood', 'density');
  needsOneOf(keys, '`wood`, `density` or `mass`', ['wood', 'density', 'mass', 'weight']);
  if (weighed || strange || has('across') || !(has('wood') || has('density'))) return;
  const hint = 'or give the `mass` of one piece as weighed';
  say({ expected: '`across`: the size of one piece across the chair', found: 'none', hint });
}

export function extraSchema({ value, mass, point }: ValueSchemas) {
  const extra = block('an extra: name, mass, at', {
    name: text('a name'),
    mass: mass.optional(),
    weight: mass.optional(),
    at: point,
    inertia: value('inertia', 'not negative').optional(),
  });
  return rule(extra, massOrWeight);
}

function massOrWeight(keys: Keys): void {
  oneOf(keys, 'mass', 'weight');
  needsOneOf(keys, '`mass`', ['mass', 'weight']);
}
