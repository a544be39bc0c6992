/** Chairs that are off by chance, and people drawn by chance in such chairs, each judged. */
import { loadIds, loads } from '../names.js';
import { evenPoints, mixed } from '../numeric/owen-scramble.js';
import { bodyCoordinates, drawnSitter, type Whom } from './anybody.js';
import type { DesignFunction, Tried } from './design-function.js';
import { judgeFor, type Judgement } from './judge.js';
import { drawnError, valuesOff, type ShopError } from './shop-errors.js';
import { notBuilt, trialOf, type Trial } from './trial.js';

/** How many are drawn, and how. */
export interface Drawing {
  /** A power of 2. */
  readonly samples: number;
  readonly seed: number;
  /** Called after each chair that is rolled. */
  readonly rolled?: () => void;
}

const tried = (built: Tried, judge: (built: Tried & { ok: true }) => Judgement): Trial =>
  built.ok ? trialOf(judge(built).limits) : notBuilt(built.issues);

/** Chair after chair, each off by so much. */
export function offChairs(
  f: DesignFunction,
  errors: readonly ShopError[],
  { rolled }: Drawing,
): (off: readonly number[]) => Trial {
  const values = valuesOff(f.design, errors);
  const judge = judgeFor();
  return (off) => {
    const trial = tried(f.at(values(off)), judge);
    rolled?.();
    return trial;
  };
}

const sitting = loadIds.filter((id) => loads[id].sitter);

/**
 * Another body in every chair, which is made for somebody else. The seed is another too: what a chair is does not hang on
 * who is drawn.
 */
export function offPeople(
  f: DesignFunction,
  errors: readonly ShopError[],
  { samples, seed, rolled }: Drawing,
  whom: Whom,
): Trial[] {
  const values = valuesOff(f.design, errors);
  const own = f.at(values(errors.map(() => 0)));
  const child = own.ok ? own.people.child : null;
  const judge = judgeFor(sitting, undefined, 'nobody here');
  return evenPoints(samples, bodyCoordinates + errors.length, mixed(seed, bodyCoordinates)).map((point) => {
    const off = errors.map((error, i) => drawnError(error, point[bodyCoordinates + i]!));
    const built = f.at(values(off), [drawnSitter(whom, point)]);
    const trial = tried(built, ({ people, ...chair }) => judge({ ...chair, people: { ...people, child } }));
    rolled?.();
    return trial;
  });
}
