/**
 * A design brought to a wanted measure: by one size every solution in its range, several measures by several sizes with
 * the least change that was found, or by some sizes to the nearest design that meets all limits.
 */
import type { Checked } from '../design/issue.js';
import type { Design } from '../design/read-design.js';
import { readAdjustment, type AdjustRequest, type Target } from './adjust-request.js';
import { designFunction, type BuiltDesign, type DesignFunction } from './design-function.js';
import { judgeFor, measureIn, type Judgement } from './judge.js';
import { nearestPassing } from './nearest-passing.js';
import { isStatedWithin, roundedIn, within, type SizeRange } from './size-range.js';
import { solveOne } from './solve-one.js';
import { solveFromStarts } from './solve-from-starts.js';
import { statedDesign } from './stated-design.js';

/** One way to set the sizes, SI. */
export interface Setting {
  /** As they solve it; null: found in whole steps. */
  readonly exact: readonly number[] | null;
  /** In whole maker's steps; what is not changed as the design states it. */
  readonly rounded: readonly number[];
  /** Of the targets with the rounded ones; null where it has no value. */
  readonly measures: readonly (number | null)[];
  readonly judgement: Judgement | null;
}

export interface Adjusted {
  readonly design: Design;
  readonly stated: BuiltDesign;
  readonly before: Judgement;
  readonly targets: readonly Target[];
  readonly by: readonly SizeRange[];
  readonly solutions: readonly Setting[];
  /** What comes nearest where there is no solution. */
  readonly closest: Setting | null;
  /** Of one target by one size: what the measure is over the range, SI. */
  readonly reach: readonly [number, number] | null;
  /** Of one target by one size: where the measure jumps over it, SI. */
  readonly jumps: readonly number[];
  /** Sizes on which none of the targets depends. */
  readonly idle: readonly SizeRange[];
}

export function adjust(
  request: AdjustRequest,
  progress: (done: number, of: number) => void = () => undefined,
): Checked<Adjusted> {
  const read = statedDesign(request);
  if (!read.ok) return read;
  const { design, stated } = read.value;
  const asked = readAdjustment(request, design, stated);
  if (!asked.ok) return asked;
  const { targets, by } = asked.value;
  const fn = designFunction(
    design,
    by.map(({ variable }) => variable),
  );
  const before = judgeFor()(stated);
  const found = (): Found => {
    const [target, ...others] = targets;
    if (target === undefined) return passing(fn, by, before, progress);
    if (by.every(isStatedWithin) && targets.every((one) => isMet(one, before)))
      return asItStands(fn, targets, by);
    return others.length === 0 && by.length === 1 ? byOne(fn, target, by[0]!) : bySeveral(fn, targets, by);
  };
  const idle = idleOf(fn, targets, by);
  const { closest, ...rest } = found();
  // What moves nothing comes no closer anywhere.
  const nearest = idle.length === by.length ? null : closest;
  return { ok: true, value: { design, stated, before, targets, by, idle, ...rest, closest: nearest } };
}

type Found = Pick<Adjusted, 'solutions' | 'closest' | 'reach' | 'jumps'>;

const nothingFound: Found = { solutions: [], closest: null, reach: null, jumps: [] };

/** To the rounding of a calculation good to 1e-12. */
const same = 1e-10;
const isSame = (a: number | null, b: number | null): boolean =>
  a === null || b === null ? a === b : Math.abs(a - b) <= same * Math.max(Math.abs(a), Math.abs(b));

const isMet = ({ asked, value }: Target, before: Judgement): boolean =>
  isSame(measureIn(before, asked), value);

function asItStands(fn: DesignFunction, targets: readonly Target[], by: readonly SizeRange[]): Found {
  const stated = by.map(({ variable }) => variable.stated);
  return { ...nothingFound, solutions: [settingOf(fn, targets, stated, stated)] };
}

/** Places of a range that are looked at for whether anything moves. */
const shares = [0, 0.29, 0.61, 1];

