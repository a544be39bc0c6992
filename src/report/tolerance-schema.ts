/** The shape of the JSON of `tolerance`. */
import * as z from 'zod';
import { loadIds, measureKeys } from '../names.js';
import { designSchema, toolSchema } from './design-schema.js';

const numberOrNull = z.number().nullable();
const share = z
  .strictObject({ share: z.number(), low: z.number(), high: z.number() })
  .describe('a share, 0 to 1, with the ends of its 95 % interval (Wilson 1927)');

const effect = z.strictObject({
  dimension: z.string(),
  perUnit: numberOrNull.describe(
    'unit of the measure over the SI unit of the dimension (radians for angles)',
  ),
  perError: numberOrNull.describe('in the unit of the measure, for the dimension more by its error'),
  shareOfVariance: z.number().describe('to first order, 0 to 1'),
  kinked: z.boolean().describe('more and less move it unequally; the steeper side is given'),
});

const spreadLimit = z.strictObject({
  id: z.string().describe('<load>/<limit>/<sitter>, the last part only for loads with a sitter'),
  load: z.enum(loadIds),
  sitter: z.string().nullable(),
  measure: z.enum(measureKeys).nullable().describe('null: that it comes to rest at all'),
  mean: numberOrNull.describe('in the unit of the measure, like the three that follow'),
  deviation: numberOrNull,
  low: numberOrNull.describe('5 in a hundred lie below'),
  high: numberOrNull.describe('5 in a hundred lie above'),
  min: numberOrNull.describe('what is wanted, in the unit of the measure'),
  max: numberOrNull,
  missed: share,
});

const shopLimit = spreadLimit.extend({
  drawn: numberOrNull.describe('as drawn, in the unit of the measure'),
  verdict: z.enum(['pass', 'fail', 'unknown']).nullable().describe('as drawn'),
  firstOrderDeviation: numberOrNull,
  effects: z.array(effect),
});

const error = z.strictObject({
  dimension: z.string(),
  kind: z.string().nullable(),
  spread: z.enum(['even', 'normal']),
  size: z.number().describe('half the width of an even spread, standard deviation of a normal one; SI'),
  assumed: z.boolean(),
});

export const toleranceSchema = z.strictObject({
  toleranceVersion: z.literal(1),
  tool: toolSchema,
  design: designSchema,
  samples: z.int(),
  seed: z.int(),
  errors: z.array(error),
  shop: z.strictObject({
    any: share.describe('some limit is missed'),
    notBuilt: z.int().describe('chairs drawn that cannot be built; not counted'),
    limits: z.array(shopLimit),
  }),
  loosest: z
    .strictObject({ chance: z.number(), met: z.boolean(), errors: z.array(error), any: share })
    .nullable()
    .describe('null: not asked for, or a limit is not met as drawn'),
  people: z
    .strictObject({
      whom: z.enum(['women', 'men', 'both']),
      any: share,
      notBuilt: z.int(),
      limits: z.array(spreadLimit),
    })
    .nullable(),
  assumptions: z.array(z.strictObject({ what: z.string(), value: z.string(), basis: z.string() })),
});

export type ToleranceObject = z.infer<typeof toleranceSchema>;
