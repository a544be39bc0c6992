/**
 * Fits the sizes of a starter to its sitters: from a chair of its kind that was found to pass, size by size up and down in
 * strides that are halved until they are a maker’s step, as long as its limits are met better; first at rest, where a
 * chair is judged ten times as fast, then rolled through everything. The same sitters always get the same chair.
 */
import type { Design } from '../design/read-design.js';
import { designBuilder } from '../explore/design-function.js';
import { judgeFor } from '../explore/judge.js';
import { stillLoads } from '../explore/passing-places.js';
import type { JudgedLimit } from '../checks/verdict.js';
import { fittedSizes, type FittedSize, type StarterSizes } from './starter-sizes.js';

/** In turn; the height of the back and the spacing stay. */
const moved = fittedSizes.filter((size) => size !== 'backHeight' && size !== 'spacing');

/** So many times what it begins with: with rockers as long as they like no limit is missed, but no chair is made. */
const farthest: Readonly<Partial<Record<FittedSize, number>>> = { radius: 1.4, noseLength: 1.4, tail: 1.4 };

/** Maker’s steps: an inch at first, or 16 mm; wider where nothing is found so, as where all places nearby are past the nose. */
const strides = [16, 8, 4, 2, 1];
const wideStrides = [64, 32, ...strides];

/**
 * @param design the starter as text, read, its sizes named
 * @param step a maker’s, metres
 * @returns whole steps; as near as was found where nothing meets all limits
 */
export function fittedTo(design: Design, begin: StarterSizes, step: number): StarterSizes {
  const build = designBuilder(design);
  const [still, whole] = [judgeFor(stillLoads), judgeFor()];
  const start = fittedSizes.map((size) => Math.round(begin[size] / step));
  const sizesAt = (steps: readonly number[]): StarterSizes =>
    Object.fromEntries(fittedSizes.map((size, i) => [size, steps[i]! * step])) as StarterSizes;
  const judgedBy =
    (judge: typeof whole) =>
    (steps: readonly number[]): readonly JudgedLimit[] | null => {
      const built = build(new Map(Object.entries(sizesAt(steps))));
      return built.ok ? judge(built).limits : null;
    };
  const near = searched(searched(start, judgedBy(still), strides), judgedBy(whole), strides);
  const met = missedBy(judgedBy(whole)(near), 0) === 0;
  return sizesAt(met ? near : searched(near, judgedBy(whole), wideStrides));
}

type Judged = (steps: readonly number[]) => readonly JudgedLimit[] | null;

function searched(from: readonly number[], judged: Judged, strides: readonly number[]): readonly number[] {
  const known = new Map<string, number>();
  const missedAt = (steps: readonly number[]): number => {
    const key = steps.join();
    const missed = known.get(key) ?? missedBy(judged(steps), wanted);
    known.set(key, missed);
    return missed;
  };
  let here = from;
  for (const stride of strides)
    for (let better = true; better && missedAt(here) > 0;) {
      better = false;
      for (const size of moved)
        for (const sense of [1, -1]) {
          const i = fittedSizes.indexOf(size);
          const next = here.with(i, here[i]! + sense * stride);
          if (size in farthest && next[i]! > farthest[size]! * from[i]!) continue;
          if (missedAt(next) >= missedAt(here)) continue;
          [here, better] = [next, true];
        }
    }
  return here;
}

/** Of half a range, or of a bound that stands alone: so far within it a limit is met well. */
const wanted = 0.05;
/** A bound that is 0 is that of a gap, metres: held against what is left for the first sitter’s. */
const ofNothing = 0.05;

/** The squares of what is missing to be `well` within, summed; 0: none is. What has no number misses by twice its bound. */
function missedBy(limits: readonly JudgedLimit[] | null, well: number): number {
  if (limits === null) return Infinity;
  return limits.reduce((sum, limit) => sum + Math.max(0, well - withinBy(limit)) ** 2, 0);
}

/** Negative where it is not met. */
function withinBy({ margin, range: { min, max }, verdict }: JudgedLimit): number {
  if (margin === null) return verdict === 'pass' ? wanted : -2;
  if (min !== null && max !== null) return max > min ? (2 * margin) / (max - min) : margin < 0 ? -2 : wanted;
  return margin / (Math.abs(min ?? max ?? 0) || ofNothing);
}
