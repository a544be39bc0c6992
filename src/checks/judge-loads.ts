import type { RangeInSI } from '../design/design.js';
import { measures, type LoadId } from '../names.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import type { Measured } from '../measures/catalogue.js';
import { goesOver, type LoadRecord } from '../measures/record.js';
import { restsNowhere } from '../measures/no-rest.js';
import type { SeatedFigures } from './default-limits.js';
import type { Limit } from './limit.js';
import { judge, marginIn, type JudgedLimit } from './verdict.js';

export interface MeasuredLoad {
  readonly record: LoadRecord;
  readonly measured: Measured;
}

/**
 * Every limit judged on the load it is for; a load without a rest fails its limit `rest`, its others are unknown.
 * @param whyNotRolled why a load that a limit asks for is not among these
 */
export function judgeLoads(
  limits: readonly Limit[],
  measuredLoads: readonly MeasuredLoad[],
  whyNotRolled: (load: LoadId) => string,
): JudgedLimit[] {
  const judged = measuredLoads.flatMap((measured) => [
    ...restLimit(measured.record),
    ...limits.filter((limit) => isFor(limit, measured.record)).flatMap((limit) => judgeOne(limit, measured)),
  ]);
  const rolled = new Set(measuredLoads.map(({ record }) => record.load.id));
  const open = limits.filter(({ load, asked }) => asked && !rolled.has(load));
  return [...judged, ...open.map((limit) => judgedOn(limit, missing(whyNotRolled(limit.load))))];
}

/** Of each sitter; getting up is counted from the same rest, where the seated load is off. */
export const seatedFigures =
  (loads: readonly MeasuredLoad[]) =>
  (sitter: string | null): SeatedFigures => {
    const ids: readonly LoadId[] = ['seated', 'getting-up'];
    const of = loads.find(({ record: { load } }) => ids.includes(load.id) && load.sitter === sitter);
    return { rockerEndBack: of?.record.roll.atRest?.back.rockerEnd ?? null };
  };

const isFor = ({ load, sitter }: Limit, record: LoadRecord): boolean =>
  load === record.load.id && sitter === record.load.sitter;

const anyRange: RangeInSI = { min: null, max: null };

function restLimit({ load, noRest }: LoadRecord): JudgedLimit[] {
  if (noRest === null) return [];
  return [
    {
      ...named(load.id, 'rest', load.sitter),
      measure: null,
      range: anyRange,
      value: null,
      margin: null,
      verdict: 'fail',
      reason: noRest,
      basis: 'a chair must come to rest on its rockers',
      cautioned: false,
    },
  ];
}

/**
 * A default limit on what the file does not give is left out, one that the design asks for is unknown; so is either where
 * the number should be there and is not. A load that goes over fails all of them.
 */
function judgeOne(limit: Limit, { record, measured }: MeasuredLoad): JudgedLimit[] {
  const found = measured.get(limit.measure) ?? missing('this load has no such measure');
  const beside = isMissing(found) && found.beside === true;
  if (beside && !limit.asked) return [];
  if (record.noRest && !beside) return [judgedOn(limit, missing(restsNowhere))];
  const over = record.motion?.goesOver ?? null;
  if (over === null || beside) return [judgedOn(limit, found)];
  return [{ ...judgedOn(limit, missing(goesOver(over))), verdict: 'fail' }];
}

function judgedOn(
  { load, sitter, measure, range, basis, cautioned }: Limit,
  value: OrMissing<number>,
): JudgedLimit {
  return {
    ...named(load, measures[measure].limitKey, sitter),
    measure,
    range,
    basis,
    ...judge(range, value),
    cautioned: cautioned !== null && !isMissing(value) && marginIn(cautioned, value) < 0,
  };
}

const named = (
  load: LoadId,
  key: string,
  sitter: string | null,
): Pick<JudgedLimit, 'id' | 'load' | 'sitter'> => ({
  id: [load, key, ...(sitter === null ? [] : [sitter])].join('/'),
  load,
  sitter,
});
