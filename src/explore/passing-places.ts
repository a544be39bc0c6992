/** Whether designs meet all limits, each place judged once, and which of those that were looked at comes closest to that. */
import { loadIds, loads } from '../names.js';
import type { DesignFunction } from './design-function.js';
import { judgeFor } from './judge.js';
import type { Place, Places } from './places.js';
import { missedInAll } from './shortfall.js';

export interface PassingPlaces {
  readonly passes: (place: Place) => boolean;
  /** null: none can be built. */
  readonly closest: () => Place | null;
}

/** Some fifty times cheaper than the others, they sort out what need not be rolled through everything. */
export const stillLoads = loadIds.filter((load) => !loads[load].moving);

/** What misses at rest is never closer than what misses only when somebody moves; more than all limits come to together. */
const missesAtRest = 1e3;

export function passingPlaces(fn: DesignFunction, places: Places): PassingPlaces {
  const [still, whole] = [judgeFor(stillLoads), judgeFor()];
  const known = new Map<string, boolean>();
  let best: { readonly place: Place; readonly missed: number } | null = null;

  const judged = (place: Place): boolean => {
    const tried = fn.at(places.valuesAt(place));
    if (!tried.ok) return false;
    const atRest = still(tried);
    const rolled = atRest.verdict === 'pass';
    const { limits, verdict } = rolled ? whole(tried) : atRest;
    const missed = missedInAll(limits) + (rolled ? 0 : missesAtRest);
    if (best === null || missed < best.missed) best = { place, missed };
    return verdict === 'pass';
  };
  return {
    passes: (place) => {
      const key = place.join();
      const passes = known.get(key) ?? judged(place);
      known.set(key, passes);
      return passes;
    },
    closest: () => best && best.place,
  };
}
