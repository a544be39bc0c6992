/**
 * Every place in a range where a function of one size comes to a target. Between the places that are looked at, a change of
 * sides brackets a root, and a hill or hollow on one side is climbed: it may touch the target, or cross it twice. Where the
 * function has no value the edge of that stretch is found and looked at too. A change of sides by a jump, as where a chair
 * finds another rest, is no solution.
 */
import { topOf } from '../numeric/maximum.js';
import { rootBetween } from '../numeric/root.js';

/** null: it has no value there. */
export type OfOne = (x: number) => number | null;

export interface SolvedOne {
  /** In order; of a stretch that lies on the target its beginning. */
  readonly solutions: readonly number[];
  /** Where it jumps over the target. */
  readonly jumps: readonly number[];
  /** Least and greatest value, on hills and in hollows that may come to the target too; null: it has none anywhere. */
  readonly reach: readonly [least: number, greatest: number] | null;
  /** Where it comes nearest to the target. */
  readonly closest: number | null;
}

/** So many steps over the range: what rises and falls again within one of them is missed. */
const steps = 128;
/** Nearer to the target than this share of it (or of the reach) is on it: rounding of a calculation good to 1e-12. */
const onTarget = 1e-10;

interface Sample {
  readonly x: number;
  /** From the target. */
  readonly off: number;
}

/** @param stated about which a range far wider than it is looked at in equal ratios too */
export function solveOne(
  f: OfOne,
  target: number,
  from: number,
  to: number,
  stated: number | null = null,
): SolvedOne {
  const stretches = stretchesOf(f, target, placesIn(from, to, stated));
  if (stretches.length === 0) return { solutions: [], jumps: [], reach: null, closest: null };
  const off = (x: number): number => (f(x) ?? NaN) - target;
  const tops = stretches.map((samples) => withTurns(off, samples));
  const seen = tops.flat().map((sample) => sample.off);
  const [least, greatest] = [Math.min(...seen), Math.max(...seen)];
  const near = onTarget * Math.max(Math.abs(target), greatest - least);
  const roots = tops.flatMap((samples) => rootsIn(off, samples, near));
  return {
    solutions: roots.filter(({ solves }) => solves).map(({ x }) => x),
    jumps: roots.filter(({ solves }) => !solves).map(({ x }) => x),
    reach: [target + least, target + greatest],
    closest: tops.flat().reduce((a, b) => (Math.abs(b.off) < Math.abs(a.off) ? b : a)).x,
  };
}

/** A range this many times as wide as what is stated is looked at in equal ratios about that too. */
const wide = 8;
/** Either way of it: so often doubled or halved, in so many steps each. */
const doublings = 8;

function placesIn(from: number, to: number, stated: number | null): number[] {
  const even = Array.from({ length: steps + 1 }, (_, i) =>
    i === steps ? to : from + ((to - from) * i) / steps,
  );
  if (stated === null || to - from <= wide * Math.abs(stated)) return even;
  const ratios = Array.from({ length: steps + 1 }, (_, i) => 2 ** (doublings * ((2 * i) / steps - 1)));
  const about = ratios.map((ratio) => stated * ratio).filter((x) => x > from && x < to);
  return [...new Set([...even, ...about])].sort((a, b) => a - b);
}

/** Samples of each stretch over which it has a value, its edges too. */
function stretchesOf(f: OfOne, target: number, places: readonly number[]): Sample[][] {
  const stretches: Sample[][] = [];
  let before: Looked | undefined;
  for (const x of places) {
    const value = f(x);
    const edge =
      before && (before.value === null) !== (value === null) ? edgeOf(f, before, { x, value }) : null;
    if (value !== null && (before === undefined || before.value === null)) stretches.push([]);
    if (edge !== null) stretches.at(-1)!.push({ x: edge, off: f(edge)! - target });
    if (value !== null) stretches.at(-1)!.push({ x, off: value - target });
    before = { x, value };
  }
  return stretches;
}

interface Looked {
  readonly x: number;
  readonly value: number | null;
}

/** The last place with a value between one with and one without. */
const edgeOf = (f: OfOne, a: Looked, b: Looked): number =>
  lastWhere((x) => f(x) !== null, ...(a.value === null ? ([b.x, a.x] as const) : ([a.x, b.x] as const)));

/** Between a place where something holds and one where it does not, to the last digits. */
function lastWhere(holds: (x: number) => boolean, yes: number, no: number): number {
  let [inside, outside] = [yes, no];
  for (let i = 0; i < halvings; i++) {
    const middle = (inside + outside) / 2;
    if (holds(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}

/** Of a 128th of a range: nothing nearer can be told apart. */
const halvings = 48;

/** With the top of each hill below the target and the bottom of each hollow above it. */
function withTurns(off: (x: number) => number, samples: readonly Sample[]): Sample[] {
  return samples.flatMap((here, i) => {
    const [left, right] = [samples[i - 1], samples[i + 1]];
    const side = Math.sign(here.off);
    const turns = [left, right].every(
      (beside) => beside === undefined || (beside.off - here.off) * side >= 0,
    );
    if (side === 0 || !turns || (left === undefined && right === undefined)) return [here];
    const nearer = (at: number): number => {
      const there = off(at);
      return Number.isNaN(there) ? -Infinity : -side * there;
    };
    const { x, value } = topOf(nearer, (left ?? here).x, (right ?? here).x);
    if (value <= -side * here.off) return [here];
    const top = { x, off: -side * value };
    return top.x < here.x ? [top, here] : [here, top];
  });
}

interface Root {
  readonly x: number;
  /** false: it jumps there. */
  readonly solves: boolean;
}

function rootsIn(off: (x: number) => number, samples: readonly Sample[], near: number): Root[] {
  const isNear = (value: number): boolean => Math.abs(value) <= near;
  const isOn = (sample: Sample | undefined): boolean => sample !== undefined && isNear(sample.off);
  return samples.flatMap((here, i): Root[] => {
    const before = samples[i - 1];
    if (isOn(here) && isOn(before)) return [];
    if (isOn(here)) {
      const stretch = before !== undefined && isOn(samples[i + 1]);
      const x = stretch ? lastWhere((at) => isNear(off(at)), here.x, before.x) : here.x;
      return [{ x, solves: true }];
    }
    if (before === undefined || isOn(before) || before.off * here.off > 0) return [];
    const x = rootBetween(off, before.x, here.x);
    return [{ x, solves: isNear(off(x)) }];
  });
}
