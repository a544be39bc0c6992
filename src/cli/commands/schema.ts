/** `trueroll schema design|report|comparison|…` */
import { designJsonSchema } from '../../design/json-schema.js';
import {
  adjustmentJsonSchema,
  comparisonJsonSchema,
  reportJsonSchema,
  sweepJsonSchema,
  toleranceJsonSchema,
} from '../../report/json-schema.js';
import { issueOfWhole } from '../../design/issue.js';
import { shown } from '../../quantity/source-text.js';
import { refuse } from '../answer.js';
import { exitCodes, type World } from '../world.js';

const schemas: Readonly<Record<string, () => object>> = {
  design: designJsonSchema,
  report: reportJsonSchema,
  comparison: comparisonJsonSchema,
  sweep: sweepJsonSchema,
  adjustment: adjustmentJsonSchema,
  tolerance: toleranceJsonSchema,
};

export function schema(world: World, of: string): number {
  const wanted = Object.hasOwn(schemas, of) ? schemas[of] : undefined;
  if (wanted === undefined) {
    return refuse(world, [issueOfWhole('schema', Object.keys(schemas).join(' or '), shown(of))]);
  }
  world.stdout.write(`${JSON.stringify(wanted(), null, 2)}\n`);
  return exitCodes.met;
}
