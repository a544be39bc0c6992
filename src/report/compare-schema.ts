/** The shape of the JSON of a comparison. Its types are read from here; the schema itself is loaded only to be printed. */
import * as z from 'zod';
import { loadIds, measureKeys } from '../names.js';
import { designSchema, toolSchema } from './design-schema.js';

const numberOrNull = z.number().nullable();
const verdict = z.enum(['pass', 'fail', 'unknown']);
const measure = z.enum(measureKeys);

const design = designSchema.extend({ verdict });

const judged = z
  .strictObject({
    min: numberOrNull.describe('in the unit of the measure'),
    max: numberOrNull,
    value: numberOrNull,
    margin: numberOrNull.describe('distance to the nearer bound, negative when it is not met'),
    verdict,
    reason: z.string().nullable(),
  })
  .nullable()
  .describe('null: that design has no such limit');

const limit = z.strictObject({
  id: z.string().describe('<load>/<limit>/<sitter>, the last part only for loads with a sitter'),
  load: z.enum(loadIds),
  sitter: z.string().nullable(),
  measure,
  change: z
    .enum(['flipped', 'appeared', 'gone', 'bounds'])
    .describe('bounds: another range, the verdict as before'),
  old: judged,
  new: judged,
});

const way = z.enum(['back', 'forward']).nullable();

const load = z.strictObject({
  id: z.enum(loadIds),
  sitter: z.string().nullable(),
  in: z.enum(['both', 'old', 'new']).describe('which of the designs have this load'),
  goesOver: z
    .strictObject({ old: way, new: way })
    .describe('which way each design goes over under it; null: it does not, or has no such load'),
  measures: z
    .partialRecord(
      measure,
      z.strictObject({
        old: numberOrNull,
        new: numberOrNull,
        difference: numberOrNull.describe('new less old; null where one has no value'),
        moved: z.boolean().describe('by half a step of what a maker reads, or from or to having no value'),
      }),
    )
    .describe('the unit is the ending of the name; empty where one design only has the load'),
});

const mass = z
  .strictObject({ count: z.int(), massKg: z.number().describe('all pieces, kg') })
  .nullable()
  .describe('null: that design has no such part');

const dimension = z
  .strictObject({ written: z.string(), value: z.number() })
  .nullable()
  .describe('null: that design has no such dimension');

const body = z.strictObject({
  massKg: z.number(),
  centreOfGravityM: z.tuple([z.number(), z.number()]).describe('[x, y] as drawn'),
  inertiaKgM2: z.number(),
});

export const comparisonSchema = z.strictObject({
  comparisonVersion: z.literal(1),
  tool: toolSchema,
  old: design,
  new: design,
  limits: z.array(limit).describe('those that changed, what became worse first'),
  loads: z.array(load),
  chair: z.strictObject({
    old: body,
    new: body,
    parts: z.array(z.strictObject({ name: z.string(), old: mass, new: mass })).describe('those that changed'),
  }),
  dimensions: z
    .array(
      z.strictObject({
        name: z.string(),
        kind: z
          .string()
          .nullable()
          .describe(
            'length in metres, mass kg, time s, angle degrees, number …; null: no kind of the contract',
          ),
        old: dimension,
        new: dimension,
      }),
    )
    .describe('named dimensions that changed'),
});

export type ComparisonObject = z.infer<typeof comparisonSchema>;
