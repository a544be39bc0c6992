/**
 * The nearest design that meets all limits, by some sizes in whole maker's steps. Near is what changes each size by little
 * of its range: the square root of the sum of squares. One size at a time is looked at step by step, outward; then two at
 * a time on a coarse net, from its nearest passing place in steps halved down to the maker's own. Where two sizes pass
 * only between the places of the net it is not found.
 *
 * The loads at rest, some fifty times cheaper, sort out what need not be rolled through everything.
 */
import { loadIds, loads as loadFacts } from '../names.js';
import type { By } from './adjust-request.js';
import type { DesignFunction } from './design-function.js';
import { judgeFor, type Judgement } from './judge.js';
import { wholeSteps } from './makers-step.js';
import { shortfallIn } from './shortfall.js';

export interface NearestPassing {
  /** SI, one for each size; null: none was found. */
  readonly found: readonly number[] | null;
  /** Where none was found, the one whose worst limit is missed by least. */
  readonly closest: readonly number[] | null;
}

/** Places of the net along each of two sizes. */
const net = 24;

/** What misses at rest is never closer than what misses only when somebody moves; more than all limits come to together. */
const missesAtRest = 1e3;

type Place = readonly number[];

export function nearestPassing(
  fn: DesignFunction,
  by: readonly By[],
  progress: (done: number, of: number) => void,
): NearestPassing {
  const search = searchIn(fn, by);
  const pairs = by.flatMap((_, i) => by.slice(i + 1).map((_, k) => [i, i + 1 + k] as const));
  const all = by.length + pairs.length;
  let [nearest, done]: [Place | null, number] = [null, 0];
  for (let i = 0; i < by.length; i++) {
    progress(done++, all);
    nearest = search.nearer(nearest, search.alongOne(i, nearest));
  }
  // Two together are looked for only where none does it alone: they can be nearer, but nobody wants to change two.
  if (nearest === null)
    for (const [i, k] of pairs) {
      progress(done++, all);
      nearest = search.nearer(nearest, search.alongTwo(i, k, nearest));
    }
  return { found: nearest && search.valuesAt(nearest), closest: nearest ? null : search.closest() };
}

interface Search {
  readonly valuesAt: (place: Place) => number[];
  readonly nearer: (a: Place | null, b: Place | null) => Place | null;
  readonly alongOne: (i: number, within: Place | null) => Place | null;
  readonly alongTwo: (i: number, k: number, within: Place | null) => Place | null;
  readonly closest: () => number[] | null;
}

const stillLoads = loadIds.filter((load) => !loadFacts[load].moving);

function searchIn(fn: DesignFunction, by: readonly By[]): Search {
  const [still, whole] = [judgeFor(stillLoads), judgeFor()];
  const stated = by.map(({ variable, step }) => Math.round(variable.stated / step));
  const ends = by.map(({ least, greatest, step }) => wholeSteps(least, greatest, step));
  const spans = ends.map(([least, greatest]) => Math.max(1, greatest - least));
  let best: { readonly place: Place; readonly off: number } | null = null;

  const valuesAt = (place: Place): number[] =>
    place.map((steps, i) => (steps === stated[i] ? by[i]!.variable.stated : steps * by[i]!.step));
  const far = (place: Place): number =>
    Math.hypot(...place.map((steps, i) => (steps - stated[i]!) / spans[i]!));
  const nearer = (a: Place | null, b: Place | null): Place | null =>
    a === null ? b : b === null || far(a) <= far(b) ? a : b;
  const judged = (place: Place, judge: ReturnType<typeof judgeFor>): Judgement | null => {
    const tried = fn.at(valuesAt(place));
    return tried.ok ? judge(tried) : null;
  };
  const passes = (place: Place): boolean => {
    const atRest = judged(place, still);
    if (atRest === null) return false;
    const sorted = atRest.verdict === 'pass' ? judged(place, whole)! : atRest;
    const off = shortfallIn(sorted.limits);
    const rank = atRest.verdict === 'pass' ? off : missesAtRest + off;
    if (best === null || rank < best.off) best = { place, off: rank };
    return sorted.verdict === 'pass';
  };
  const inside = (place: Place): boolean =>
    place.every((steps, i) => steps >= ends[i]![0] && steps <= ends[i]![1]);
  const known = new Map<string, boolean>();
  const passesOnce = (place: Place): boolean => {
    const key = place.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const now = passes(place);
    known.set(key, now);
    return now;
  };

  const alongOne = (i: number, within: Place | null): Place | null => {
    const reach = Math.max(stated[i]! - ends[i]![0], ends[i]![1] - stated[i]!);
    for (let steps = 1; steps <= reach; steps++)
      for (const sense of [-1, 1]) {
        const place = stated.with(i, stated[i]! + sense * steps);
        if (within !== null && far(place) >= far(within)) return null;
        if (inside(place) && passesOnce(place)) return place;
      }
    return null;
  };

  const alongTwo = (i: number, k: number, within: Place | null): Place | null => {
    const places = netOf(i, k)
      .filter((place) => within === null || far(place) < far(within))
      .sort((a, b) => far(a) - far(b));
    const first = places.find(passesOnce);
    return first === undefined ? null : drawnIn(first, i, k);
  };

  const netOf = (i: number, k: number): Place[] => {
    const along = (n: number): number[] => {
      const [least, greatest] = ends[n]!;
      const own = Array.from({ length: net + 1 }, (_, j) =>
        Math.round(least + ((greatest - least) * j) / net),
      );
      return [...new Set([...own, stated[n]!])];
    };
    return along(i).flatMap((a) => along(k).map((b) => stated.with(i, a).with(k, b)));
  };

  /** Towards the design as it stands, in strides halved down to one step, as long as it passes. */
  const drawnIn = (from: Place, i: number, k: number): Place => {
    let place = from;
    for (let stride = Math.max(spans[i]!, spans[k]!) / net; stride >= 0.5; stride /= 2) {
      const by = Math.max(1, Math.round(stride));
      for (let moved = true; moved;) {
        moved = false;
        for (const [a, b] of ways) {
          const next = place.with(i, place[i]! + a * by).with(k, place[k]! + b * by);
          if (far(next) >= far(place) || !inside(next) || !passesOnce(next)) continue;
          [place, moved] = [next, true];
        }
      }
    }
    return place;
  };

  return { valuesAt, nearer, alongOne, alongTwo, closest: () => best && valuesAt(best.place) };
}

const ways = [-1, 0, 1]
  .flatMap((a) => [-1, 0, 1].map((b) => [a, b] as const))
  .filter(([a, b]) => a !== 0 || b !== 0);
