/** How the shop's errors, and the range of people, spread the measures of a chair: chairs drawn by chance, each judged. */
import type { JudgedLimit } from '../checks/verdict.js';
import type { DesignInSI } from '../design/design.js';
import type { Checked } from '../design/issue.js';
import { issueAt } from '../design/issue-at.js';
import type { Design } from '../design/read-design.js';
import { evenPoints } from '../numeric/owen-scramble.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Whom } from './anybody.js';
import { designBuilder, designFunction, type DesignFunction } from './design-function.js';
import { offChairs, offPeople, type Drawing } from './drawn-chairs.js';
import { firstOrders, type FirstOrder } from './first-order.js';
import { judgeFor } from './judge.js';
import { linesOf, loosestTolerances, tolerancesHeld, type Loosest } from './loosest-tolerances.js';
import { drawnError, shopErrors, takenAsExact, type ShopError } from './shop-errors.js';
import { judgedById, missesAmong, outcomeOf, trialOf, type Outcome, type Trial } from './trial.js';
import { usedNames } from './used-names.js';
import type { Variable } from './variables.js';

export interface ToleranceSettings extends Drawing {
  /** Of missing any limit, for which the loosest tolerances are sought; null: they are not. */
  readonly chance: number | null;
  /** Who else may sit in it; null: the sitters of the design only. */
  readonly people: Whom | null;
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
  const own = designBuilder(design)();
  if (!own.ok) return own;
  // What nothing is made of is off by nothing, unless the design states it.
  const used = usedNames(design);
  const errors = shopErrors(design, own.design).filter(
    ({ variable, assumed }) => !assumed || used.has(variable.name),
  );
  if (settings.people !== null && (own.design.seat === null || own.design.back === null))
    return { ok: false, issues: [issueAt(design, [], nowhereToSit)] };
  if (errors.length === 0 && settings.people === null)
    return { ok: false, issues: [issueAt(design, ['dimensions'], nothingVaries)] };
  const f = designFunction(
    design,
    errors.map(({ variable }) => variable),
  );
  const drawn = judgeFor()(own).limits;
  const ofShop = errorsOfShop(f, errors, drawn, own.design.units, settings);
  if (ofShop === null) return { ok: false, issues: [issueAt(design, ['dimensions'], neverBuilt)] };
  const people = settings.people === null ? null : outcomeOf(offPeople(f, errors, settings, settings.people));
  const exact = takenAsExact(design, errors).filter(({ name }) => used.has(name));
  return { ok: true, value: { design: own.design, settings, errors, exact, drawn, ...ofShop, people } };
}

/** null: none of the chairs drawn can be built. */
function errorsOfShop(
  f: DesignFunction,
  errors: readonly ShopError[],
  drawn: readonly JudgedLimit[],
  units: LengthUnit,
  settings: ToleranceSettings,
): Pick<Tolerance, 'shop' | 'firstOrders' | 'loosest'> | null {
  const tryOut = offChairs(f, errors, settings);
  const points = evenPoints(settings.samples, errors.length, settings.seed);
  const trialsWith = (held: readonly ShopError[]): Trial[] =>
    points.map((point) => tryOut(held.map((error, i) => drawnError(error, point[i]!))));
  const shop = outcomeOf(errors.length === 0 ? [trialOf(drawn)] : trialsWith(errors));
  if (shop === null) return null;
  const orders = firstOrders(tryOut, errors, judgedById(drawn));
  const lines = linesOf(drawn, orders);
  const ids = lines.map(({ id }) => id);
  const { chance } = settings;
  const helps = errors.length > 0 && drawn.every(({ verdict }) => verdict === 'pass');
  const loosest =
    chance === null || !helps
      ? null
      : loosestTolerances(lines, errors, points, tolerancesHeld(units), chance, (held) =>
          missesAmong(trialsWith(held), ids),
        );
  return { shop, firstOrders: orders, loosest };
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
