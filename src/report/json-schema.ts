import * as z from 'zod';
import { reportSchema } from './schema.js';

/** JSON Schema (2020-12) of the JSON report of one design. */
export const reportJsonSchema = (): object => z.toJSONSchema(reportSchema, { io: 'output' });
