/** The schema of a design file. Its values are compiled on the way through, so what comes out is ready to be evaluated. */
import * as z from 'zod';
import { addedOnly, alterationNames, alterations, chairKinds, type AlterationName } from '../names.js';
import { lengthUnits } from '../quantity/units.js';
import type { Compile } from './compile-values.js';
import { floorNames, floors, type FloorName } from './floors.js';
import { errorsSchema } from './schema-errors.js';
import { limitsSchema, loadsSchema } from './schema-loads.js';
import { extraSchema, partSchema } from './schema-parts.js';
import { childSchema, sittersSchema } from './schema-people.js';
import { scalar, valueSchemas, type ValueSchemas } from './schema-values.js';
import { block, custom, hintFor, listOf, rule, text, words, type Keys } from './schema-words.js';

/** A design as written, its values compiled. */
export type WrittenDesign = z.output<ReturnType<typeof designSchema>>;
export type WrittenPart = WrittenDesign['parts'][number];

/** @param names of the design’s dimensions */
export function designSchema(compile: Compile, names: readonly string[] = []) {
  const schemas = valueSchemas(compile);
  const { value, size, point } = schemas;
  const design = block('a design: `trueroll: 1`, then its keys', {
    trueroll: z.literal(1, { error: '1, the version of the format' }),
    name: text('a name').optional(),
    kind: words(chairKinds).optional(),
    units: words(lengthUnits)
      .optional()
      .meta({ description: 'what a bare length means; without it every length needs its unit' }),
    dimensions: z
      .record(z.string(), scalar('a value such as `39 in`'), {
        error: 'named values such as { tail: 20 in }',
      })
      .optional(),
    alterations: alterationsSchema(schemas).optional(),
    keep: z
      .array(keptName([...names, ...alterationNames]), {
        error: `a list of names such as [${[...names, ...alterationNames].slice(0, 2).join(', ')}]`,
      })
      .superRefine(onceEach)
      .optional()
      .meta({ description: 'what is not to be changed when `check` looks for what to change' }),
    floor: floorSchema(schemas).optional(),
    room: block('the room: wall', { wall: value('length', 'not negative') }).optional(),
    spacing: size.optional(),
    sitters: sittersSchema(schemas).optional(),
    child: childSchema(schemas).optional(),
    parts: listOf(partSchema(schemas), 'a list of parts'),
    extras: z.array(extraSchema(schemas), { error: 'a list of extras' }).optional(),
    seat: block('the seat line: front, rear', { front: point, rear: point }).optional(),
    back: block('the back line: foot, top', { foot: point, top: point }).optional(),
    arms: block('the line of the arms: rear, front', { rear: point, front: point }).optional(),
    loads: loadsSchema(schemas).optional(),
    limits: limitsSchema(schemas).optional(),
    errors: errorsSchema(schemas).optional(),
  });
  return rule(design, somewhereToSit);
}

function alterationsSchema({ value }: ValueSchemas) {
  const of = (name: AlterationName) =>
    value(alterations[name], addedOnly.includes(name) ? 'not negative' : 'any').optional();
  const shape = Object.fromEntries(alterationNames.map((name) => [name, of(name)]));
  const what = `alterations: ${alterationNames.join(', ')}`;
  return block(what, shape as Record<AlterationName, ReturnType<typeof of>>).meta({
    description: 'what is changed of the chair as drawn: longer, larger, forward or added where positive',
  });
}

/** A sitter is placed by the seat and the back; arms a chair may lack. */
function somewhereToSit({ has, at, strange, say }: Keys): void {
  const sitters = at('sitters');
  if (strange || !(sitters === 'standard' || (Array.isArray(sitters) && sitters.length > 0))) return;
  const missing = ['seat', 'back'].filter((line) => !has(line)).map((line) => `\`${line}\``);
  if (missing.length === 0) return;
  const hint = 'without `sitters` the chair is judged empty';
  say({ expected: `${missing.join(' and ')}, by which sitters are placed`, found: 'none', hint }, 'sitters');
}

const onceEach = (kept: readonly string[], context: z.core.$RefinementCtx): void => {
  const twice = kept.find((name, i) => kept.indexOf(name) !== i);
  if (twice === undefined) return;
  context.addIssue(custom({ expected: 'each name once', found: `\`${twice}\` again` }));
};

const keptName = (names: readonly string[]) =>
  text('the name of a dimension').superRefine((name, context) => {
    if (names.includes(name)) return;
    context.addIssue(
      custom({
        expected: 'the name of a dimension of this design, or of an alteration',
        ...hintFor(name, names),
      }),
    );
  });

function floorSchema({ value }: ValueSchemas) {
  const byName = text('a floor').transform((floor, context): FloorName => {
    if (Object.hasOwn(floors, floor)) return floor as FloorName;
    const said = custom({ expected: 'a floor by its name', ...hintFor(floor, floorNames) });
    context.issues.push({ ...said, input: floor });
    return z.NEVER;
  });
  const own = block('a floor: friction, rolling', {
    friction: value('number', 'not negative').optional(),
    rolling: value('length', 'not negative').optional(),
  });
  return z.union([byName, own], { error: 'a floor by its name, or { friction: 0.4, rolling: 1.5 mm }' });
}
