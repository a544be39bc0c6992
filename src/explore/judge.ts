/**
 * Limits judged on a chair of a sweep or a search: the same verdicts as a check gives, but only of the loads that are
 * wanted, and a measure is worked out only when a limit or somebody asks for it.
 */
import { defaultLimits } from '../checks/default-limits.js';
import { groupedByLoad, judgeRolled, type LimitsOf, type MeasuredLoad } from '../checks/judge-loads.js';
import { limitsOf, type MadeFor } from '../checks/limit.js';
import { seatedFigures } from '../checks/seated-figures.js';
import { worst, type JudgedLimit, type Verdict } from '../checks/verdict.js';
import { keptWhileSame } from '../kept.js';
import { loadsOf } from '../loads/loads-of.js';
import { measureNow, type Measured } from '../measures/catalogue.js';
import { rollLoads, type LoadRecord } from '../measures/record.js';
import { loadIds, measures, type LoadId, type MeasureKey } from '../names.js';
import { isMissing, type OrMissing } from '../numeric/missing.js';
import type { AskedMeasure } from './asked-measure.js';
import type { BuiltDesign } from './design-function.js';

export type JudgedLoad = MeasuredLoad<Pick<Measured, 'get'>>;

export interface Judgement {
  readonly loads: readonly JudgedLoad[];
  readonly limits: readonly JudgedLimit[];
  readonly verdict: Verdict;
}

/**
 * @param wanted the loads that are rolled; limits on others are not judged
 * @param whom only these sitters (null: a load without one); everybody if left out
 */
export function judgeFor(
  wanted: readonly LoadId[] = loadIds,
  whom?: ReadonlySet<string | null>,
  madeFor?: MadeFor,
): (built: Pick<BuiltDesign, 'chair' | 'design' | 'people'>) => Judgement {
  const limitsFor = keptLimits(wanted, madeFor);
  return (built) => {
    const { chair, design, people } = built;
    const all = loadsOf(design, chair, people, wanted);
    const rolled = whom ? all.filter(({ sitter }) => whom.has(sitter)) : all;
    const loads = rollLoads(chair, rolled, design.floor.rolling).map((record) => ({
      record,
      measured: askedOf(record),
    }));
    const limits = judgeRolled(limitsFor(built, loads), loads);
    return { loads, limits, verdict: worst(limits.map(({ verdict }) => verdict)) };
  };
}

/** Each measure once, when it is asked for. */
function askedOf(record: LoadRecord): Pick<Measured, 'get'> {
  const known = new Map<MeasureKey, OrMissing<number>>();
  return {
    get: (key) => {
      if (!measures[key].loads.includes(record.load.id)) return undefined;
      const value = known.get(key) ?? measureNow(record, key);
      known.set(key, value);
      return value;
    },
  };
}

/** The loads of which a default limit is held against another figure of the same chair. */
const heldAgainst = new Set(defaultLimits.filter((limit) => limit.againstSeated).map(({ load }) => load));

/** Limits are the same for every chair of a sweep, unless one is held against a figure of the chair itself. */
function keptLimits(
  wanted: readonly LoadId[],
  madeFor: MadeFor | undefined,
): (built: Pick<BuiltDesign, 'design' | 'people'>, loads: readonly JudgedLoad[]) => LimitsOf {
  const kept = keptWhileSame<LimitsOf>();
  const changing = wanted.some((load) => heldAgainst.has(load));
  return ({ design, people }, loads) =>
    kept([design.kind, design.floor, design.limits, people, ...(changing ? [loads] : [])], () =>
      groupedByLoad(limitsOf(design, people, seatedFigures(loads), madeFor)),
    );
}

/** In SI; null where it has no value or is not of the loads that were rolled. */
export function measureIn({ loads }: Judgement, { load, sitter, measure }: AskedMeasure): number | null {
  const own = loads.find(({ record }) => record.load.id === load && record.load.sitter === sitter);
  const value = own?.measured.get(measure);
  return value === undefined || isMissing(value) ? null : value;
}
