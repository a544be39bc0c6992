/** The shape of the JSON report. Its types are read from here; the schema itself is loaded only to be printed. */
import * as z from 'zod';
import { loadIds, measureKeys } from '../names.js';
import { designSchema, toolSchema } from './design-schema.js';

const kilograms = z.number().describe('kg');
const place = z
  .tuple([z.number(), z.number()])
  .describe('[x, y] in the chair’s frame as drawn, metres: x forward, y up');
const inertia = z.number().describe('about the centre of gravity, axis across the chair, kg m²');
const measureKey = z.enum(measureKeys);
const numberOrNull = z.number().nullable();
const way = z.enum(['back', 'forward', 'sideways']);
const verdict = z.enum(['pass', 'fail', 'unknown']);

const part = z.strictObject({
  name: z.string(),
  count: z.int(),
  massKg: kilograms.describe('all pieces, kg'),
  centreOfGravityM: place,
});

const compared = z.partialRecord(measureKey, z.number());

const secondOpinion = z.strictObject({
  restAngleDeg: numberOrNull.describe('null where it was not calculated: `notCovered`'),
  periodAtSwingS: numberOrNull,
  tipBackEnergyJ: numberOrNull,
  peakBackDeg: z.number().optional().describe('of moving loads, where it was calculated'),
  peakForwardDeg: z.number().optional(),
  kickBackDeg: z.number().optional(),
  slideM: numberOrNull.describe(
    'on the floor of the design, over a free rock or the script: the farthest from where it would have rolled to, positive forward, metres',
  ),
  lifts: z.boolean().nullable().describe('it leaves the floor there'),
  disagreement: compared.describe('how far the two calculations are apart, in the unit of the measure'),
  tolerance: compared.describe('how far they may be: farther, and every limit of the design is unknown'),
  notCovered: z.array(z.string()).describe('what was not calculated a second time, and why'),
});

const load = z.strictObject({
  id: z.enum(loadIds),
  sitter: z.string().nullable().describe('name of the sitter; null for loads without one'),
  massKg: kilograms,
  centreOfGravityM: place,
  inertiaKgM2: inertia,
  goesOver: way.nullable(),
  measures: z
    .partialRecord(measureKey, numberOrNull)
    .describe('every measure of this load; the unit is the ending of the name; null where it has no value'),
  missing: z.partialRecord(measureKey, z.string()).describe('why a measure has no value'),
  secondOpinion: secondOpinion
    .nullable()
    .describe('a second calculation by other means; null when none was made'),
});

const remedy = z.strictObject({
  stage: z.enum(['drawing', 'cut', 'glued']).describe('when it can still be done'),
  changes: z
    .array(
      z.strictObject({
        dimension: z.string().describe('a named dimension of the design'),
        from: z.number(),
        to: z.number(),
        unit: z.string().describe('empty: a pure number'),
      }),
    )
    .describe('all of them together'),
  value: numberOrNull.describe('of the measure then, in its unit; null: the limit has none'),
  breaks: z.array(z.string()).describe('ids of limits that are met now and would not be'),
  moves: z
    .record(z.string(), z.number())
    .describe('by how much other measures change, <load>/<measure>/<sitter>, in the unit of the measure'),
});

const limit = z.strictObject({
  id: z.string().describe('<load>/<limit>/<sitter>, the last part only for loads with a sitter'),
  load: z.enum(loadIds),
  sitter: z.string().nullable(),
  measure: measureKey,
  min: numberOrNull.describe('in the unit of the measure'),
  max: numberOrNull,
  value: numberOrNull,
  margin: numberOrNull.describe('distance to the nearer bound, negative when it is not met'),
  verdict,
  reason: z.string().nullable(),
  basis: z.string(),
  remedies: z.array(remedy),
});

export const reportSchema = z.strictObject({
  reportVersion: z.literal(1),
  tool: toolSchema,
  design: designSchema,
  verdict: verdict.describe('fail if any limit fails; else unknown if any is unknown'),
  chair: z.strictObject({
    massKg: kilograms,
    centreOfGravityM: place,
    inertiaKgM2: inertia,
    parts: z.array(part),
  }),
  loads: z.array(load),
  limits: z.array(limit),
  assumptions: z.array(z.strictObject({ what: z.string(), value: z.string(), basis: z.string() })),
  cautions: z.array(z.string()),
});

export type ReportObject = z.infer<typeof reportSchema>;
export type LoadObject = z.infer<typeof load>;
export type OpinionObject = z.infer<typeof secondOpinion>;
export type LimitObject = z.infer<typeof limit>;
export type Assumption = ReportObject['assumptions'][number];
