/** How the shop's errors, and the range of people, spread the measures of a chair: chairs drawn by chance, each judged. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { DesignInSI } from '../design/design.js';
import type { Checked } from '../design/issue.js';
import { issueAt } from '../design/issue-at.js';
import type { Design } from '../design/read-design.js';
import { resolveDesign } from '../design/resolve.js';
import { evenPoints, mixed } from '../numeric/owen-scramble.js';
import { bodyCoordinates, drawnSitter, judgedForAnybody, type Whom } from './anybody.js';
import { designFunction, type DesignFunction } from './design-function.js';
import { firstOrders, type FirstOrder } from './first-order.js';
import { judgeFor } from './judge.js';
import { linesOf, loosestTolerances, tolerancesHeld, type Loosest } from './loosest-tolerances.js';
import { drawnError, shopErrors, takenAsExact, valuesOff, type ShopError } from './shop-errors.js';
import { missesOf, outcomeOf, trialOf, type Outcome, type Trial } from './trial.js';
import type { Variable } from './variables.js';

export interface ToleranceSettings {
  /** A power of 2. */
  readonly samples: number;
  readonly seed: number;
  /** Of missing any limit, for which the loosest tolerances are sought; null: they are not. */
  readonly chance: number | null;
  /** Who else may sit in it; null: the sitters of the design only. */
  readonly people: Whom | null;
  /** Called after each chair that is rolled. */
  readonly rolled?: () => void;
}

export interface Tolerance {
  readonly design: DesignInSI;
  readonly settings: ToleranceSettings;
  readonly errors: readonly ShopError[];
  /** Named dimensions without an error. */
  readonly exact: readonly Variable[];
  /** Of the chair as drawn. */
  readonly drawn: readonly JudgedLimit[];
  readonly shop: Outcome;
  /** By id of the limit. */
  readonly firstOrders: ReadonlyMap<string, FirstOrder>;
  /** null: not asked for, or a limit is missed as drawn and no tolerance helps. */
  readonly loosest: Loosest | null;
  readonly people: Outcome | null;
}

/** @returns issues where the design cannot be built as drawn, or nothing in it may vary */
export function toleranceOf(design: Design, settings: ToleranceSettings): Checked<Tolerance> {
  const resolved = resolveDesign(design);
  if (!resolved.ok) return resolved;
  const errors = shopErrors(design, resolved.value);
  const f = designFunction(
    design,
    errors.map(({ variable }) => variable),
  );
  const own = f.at(errors.map(({ variable }) => variable.stated));
  if (!own.ok) return own;
  if (settings.people !== null && (own.design.seat === null || own.design.back === null))
    return { ok: false, issues: [issueAt(design, [], nowhereToSit)] };
  if (errors.length === 0 && settings.people === null)
    return { ok: false, issues: [issueAt(design, ['dimensions'], nothingVaries)] };

  const tryOut = trier(f, errors, settings);
  const points = evenPoints(settings.samples, errors.length, settings.seed);
  const trialsWith = (with_: readonly ShopError[]): Trial[] =>
    points.map((point) => tryOut(with_.map((error, i) => drawnError(error, point[i]!))));
  const drawn = judgeFor()(own).limits;
  const shop = outcomeOf(errors.length === 0 ? [trialOf(drawn)] : trialsWith(errors));
  if (shop === null) return { ok: false, issues: [issueAt(design, ['dimensions'], neverBuilt)] };
  const orders = firstOrders(tryOut, errors, trialOf(drawn));
  const lines = linesOf(drawn, orders);
  const helps =
    settings.chance !== null && errors.length > 0 && drawn.every(({ verdict }) => verdict === 'pass');
  const loosest = helps
    ? loosestTolerances(lines, errors, points, tolerancesHeld(own.design.units), settings.chance, (tried) =>
        missesOf(
          trialsWith(tried),
          lines.map(({ id }) => id),
        ),
      )
    : null;
  const people = settings.people === null ? null : outcomeOf(trialsOfPeople(f, errors, settings));
  const exact = takenAsExact(design, errors);
  const value = {
    design: own.design,
    settings,
    errors,
    exact,
    drawn,
    shop,
    firstOrders: orders,
    loosest,
    people,
  };
  return { ok: true, value };
}

const nothingVaries = {
  expected: 'named dimensions that are lengths, or `errors` of others',
  found: 'none',
  hint: 'write `dimensions: { radius: 39 in }` and `radius: radius`; or ask with --people',
};
const nowhereToSit = { expected: '`seat` and `back`, by which people are seated', found: 'none' };
const neverBuilt = {
  expected: 'errors with which some chair can still be built as drawn',
  found: 'none of those drawn',
};

/** Chair after chair, each off by so much. */
function trier(
  f: DesignFunction,
  errors: readonly ShopError[],
  { rolled }: ToleranceSettings,
): (off: readonly number[]) => Trial {
  const values = valuesOff(f.design, errors);
  const judge = judgeFor();
  return (off) => {
    const built = f.at(values(off));
    const trial = built.ok ? trialOf(judge(built).limits) : null;
    rolled?.();
    return trial;
  };
}

/** Another body in every chair. The seed is another too: what a chair is does not hang on who is drawn. */
function trialsOfPeople(
  f: DesignFunction,
  errors: readonly ShopError[],
  { samples, seed, people, rolled }: ToleranceSettings,
): Trial[] {
  const values = valuesOff(f.design, errors);
  const own = f.at(values(errors.map(() => 0)));
  const child = own.ok ? own.people.child : null;
  return evenPoints(samples, bodyCoordinates + errors.length, mixed(seed, bodyCoordinates)).map((point) => {
    const off = errors.map((error, i) => drawnError(error, point[bodyCoordinates + i]!));
    const built = f.at(values(off), [drawnSitter(people!, point)]);
    const trial = built.ok ? judgedForAnybody(built, child) : null;
    rolled?.();
    return trial;
  });
}