/** Nothing moves with them, all others as they stand or in the middle of their ranges. */
function idleOf(fn: DesignFunction, targets: readonly Target[], by: readonly SizeRange[]): SizeRange[] {
  const measure = measuring(fn, targets);
  const start = by.map((one) => (isStatedWithin(one) ? one.variable.stated : (one.least + one.greatest) / 2));
  const here = measure(start);
  if (targets.length === 0 || here.includes(null)) return [];
  return by.filter(({ least, greatest }, i) =>
    shares.every((share) =>
      measure(start.with(i, least + share * (greatest - least))).every((value, k) => isSame(value, here[k]!)),
    ),
  );
}

/** What a target comes to for some values of the sizes; null: it has no value. */
function measuring(
  fn: DesignFunction,
  targets: readonly Target[],
): (values: readonly number[]) => (number | null)[] {
  const judge = judgeFor([...new Set(targets.map(({ asked }) => asked.load))]);
  return (values) => {
    const tried = fn.at(values);
    if (!tried.ok) return targets.map(() => null);
    const judgement = judge(tried);
    return targets.map(({ asked }) => measureIn(judgement, asked));
  };
}

function settingOf(
  fn: DesignFunction,
  targets: readonly Target[],
  exact: readonly number[] | null,
  rounded: readonly number[],
): Setting {
  const tried = fn.at(rounded);
  const judgement = tried.ok ? judgeFor()(tried) : null;
  return {
    exact,
    rounded,
    measures: targets.map(({ asked }) => judgement && measureIn(judgement, asked)),
    judgement,
  };
}

function byOne(fn: DesignFunction, target: Target, by: SizeRange): Found {
  const measure = measuring(fn, [target]);
  const { solutions, jumps, reach, closest } = solveOne(
    (x) => measure([x])[0] ?? null,
    target.value,
    by.least,
    by.greatest,
    by.variable.stated,
  );
  const setting = (x: number): Setting => settingOf(fn, [target], [x], [roundedIn(x, by)]);
  return {
    solutions: solutions.map(setting),
    closest: solutions.length > 0 || closest === null ? null : setting(closest),
    reach,
    jumps,
  };
}

function bySeveral(fn: DesignFunction, targets: readonly Target[], by: readonly SizeRange[]): Found {
  const measure = measuring(fn, targets);
  const spans = by.map(({ least, greatest }) => greatest - least);
  const at = (z: readonly number[]): number[] =>
    by.map(({ variable }, i) => variable.stated + z[i]! * spans[i]!);
  const bounds = by.map(
    ({ variable: { stated }, least, greatest }, i) =>
      [(least - stated) / spans[i]!, (greatest - stated) / spans[i]!] as const,
  );
  const start = measure(at(bounds.map((ends) => within(0, ends))));
  const scales = targets.map(({ value }, i) => Math.abs(value) || Math.abs(start[i] ?? 0) || 1);
  const solved = solveFromStarts((z) => {
    const values = measure(at(z));
    return values.includes(null) ? null : values.map((value, i) => (value! - targets[i]!.value) / scales[i]!);
  }, bounds);
  if (solved === null) return nothingFound;
  const exact = at(solved.z);
  const setting = settingOf(
    fn,
    targets,
    exact,
    exact.map((value, i) => roundedIn(value, by[i]!)),
  );
  return { ...nothingFound, ...(solved.solved ? { solutions: [setting] } : { closest: setting }) };
}

function passing(
  fn: DesignFunction,
  by: readonly SizeRange[],
  before: Judgement,
  progress: (done: number, of: number) => void,
): Found {
  if (before.verdict === 'pass' && by.every(isStatedWithin)) {
    const stated = by.map(({ variable }) => variable.stated);
    return { ...nothingFound, solutions: [settingOf(fn, [], null, stated)] };
  }
  const { found, closest } = nearestPassing(fn, by, progress);
  const setting = (values: readonly number[]): Setting => settingOf(fn, [], null, values);
  if (found !== null) return { ...nothingFound, solutions: [setting(found)] };
  return { ...nothingFound, closest: closest && setting(closest) };
}
