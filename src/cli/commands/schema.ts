/** `trueroll schema design|report|comparison|…` */
import { designJsonSchema } from '../../design/json-schema.js';
import {
  adjustmentJsonSchema,
  comparisonJsonSchema,
  reportJsonSchema,
  sweepJsonSchema,
  toleranceJsonSchema,
} from '../../report/json-schema.js';
import { exitCodes, type World } from '../world.js';

const schemas: Readonly<Record<string, () => object>> = {
  design: designJsonSchema,
  report: reportJsonSchema,
  comparison: comparisonJsonSchema,
  sweep: sweepJsonSchema,
  adjustment: adjustmentJsonSchema,
  tolerance: toleranceJsonSchema,
};

export function schema({ stdout, stderr }: World, of: string): number {
  const wanted = Object.hasOwn(schemas, of) ? schemas[of] : undefined;
  if (wanted === undefined) {
    stderr.write(`expected ${Object.keys(schemas).join(' or ')}, found ${of}\n`);
    return exitCodes.cannotJudge;
  }
  stdout.write(`${JSON.stringify(wanted(), null, 2)}\n`);
  return exitCodes.met;
}
