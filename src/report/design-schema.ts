/** What every JSON says of the tool, and of the design that it is about. */
import * as z from 'zod';
import { chairKinds, loadIds } from '../names.js';

export const toolSchema = z.strictObject({ name: z.string(), version: z.string() });

export const designSchema = z.strictObject({
  name: z.string(),
  file: z.string().describe('as typed'),
  sha256: z.string().nullable().describe('of the file’s bytes'),
  kind: z.enum(chairKinds),
});

export const overSchema = z.strictObject({
  load: z.enum(loadIds),
  sitter: z.string().nullable(),
  way: z.enum(['back', 'forward']),
});
