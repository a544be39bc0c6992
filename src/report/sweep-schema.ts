/** The shape of the JSON of a sweep. Its types are read from here; a share of a sweep is proved by it. */
import * as z from 'zod';
import { loadIds, measureKeys } from '../names.js';
import { designSchema, overSchema, toolSchema } from './design-schema.js';
import { lengthUnits } from '../quantity/units.js';
import { toldUnits } from './variable-words.js';

const verdict = z.enum(['pass', 'fail', 'unknown']);

const head = {
  sweepVersion: z.literal(1),
  tool: toolSchema,
  design: designSchema.extend({ units: z.enum(lengthUnits) }),
  designs: z.int().describe('how many there are in the whole sweep'),
  varied: z
    .array(
      z.strictObject({
        dimension: z.string(),
        unit: z
          .enum(toldUnits)
          .describe('of its values; empty: a pure number, or SI where it is no usual kind'),
        count: z.number(),
        first: z.number(),
        last: z.number(),
        values: z.array(z.number()).nullable().describe('null where there are more than a hundred'),
      }),
    )
    .describe('the first changes slowest'),
  loads: z.array(z.enum(loadIds)).describe('those that were rolled and judged'),
  columns: z.array(
    z.strictObject({
      name: z.string().describe('<load>/<measure>/<sitter>; the unit is the ending of the measure'),
      load: z.enum(loadIds),
      measure: z.enum(measureKeys),
      sitter: z.string().nullable(),
    }),
  ),
};

/** As many as a build server or a batch scheduler gives out at once; more would be a slip of the pen. */
export const mostShares = 10_000;

/** Of the first line of a share; `sweep` is a digest of version, design and request. */
export const shareHeadSchema = z
  .strictObject({
    share: z.int().min(1),
    of: z.int().max(mostShares),
    sweep: z.string(),
    head: z.strictObject(head),
  })
  .refine(({ share, of }) => share <= of);

/** The last line of a share tells that it is whole. */
export const shareEndSchema = z.strictObject({ end: z.int(), rows: z.int() });

export const sweepRowSchema = z.strictObject({
  design: z.number().describe('its number, from 1'),
  values: z.array(z.number()).describe('one for each of `varied`, in its unit'),
  measures: z.array(z.number().nullable()).describe('one for each of `columns`; null where it has no value'),
  verdict: verdict.describe('of all limits on the loads that were rolled'),
  comfortable: z.boolean(),
  goesOver: z.array(overSchema).describe('loads that take the chair over'),
  notMet: z.array(z.string()).describe('ids of limits that are not met or unknown'),
  tightest: z
    .strictObject({ limit: z.string(), room: z.number() })
    .nullable()
    .describe(
      'the limit with the least room: 0 at its bound, 1 in the middle of its range or twice as far as asked',
    ),
  problem: z.string().nullable().describe('why it cannot be built, or judged'),
});

const summary = z.strictObject({
  designs: z.number(),
  pass: z.number(),
  fail: z.number(),
  unknown: z.number(),
  comfortable: z.number(),
  goesOver: z.number().describe('in how many a load that a limit is about takes the chair over'),
  passing: z
    .array(z.tuple([z.number(), z.number()]))
    .nullable()
    .describe('least and greatest value of each of `varied` among those that pass'),
  roomiest: sweepRowSchema.nullable().describe('the design whose tightest limit has the most room'),
});

export const sweepSchema = z.strictObject({
  ...head,
  rows: z.array(sweepRowSchema),
  whole: z.boolean().describe('false: it was stopped'),
  summary,
});

export type ShareHeadObject = z.infer<typeof shareHeadSchema>;
export type ShareEndObject = z.infer<typeof shareEndSchema>;
export type SweepHeadObject = ShareHeadObject['head'];
export type SweepRowObject = z.infer<typeof sweepRowSchema>;
export type SweepSummaryObject = z.infer<typeof summary>;
