/**
 * Every place in a range where a function of one size comes to a target. Between the places that are looked at, a change of
 * sides brackets a root, and a hill or hollow on one side is climbed: it may touch the target, or cross it twice. Where the
 * function has no value the edge of that stretch is found and looked at too. A change of sides by a jump, as where a chair
 * finds another rest, is no solution.
 */
import { maximum } from '../numeric/maximum.js';
import { rootBetween } from '../numeric/root.js';

/** null: it has no value there. */
export type OfOne = (x: number) => number | null;

export interface SolvedOne {
  /** In order; of a stretch that lies on the target its beginning. */
  readonly solutions: readonly number[];
  /** Where it jumps over the target. */
  readonly jumps: readonly number[];
  /** Least and greatest value that was seen; null: it has none anywhere. */
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

export function solveOne(f: OfOne, target: number, from: number, to: number): SolvedOne {
  const stretches = stretchesOf(f, target, from, to);
  const seen = stretches.flat().map(({ off }) => off);
  if (seen.length === 0) return { solutions: [], jumps: [], reach: null, closest: null };
  const [least, greatest] = [Math.min(...seen), Math.max(...seen)];
  const near = onTarget * Math.max(Math.abs(target), greatest - least);
  const off = (x: number): number => (f(x) ?? NaN) - target;
  const tops = stretches.map((samples) => withTurns(off, samples));
  const roots = tops.flatMap((samples) => rootsIn(off, samples, near));
  return {
    solutions: roots.filter(({ solves }) => solves).map(({ x }) => x),
    jumps: roots.filter(({ solves }) => !solves).map(({ x }) => x),
    reach: [target + least, target + greatest],
    closest: tops.flat().reduce((a, b) => (Math.abs(b.off) < Math.abs(a.off) ? b : a)).x,
  };
}

/** Samples of each stretch over which it has a value, its edges too. */
function stretchesOf(f: OfOne, target: number, from: number, to: number): Sample[][] {
  const stretches: Sample[][] = [];
  let before: { readonly x: number; readonly value: number | null } | undefined;
  for (let i = 0; i <= steps; i++) {
    const x = i === steps ? to : from + ((to - from) * i) / steps;
    const value = f(x);
    const edge = before && (before.value === null) !== (value === null) ? edgeOf(f, before.x, x) : null;
    if (value !== null && (before === undefined || before.value === null)) stretches.push([]);
    if (edge !== null) stretches.at(-1)!.push({ x: edge, off: f(edge)! - target });
    if (value !== null) stretches.at(-1)!.push({ x, off: value - target });
    before = { x, value };
  }
  return stretches;
}

/** The last place with a value between one with and one without, to the last digits. */
function edgeOf(f: OfOne, a: number, b: number): number {
  let [valued, without] = f(a) === null ? [b, a] : [a, b];
  for (let i = 0; i < halvings; i++) {
    const middle = (valued + without) / 2;
    if (f(middle) === null) without = middle;
    else valued = middle;
  }
  return valued;
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
    let top = here;
    maximum(
      (x) => {
        const there = off(x);
        if ((top.off - there) * side > 0) top = { x, off: there };
        return Number.isNaN(there) ? -Infinity : -side * there;
      },
      (left ?? here).x,
      (right ?? here).x,
    );
    if (top === here) return [here];
    return top.x < here.x ? [top, here] : [here, top];
  });
}

interface Root {
  readonly x: number;
  /** false: it jumps there. */
  readonly solves: boolean;
}

function rootsIn(off: (x: number) => number, samples: readonly Sample[], near: number): Root[] {
  const isOn = (sample: Sample | undefined): boolean => sample !== undefined && Math.abs(sample.off) <= near;
  return samples.flatMap((here, i): Root[] => {
    const before = samples[i - 1];
    if (isOn(here)) return isOn(before) ? [] : [{ x: here.x, solves: true }];
    if (before === undefined || isOn(before) || before.off * here.off > 0) return [];
    const x = rootBetween(off, before.x, here.x);
    return [{ x, solves: Math.abs(off(x)) <= near }];
  });
}
