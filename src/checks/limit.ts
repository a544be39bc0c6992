/** One limit on one measure of one load, and whose it is. SI. */
import type { DesignInSI, RangeInSI } from '../design/design.js';
import type { People } from '../loads/people.js';
import { loadIds, loads, measureKeys, measures, type LoadId, type MeasureKey } from '../names.js';
import { defaultBasis, defaultLimits, type DefaultLimit, type SeatedFigures } from './default-limits.js';

export interface Limit {
  readonly measure: MeasureKey;
  readonly load: LoadId;
  /** null: of a load without a sitter, or when nobody sits. */
  readonly sitter: string | null;
  readonly range: RangeInSI;
  readonly basis: string;
  /** Asked for by the design itself: unknown when its measure is missing, where a default is left out. */
  readonly asked: boolean;
  /** The side of a default that is no more than a caution for this sitter. */
  readonly cautioned: RangeInSI | null;
}

/** A design's limit on these without a load means the sitter, though the empty chair has a default as well. */
const seatedOnly: readonly MeasureKey[] = ['seatSlopeDeg', 'periodS'];

/** Which loads a limit stated without a load is for. Without a child no load with one is meant. */
function loadsMeant(measure: MeasureKey, { persons, child }: People): LoadId[] {
  const of: readonly LoadId[] = measures[measure].loads;
  if (seatedOnly.includes(measure)) return ['seated'];
  const byDefault = defaultLimits.filter((limit) => limit.measure === measure).map(({ load }) => load);
  if (byDefault.length > 0) return byDefault.filter((load) => child !== null || !withChild(load));
  const usual: LoadId = persons.length > 0 ? 'seated' : 'empty';
  return of.includes(usual) ? [usual] : of.filter((load) => !withChild(load));
}

const withChild = (load: LoadId): boolean => load.endsWith('with-a-child');

/** What a design says of one measure on one load: a range, or null when it drops the limit. */
type Stated = ReadonlyMap<string, RangeInSI | null>;
const pair = (load: LoadId, measure: MeasureKey): string => `${load} ${measure}`;

function statedBy({ limits }: DesignInSI, people: People): Stated {
  const stated = new Map<string, RangeInSI | null>();
  for (const { load, measure, range } of limits)
    if (load === null)
      for (const meant of loadsMeant(measure, people)) stated.set(pair(meant, measure), range);
  for (const { load, measure, range } of limits) if (load !== null) stated.set(pair(load, measure), range);
  return stated;
}

/**
 * The limits a design is judged by, by load, then sitter, then measure: the defaults of its kind, each replaced or
 * dropped by what the design states for that load, or failing that without a load.
 */
export function limitsOf(
  design: DesignInSI,
  people: People,
  seatedOf: (sitter: string | null) => SeatedFigures,
): Limit[] {
  const { persons } = people;
  const stated = statedBy(design, people);
  return loadIds.flatMap((load) => {
    const sitters = loads[load].sitter && persons.length > 0 ? persons.map(({ name }) => name) : [null];
    return sitters.flatMap((sitter, index) =>
      measureKeys.flatMap((measure) =>
        limitOn(load, measure, sitter, index === 0, design, stated, seatedOf(sitter)),
      ),
    );
  });
}

function limitOn(
  load: LoadId,
  measure: MeasureKey,
  sitter: string | null,
  first: boolean,
  design: DesignInSI,
  stated: Stated,
  seated: SeatedFigures,
): Limit[] {
  const own = stated.get(pair(load, measure));
  if (own === null) return [];
  if (own !== undefined)
    return [{ load, measure, sitter, range: own, basis: 'the design’s own', asked: true, cautioned: null }];
  const usual = defaultLimits.find((limit) => limit.load === load && limit.measure === measure);
  if (usual === undefined) return [];
  const range = usual.range(design, seated);
  if (range === null) return [];
  const basis = `${defaultBasis}: ${usual.why}`;
  return [{ load, measure, sitter, basis, asked: false, ...sidesFor(usual, range, first) }];
}

function sidesFor(
  { hurtsOthers }: DefaultLimit,
  both: RangeInSI,
  first: boolean,
): Pick<Limit, 'range' | 'cautioned'> {
  if (first || hurtsOthers === undefined) return { range: both, cautioned: null };
  const [min, max] = [
    { min: both.min, max: null },
    { min: null, max: both.max },
  ];
  return hurtsOthers === 'min' ? { range: min, cautioned: max } : { range: max, cautioned: min };
}
