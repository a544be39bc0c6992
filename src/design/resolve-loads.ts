/** What a design changes of the standard loads and of the chair as drawn, how far off the shop may be, and the limits, in SI. */
import { alterationNames, loadIds, measureKeys, measures, type LoadId, type MeasureKey } from '../names.js';
import type { DesignInSI, LimitInSI, RangeInSI } from './design.js';
import { plainLoadOf } from './load-settings.js';
import { orNull, type InSI } from './resolve-parts.js';
import type { WrittenDesign } from './schema.js';
import type { ValueRange } from './value.js';

type WrittenLoads = NonNullable<WrittenDesign['loads']>;
type WrittenLimits = NonNullable<WrittenDesign['limits']>;
export type RangeToSI = (range: ValueRange) => RangeInSI;

export function loadsInSI(written: WrittenLoads = {}, si: InSI): DesignInSI['loads'] {
  const changes = loadIds.map((load) => [load, changesOf(load, written, si)] as const);
  return Object.fromEntries(changes.filter(([, change]) => change !== undefined));
}

/** null: off; undefined: as standard. */
function changesOf(
  load: LoadId,
  written: WrittenLoads,
  si: InSI,
): Readonly<Record<string, number>> | null | undefined {
  const own = written[load];
  if (own === 'off') return null;
  const plainLoad = plainLoadOf[load];
  const plain = plainLoad && written[plainLoad];
  const settings = { ...(plain === 'off' ? {} : plain), ...own };
  if (Object.keys(settings).length === 0) return undefined;
  const entries = Object.entries(settings).flatMap(([key, value]) =>
    value ? [[key === 'weight' ? 'mass' : key, si(value)] as const] : [],
  );
  return Object.fromEntries(entries);
}

export function alterationsInSI(
  written: WrittenDesign['alterations'] = {},
  si: InSI,
): DesignInSI['alterations'] {
  const changes = alterationNames.map((name) => [name, orNull(written[name], si) ?? 0]);
  return Object.fromEntries(changes) as DesignInSI['alterations'];
}

export function errorsInSI(errors: WrittenDesign['errors'] = {}, si: InSI): DesignInSI['errors'] {
  return Object.entries(errors).map(([dimension, error]) =>
    'normal' in error
      ? { dimension, spread: 'normal', size: si(error.normal) }
      : { dimension, spread: 'even', size: si(error) },
  );
}

type LimitKey = (typeof measures)[MeasureKey]['limitKey'];
type WrittenRanges = { readonly [Key in LimitKey]?: ValueRange | null | undefined };

/** Those without a load first; within a load in the order of the measures. */
export function limitsInSI(written: WrittenLimits = {}, rangeInSI: RangeToSI): LimitInSI[] {
  const ofLoad = (ranges: WrittenRanges, load: LoadId | null): LimitInSI[] =>
    measureKeys.flatMap((measure) => {
      const range = ranges[measures[measure].limitKey];
      return range === undefined ? [] : [{ measure, load, range: range && rangeInSI(range) }];
    });
  return [...ofLoad(written, null), ...loadIds.flatMap((load) => ofLoad(written[load] ?? {}, load))];
}
