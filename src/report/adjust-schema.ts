/** The shape of the JSON of an adjustment. Its types are read from here; the schema itself is loaded only to be printed. */
import * as z from 'zod';
import { loadIds, measureKeys } from '../names.js';
import { designSchema, overSchema, toolSchema } from './design-schema.js';

const numberOrNull = z.number().nullable();

const setting = z.strictObject({
  values: z
    .array(
      z.strictObject({
        exact: numberOrNull.describe('as it solves; null: sought in whole steps'),
        to: z.number().describe('in whole steps of a maker'),
      }),
    )
    .describe('one for each of `by`, in its unit'),
  measures: z.array(numberOrNull).describe('of `to`, one for each of `targets`, in the unit of the measure'),
  verdict: z.enum(['pass', 'fail', 'unknown']).describe('of all limits with `to`'),
  goesOver: z.array(overSchema).describe('loads that take the chair over then'),
  notMet: z.array(z.string()).describe('ids of limits that are not met then, or unknown'),
  broken: z.array(z.string()).describe('those of them that are met as the design stands'),
  mended: z.array(z.string()).describe('ids of limits that are not met as it stands and are then'),
});

export const adjustmentSchema = z.strictObject({
  adjustmentVersion: z.literal(1),
  tool: toolSchema,
  design: designSchema,
  targets: z
    .array(
      z.strictObject({
        load: z.enum(loadIds),
        measure: z.enum(measureKeys),
        sitter: z.string().nullable(),
        target: z.number().describe('in the unit of the measure'),
        stated: numberOrNull.describe('as the design stands'),
      }),
    )
    .describe('none: the nearest design that meets all limits was sought'),
  by: z.array(
    z.strictObject({
      dimension: z.string(),
      unit: z.string().describe('empty: a pure number'),
      from: z.number().describe('as the design stands'),
      least: z.number(),
      greatest: z.number(),
    }),
  ),
  solutions: z
    .array(setting)
    .describe('all there are in the range, of one target by one size; else one or none'),
  closest: setting.nullable().describe('what comes nearest where there is no solution'),
  reach: z
    .tuple([z.number(), z.number()])
    .nullable()
    .describe('of one target by one size: least and greatest value over the range'),
  jumps: z.array(z.number()).describe('of one target by one size: where the measure jumps over the target'),
  idle: z.array(z.string()).describe('sizes of `by` on which none of the targets depends'),
});

export type AdjustmentObject = z.infer<typeof adjustmentSchema>;
export type SettingObject = z.infer<typeof setting>;
