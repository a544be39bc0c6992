import * as z from 'zod';
import { adjustmentSchema } from './adjust-schema.js';
import { comparisonSchema } from './compare-schema.js';
import { reportSchema } from './schema.js';
import { sweepSchema } from './sweep-schema.js';
import { toleranceSchema } from './tolerance-schema.js';

/** JSON Schema (2020-12) of the JSON report of one design. */
export const reportJsonSchema = (): object => z.toJSONSchema(reportSchema, { io: 'output' });

/** JSON Schema (2020-12) of the JSON of a comparison. */
export const comparisonJsonSchema = (): object => z.toJSONSchema(comparisonSchema, { io: 'output' });

/** JSON Schema (2020-12) of the JSON of a sweep. */
export const sweepJsonSchema = (): object => z.toJSONSchema(sweepSchema, { io: 'output' });

/** JSON Schema (2020-12) of the JSON of `tolerance`. */
export const toleranceJsonSchema = (): object => z.toJSONSchema(toleranceSchema, { io: 'output' });

/** JSON Schema (2020-12) of the JSON of an adjustment. */
export const adjustmentJsonSchema = (): object => z.toJSONSchema(adjustmentSchema, { io: 'output' });
