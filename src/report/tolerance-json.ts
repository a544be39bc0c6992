/** The JSON of `tolerance`, and its table: the same for the same design, settings and seed. */
import type { ShopError } from '../explore/shop-errors.js';
import type { SpreadLimit } from '../explore/trial.js';
import { jsonFactor, type MeasureKey } from '../names.js';
import type { Proportion } from '../numeric/proportion.js';
import { kindOfDimension } from '../quantity/dimension.js';
import { inCsv } from './csv.js';
import { rounded } from './rounded.js';
import { tool } from './tool.js';
import type { ToleranceObject } from './tolerance-schema.js';
import { toleranceAssumptions, type ReportedTolerance } from './tolerance-words.js';

function toleranceJson({ file, sha256, tolerance }: ReportedTolerance): ToleranceObject {
  const { design, settings, errors, shop, loosest, people } = tolerance;
  return {
    toleranceVersion: 1,
    tool,
    design: { name: design.name, file, sha256, kind: design.kind },
    samples: settings.samples,
    seed: settings.seed,
    errors: errors.map(errorObject),
    shop: {
      any: shareObject(shop.any),
      notBuilt: shop.notBuilt,
      limits: shop.limits.map((limit) => shopObject(limit, tolerance)),
    },
    loosest: loosest && {
      chance: loosest.chance,
      met: loosest.met,
      errors: loosest.errors.map(errorObject),
      any: shareObject(loosest.any),
    },
    people:
      people === null || settings.people === null
        ? null
        : {
            whom: settings.people,
            any: shareObject(people.any),
            notBuilt: people.notBuilt,
            limits: people.limits.map(spreadObject),
          },
    assumptions: toleranceAssumptions(tolerance),
  };
}

/** As printed; ends with a line feed. */
export const printToleranceJson = (reported: ReportedTolerance): string =>
  `${JSON.stringify(toleranceJson(reported), null, 2)}\n`;

/** A row a limit. */
export function toleranceCsv(reported: ReportedTolerance): string {
  const { shop, people } = toleranceJson(reported);
  const numbers = ['mean', 'deviation', 'low', 'high'] as const;
  const row = (
    of: string,
    drawn: number | null,
    one: ToleranceObject['shop']['limits'][number] | SpreadRow,
  ) => [
    of,
    one.id,
    one.measure ?? '',
    cell(drawn),
    ...numbers.map((key) => cell(one[key])),
    ...[one.missed.share, one.missed.low, one.missed.high].map(cell),
  ];
  const rows = [
    ['of', 'limit', 'measure', 'drawn', ...numbers, 'missed', 'missedLow', 'missedHigh'],
    ...shop.limits.map((one) => row('shop', one.drawn, one)),
    ...(people?.limits ?? []).map((one) => row('people', null, one)),
  ];
  return rows.map((cells) => `${cells.map(inCsv).join(',')}\r\n`).join('');
}

type SpreadRow = NonNullable<ToleranceObject['people']>['limits'][number];

const cell = (value: number | null): string => (value === null ? '' : String(value));

const shareObject = ({ share, low, high }: Proportion): Proportion => ({
  share: rounded(share),
  low: rounded(low),
  high: rounded(high),
});

const errorObject = ({ variable, spread, size, assumed }: ShopError): ToleranceObject['errors'][number] => ({
  dimension: variable.name,
  kind: kindOfDimension(variable.dimension),
  spread,
  size: rounded(size),
  assumed,
});

const inUnit = (measure: MeasureKey | null, value: number | null | undefined): number | null =>
  measure === null || value === null || value === undefined || !Number.isFinite(value)
    ? null
    : rounded(value * jsonFactor(measure));

function spreadObject({ id, load, sitter, measure, range, spread, missed }: SpreadLimit): SpreadRow {
  return {
    id,
    load,
    sitter,
    measure,
    mean: inUnit(measure, spread?.mean),
    deviation: inUnit(measure, spread?.deviation),
    low: inUnit(measure, spread?.low),
    high: inUnit(measure, spread?.high),
    min: inUnit(measure, range.min),
    max: inUnit(measure, range.max),
    missed: shareObject(missed),
  };
}

function shopObject(
  limit: SpreadLimit,
  { drawn, firstOrders, errors }: ReportedTolerance['tolerance'],
): ToleranceObject['shop']['limits'][number] {
  const { id, measure } = limit;
  const asDrawn = drawn.find((one) => one.id === id);
  const order = firstOrders.get(id);
  return {
    ...spreadObject(limit),
    drawn: inUnit(measure, asDrawn?.value),
    verdict: asDrawn?.verdict ?? null,
    firstOrderDeviation: inUnit(measure, order?.deviation),
    effects: (order?.effects ?? []).map(({ name, slope, share, kinked }, i) => ({
      dimension: name,
      perUnit: inUnit(measure, slope),
      perError: slope === null ? null : inUnit(measure, slope * errors[i]!.size),
      shareOfVariance: rounded(share),
      kinked,
    })),
  };
}
