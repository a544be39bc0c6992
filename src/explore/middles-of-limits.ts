/**
 * Where two sizes bring two limits to the middles of their ranges: what passes there is too narrow for a coarse net, as where
 * one full rock and the seat slope are both asked for to a hundredth.
 */
import type { JudgedLimit } from '../checks/verdict.js';
import type { DesignFunction } from './design-function.js';
import { judgeFor } from './judge.js';
import { stillLoads } from './passing-places.js';
import type { Place, Places } from './places.js';
import { solveSeveral } from './solve-several.js';

interface Window {
  readonly id: string;
  readonly middle: number;
  readonly half: number;
}

/** @returns of two sizes, by index, the whole steps about such places */
export function middlesFor(fn: DesignFunction, places: Places): (i: number, k: number) => Place[] {
  const judge = judgeFor(stillLoads);
  const limitsAt = (place: Place): readonly JudgedLimit[] => {
    const tried = fn.at(places.valuesAt(place));
    return tried.ok ? judge(tried).limits : [];
  };
  const windows = narrowest(limitsAt(places.begin));
  return (i, k) => {
    if (windows.length === 0) return [];
    const placeAt = ([a, b]: readonly number[]): Place =>
      places.begin
        .with(i, places.begin[i]! + a! * places.spans[i]!)
        .with(k, places.begin[k]! + b! * places.spans[k]!);
    const off = (z: readonly number[]): number[] | null => {
      const values = new Map(limitsAt(placeAt(z)).map(({ id, value }) => [id, value]));
      const left = windows.map(({ id, middle, half }) => ((values.get(id) ?? NaN) - middle) / half);
      return left.some(Number.isNaN) ? null : left;
    };
    const bounds = [i, k].map((n) => {
      const [least, greatest] = places.ends[n]!.map((end) => (end - places.begin[n]!) / places.spans[n]!);
      return [least!, greatest!] as const;
    });
    const solved = solveSeveral(off, bounds);
    return solved?.solved ? stepsAbout(placeAt(solved.z), i, k) : [];
  };
}

/** As many as two sizes can bring to their middles. */
const most = 2;

/** What is not met first, then what is narrow for its size; of each measure one. */
function narrowest(limits: readonly JudgedLimit[]): Window[] {
  const windows = limits.flatMap(({ id, measure, verdict, value, range: { min, max } }) => {
    if (min === null || max === null || value === null || max <= min) return [];
    const [middle, half] = [(min + max) / 2, (max - min) / 2];
    return [{ id, measure, middle, half, isMet: verdict === 'pass', share: half / (Math.abs(middle) || 1) }];
  });
  const sorted = windows.sort((a, b) => Number(a.isMet) - Number(b.isMet) || a.share - b.share);
  return sorted
    .filter(({ measure }, n) => sorted.findIndex((one) => one.measure === measure) === n)
    .slice(0, most);
}

/** The whole steps on all sides of a place between them. */
function stepsAbout(place: Place, i: number, k: number): Place[] {
  const beside = (n: number): number[] => [-1, 0, 1].map((by) => Math.round(place[n]!) + by);
  return beside(i).flatMap((a) => beside(k).map((b) => place.with(i, a).with(k, b)));
}
