/** Times that mean something on a busy machine: two things in turn, compared pair by pair. */
import { performance } from 'node:perf_hooks';

export type Timed = () => void | Promise<void>;

export interface Quartiles {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** Quartiles with linear interpolation between the sorted values (the default of R, type 7). */
export function quartiles(values: readonly number[]): Quartiles {
  if (values.length === 0 || values.some(Number.isNaN))
    throw new RangeError(`quartiles: of [${values.join(', ')}]`);
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const [below, above] = [sorted[Math.floor(place)]!, sorted[Math.ceil(place)]!];
    return below + (place - Math.floor(place)) * (above - below);
  };
  return { low: at(0.25), median: at(0.5), high: at(0.75) };
}

/** Milliseconds. */
async function timeOf(timed: Timed): Promise<number> {
  const start = performance.now();
  await timed();
  return performance.now() - start;
}

/**
 * Time of `subject` over time of `yardstick`, run in turn `repeats` times after one unmeasured turn. A slow
 * minute falls on both of a pair, and each goes first every other time, so it leaves the ratio alone.
 */
export async function timeRatio(subject: Timed, yardstick: Timed, repeats: number): Promise<Quartiles> {
  const ratios: number[] = [];
  await subject();
  await yardstick();
  for (let turn = 0; turn < repeats; turn++) {
    const yardstickFirst = turn % 2 === 0 ? await timeOf(yardstick) : undefined;
    const subjectTime = await timeOf(subject);
    ratios.push(subjectTime / (yardstickFirst ?? (await timeOf(yardstick))));
  }
  return quartiles(ratios);
}

/** Milliseconds until V8 has compiled what is hot: what a sweep of ten thousand calls sees. */
const warmUp = 1000;

/**
 * Microseconds a call, over batches long enough (a few ms) that the clock's own step does not show. The lower
 * quartile is what the code takes when nothing else runs.
 */
export function microsecondsPerCall(call: () => unknown, batches = 31): Quartiles {
  let calls = 1;
  const batch = (): number => {
    const start = performance.now();
    for (let i = 0; i < calls; i++) call();
    return performance.now() - start;
  };
  for (const warm = performance.now(); performance.now() - warm < warmUp;) call();
  while (batch() < 5) calls *= 2;
  return quartiles(Array.from({ length: batches }, () => (1000 * batch()) / calls));
}
