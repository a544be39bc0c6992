/**
 * The nearest design that meets all limits, by some sizes in whole maker's steps. One size at a time is looked at step by
 * step, outward; then two at a time, where that may be nearer: on a coarse net, or beside where two narrow limits are met in
 * their middles, from the nearest passing place in steps halved down to the maker's own, and along the edge of what passes.
 * Where two sizes pass only between the places of the net, and not there, it is not found.
 */
import type { DesignFunction } from './design-function.js';
import { passingPlaces, type PassingPlaces } from './passing-places.js';
import { placesIn, type Place, type Places } from './places.js';
import { middlesFor } from './middles-of-limits.js';
import type { SizeRange } from './size-range.js';

export interface NearestPassing {
  /** SI, one for each size; null: none was found. */
  readonly found: readonly number[] | null;
  /** Where none was found, of those looked at the one that misses its limits by least in all. */
  readonly closest: readonly number[] | null;
}

export function nearestPassing(
  fn: DesignFunction,
  by: readonly SizeRange[],
  progress: (done: number, of: number) => void,
): NearestPassing {
  const places = placesIn(by);
  const { passes, closest } = passingPlaces(fn, places);
  const nearer = (a: Place | null, b: Place | null): Place | null =>
    a === null ? b : b === null || places.far(a) <= places.far(b) ? a : b;
  const pairs = by.flatMap((_, i) => by.slice(i + 1).map((_, k) => [i, i + 1 + k] as const));
  const all = by.length + pairs.length;
  const middles = middlesFor(fn, places);
  let [nearest, done]: [Place | null, number] = [null, 0];
  for (let i = 0; i < by.length; i++) {
    progress(done++, all);
    nearest = nearer(nearest, alongOne(places, passes, i, nearest));
  }
  for (const [i, k] of pairs) {
    progress(done++, all);
    nearest = nearer(
      nearest,
      alongTwo(places, passes, i, k, nearest, () => middles(i, k)),
    );
  }
  const valuesAt = (place: Place | null): number[] | null => place && places.valuesAt(place);
  return { found: valuesAt(nearest), closest: nearest === null ? valuesAt(closest()) : null };
}

type Passes = PassingPlaces['passes'];

/** @param nearest no farther than that one, which passes */
function alongOne(
  { begin, ends, has, far }: Places,
  passes: Passes,
  i: number,
  nearest: Place | null,
): Place | null {
  const [least, greatest] = ends[i]!;
  const reach = Math.max(begin[i]! - least, greatest - begin[i]!);
  for (let steps = 0; steps <= reach; steps++)
    for (const sense of steps === 0 ? [1] : [-1, 1]) {
      const place = begin.with(i, begin[i]! + sense * steps);
      if (nearest !== null && far(place) >= far(nearest)) return null;
      if (has(place) && passes(place)) return place;
    }
  return null;
}

/** @param seeds other places to begin from, where the net has none */
function alongTwo(
  places: Places,
  passes: Passes,
  i: number,
  k: number,
  nearest: Place | null,
  seeds: () => readonly Place[],
): Place | null {
  const { far, has } = places;
  const isNearer = (place: Place): boolean => nearest === null || far(place) < far(nearest);
  const passing = (of: readonly Place[]): Place | undefined =>
    of
      .filter((place) => has(place) && isNearer(place))
      .sort((a, b) => far(a) - far(b))
      .find(passes);
  const first = passing(netOf(places, i, k)) ?? passing(seeds());
  return first === undefined ? null : alongEdge(drawnIn(first, places, passes, i, k), places, passes, i, k);
}

/** Strides of the net from end to end of a size. */
const strides = 24;

/** Its places, both ends counted in, and those beside where the search begins. */
function netOf({ begin, ends }: Places, i: number, k: number): Place[] {
  const along = (n: number): number[] => {
    const [least, greatest] = ends[n]!;
    const own = Array.from({ length: strides + 1 }, (_, j) =>
      Math.round(least + ((greatest - least) * j) / strides),
    );
    return [...new Set([...own, begin[n]!])];
  };
  return along(i).flatMap((a) => along(k).map((b) => begin.with(i, a).with(k, b)));
}

/** Towards the design as it stands, in strides halved down to one step, as long as it passes. */
function drawnIn(from: Place, { spans, has, far }: Places, passes: Passes, i: number, k: number): Place {
  let place = from;
  for (let stride = Math.max(spans[i]!, spans[k]!) / strides; stride >= 0.5; stride /= 2) {
    const by = Math.max(1, Math.round(stride));
    for (let moved = true; moved;) {
      moved = false;
      for (const [a, b] of ways) {
        const next = place.with(i, place[i]! + a * by).with(k, place[k]! + b * by);
        if (far(next) >= far(place) || !has(next) || !passes(next)) continue;
        [place, moved] = [next, true];
      }
    }
  }
  return place;
}

/** So many steps to either side of what was found. */
const besides = 8;

/** Where the edge of what passes slants, one size gives way a little so that the other comes nearer by more. */
function alongEdge(from: Place, places: Places, passes: Passes, i: number, k: number): Place {
  const { has, far } = places;
  const around = Array.from({ length: 2 * besides + 1 }, (_, n) => n - besides);
  const nearer = around
    .flatMap((a) => around.map((b) => from.with(i, from[i]! + a).with(k, from[k]! + b)))
    .filter((place) => has(place) && far(place) < far(from))
    .sort((a, b) => far(a) - far(b))
    .find(passes);
  return nearer === undefined ? from : alongEdge(nearer, places, passes, i, k);
}

const ways = [-1, 0, 1]
  .flatMap((a) => [-1, 0, 1].map((b) => [a, b] as const))
  .filter(([a, b]) => a !== 0 || b !== 0);
