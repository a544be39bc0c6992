import type { RangeInSI } from '../design/design.js';
import type { LoadId } from '../names.js';
import { isMissing, missing, type OrMissing } from '../numeric/missing.js';
import type { Measured } from '../measures/catalogue.js';
import { goesOver, type LoadRecord } from '../measures/record.js';
import { restsNowhere, type NoRest } from '../measures/no-rest.js';
import { limitId, type Limit } from './limit.js';
import { judge, marginIn, type JudgedLimit } from './verdict.js';

/** A load and what is asked of it: all its measures, or each worked out when it is asked for. */
export interface MeasuredLoad<Answers = Measured> {
  readonly record: LoadRecord;
  readonly measured: Answers;
}

type Asked = MeasuredLoad<Pick<Measured, 'get'>>;

/**
 * Every limit judged on the load it is for; a load without a rest fails its limit `rest`, its others are unknown.
 * @param whyNotRolled why a load that a limit asks for is not among these
 */
export function judgeLoads(
  limits: readonly Limit[],
  measuredLoads: readonly Asked[],
  whyNotRolled: (load: LoadId) => string,
): JudgedLimit[] {
  const rolled = new Set(measuredLoads.map(({ record }) => record.load.id));
  const open = limits.filter(({ load, asked }) => asked && !rolled.has(load));
  return [
    ...judgeRolled(groupedByLoad(limits), measuredLoads),
    ...open.map((limit) => judgedOn(limit, missing(whyNotRolled(limit.load)))),
  ];
}

/** The limits on one load of one sitter. */
export type LimitsOf = (load: LoadId, sitter: string | null) => readonly Limit[];

export function groupedByLoad(limits: readonly Limit[]): LimitsOf {
  const groups = new Map<LoadId, Map<string | null, Limit[]>>();
  for (const limit of limits) {
    const ofLoad = groups.get(limit.load) ?? new Map<string | null, Limit[]>();
    groups.set(limit.load, ofLoad.set(limit.sitter, [...(ofLoad.get(limit.sitter) ?? []), limit]));
  }
  return (load, sitter) => groups.get(load)?.get(sitter) ?? [];
}

/** Only of the loads that were rolled. In plain loops: a sweep judges some twenty limits a design. */
export function judgeRolled(limitsOf: LimitsOf, loads: readonly Asked[]): JudgedLimit[] {
  const judged: JudgedLimit[] = [];
  for (const asked of loads) {
    const { record } = asked;
    if (record.noRest !== null) judged.push(restLimit(record, record.noRest));
    for (const limit of limitsOf(record.load.id, record.load.sitter)) {
      const one = judgeOne(limit, asked);
      if (one !== null) judged.push(one);
    }
  }
  return judged;
}

const anyRange: RangeInSI = { min: null, max: null };

const restLimit = ({ load }: LoadRecord, reason: NoRest): JudgedLimit => ({
  id: limitId(load.id, 'rest', load.sitter),
  load: load.id,
  sitter: load.sitter,
  measure: null,
  range: anyRange,
  value: null,
  margin: null,
  verdict: 'fail',
  reason,
  basis: 'a chair must come to rest on its rockers',
  cautioned: false,
});

/**
 * A default limit on what the file does not give is left out (null), one that the design asks for is unknown; so is either
 * where the number should be there and is not. A load that goes over fails all of them.
 */
function judgeOne(limit: Limit, { record, measured }: Asked): JudgedLimit | null {
  const found = measured.get(limit.measure) ?? missing('this load has no such measure');
  const beside = isMissing(found) && found.beside === true;
  if (beside && !limit.asked) return null;
  if (record.noRest && !beside) return judgedOn(limit, missing(restsNowhere));
  const over = record.motion?.goesOver ?? null;
  if (over === null || beside) return judgedOn(limit, found);
  return { ...judgedOn(limit, missing(goesOver(over))), verdict: 'fail' };
}

/** Field by field: a sweep judges some twenty limits ten thousand times a second, and spreading costs a fifth of it. */
function judgedOn(limit: Limit, found: OrMissing<number>): JudgedLimit {
  const { value, margin, verdict, reason } = judge(limit.range, found);
  return {
    id: limit.id,
    load: limit.load,
    sitter: limit.sitter,
    measure: limit.measure,
    range: limit.range,
    basis: limit.basis,
    value,
    margin,
    verdict,
    reason,
    cautioned: limit.cautioned !== null && value !== null && marginIn(limit.cautioned, value) < 0,
  };
}
