/** One limit on one measure of one load, and whose it is. SI. */
import type { DesignInSI, RangeInSI } from '../design/design.js';
import type { People } from '../loads/people.js';
import { loadIds, loads, measureKeys, measures, type LoadId, type MeasureKey } from '../names.js';
import { defaultBasis, defaultLimits, type DefaultLimit, type SeatedFigures } from './default-limits.js';

export interface Limit {
  /** `<load>/<limit>/<sitter>`, the last part only for loads with a sitter. */
  readonly id: string;
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

/** For whom a chair is made; for others some limits hold only on the side where missing them hurts. */
export type MadeFor = 'the first' | 'nobody here';

export const limitId = (load: LoadId, key: string, sitter: string | null): string =>
  [load, key, ...(sitter === null ? [] : [sitter])].join('/');

/** A design's limit on these without a load means the sitter, though the empty chair has a default as well. */
const seatedOnly: readonly MeasureKey[] = ['seatSlopeDeg', 'periodS'];

/** Which loads a limit stated without a load is for. Without a child no load with one is meant. */
export function loadsMeant(measure: MeasureKey, { persons, child }: People): LoadId[] {
  const of: readonly LoadId[] = measures[measure].loads;
  if (seatedOnly.includes(measure)) return ['seated'];
  const byDefault = defaultLimits.filter((limit) => limit.measure === measure).map(({ load }) => load);
  if (byDefault.length > 0) return byDefault.filter((load) => child !== null || !withChild(load));
  const usual: LoadId = persons.length > 0 ? 'seated' : 'empty';
  return of.includes(usual) ? [usual] : of.filter((load) => !withChild(load));
}

const withChild = (load: LoadId): boolean => load.endsWith('with-a-child');

/** Something of one measure on one load. */
type OfPair<T> = ReadonlyMap<LoadId, ReadonlyMap<MeasureKey, T>>;

const noPairs = <T>(): Map<LoadId, Map<MeasureKey, T>> =>
  new Map(loadIds.map((load) => [load, new Map<MeasureKey, T>()]));

/** What a design says of one measure on one load: a range, or null when it drops the limit. */
type Stated = OfPair<RangeInSI | null>;

const usualLimits: OfPair<DefaultLimit> = (() => {
  const usual = noPairs<DefaultLimit>();
  for (const limit of defaultLimits) usual.get(limit.load)!.set(limit.measure, limit);
  return usual;
})();

function statedBy({ limits }: DesignInSI, people: People): Stated {
  const stated = noPairs<RangeInSI | null>();
  for (const { load, measure, range } of limits)
    if (load === null)
      for (const meant of loadsMeant(measure, people)) stated.get(meant)!.set(measure, range);
  for (const { load, measure, range } of limits) if (load !== null) stated.get(load)!.set(measure, range);
  return stated;
}

/**
 * The limits a design is judged by, by load, then sitter, then measure: the defaults of its kind, each replaced or
 * dropped by what the design states for that load, or failing that without a load.
 * @param madeFor whether the chair is made for the first of these people, or for somebody who is not among them
 */
export function limitsOf(
  design: DesignInSI,
  people: People,
  seatedOf: (sitter: string | null) => SeatedFigures,
  madeFor: MadeFor = 'the first',
): Limit[] {
  const { persons } = people;
  const isMadeFor = (index: number): boolean => madeFor === 'the first' && index === 0;
  const stated = statedBy(design, people);
  const nobody: readonly (string | null)[] = [null];
  const names = persons.map(({ name }) => name);
  return loadIds.flatMap((load) => {
    const measuresHere = measureKeys.filter(
      (measure) => stated.get(load)!.has(measure) || usualLimits.get(load)!.has(measure),
    );
    const sitters = loads[load].sitter && names.length > 0 ? names : nobody;
    return sitters.flatMap((sitter, index) =>
      measuresHere.flatMap((measure) =>
        limitOn(load, measure, sitter, isMadeFor(index), design, stated, seatedOf(sitter)),
      ),
    );
  });
}

function limitOn(
  load: LoadId,
  measure: MeasureKey,
  sitter: string | null,
  itsOwn: boolean,
  design: DesignInSI,
  stated: Stated,
  seated: SeatedFigures,
): Limit[] {
  const own = stated.get(load)!.get(measure);
  if (own === null) return [];
  const of = { id: limitId(load, measures[measure].limitKey, sitter), load, measure, sitter };
  if (own !== undefined)
    return [{ ...of, range: own, basis: 'the design’s own', asked: true, cautioned: null }];
  const usual = usualLimits.get(load)!.get(measure)!;
  const range = usual.range(design, seated);
  if (range === null) return [];
  const basis = `${defaultBasis}: ${usual.why}`;
  return [{ ...of, basis, asked: false, ...sidesFor(usual, range, itsOwn) }];
}

function sidesFor(
  { hurtsOthers }: DefaultLimit,
  both: RangeInSI,
  itsOwn: boolean,
): Pick<Limit, 'range' | 'cautioned'> {
  if (itsOwn || hurtsOthers === undefined) return { range: both, cautioned: null };
  const [min, max] = [
    { min: both.min, max: null },
    { min: null, max: both.max },
  ];
  return hurtsOthers === 'min' ? { range: min, cautioned: max } : { range: max, cautioned: min };
}
