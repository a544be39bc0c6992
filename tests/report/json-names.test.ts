/** The names of the contract's table in the JSON of every fixture, and limits whose numbers agree with their verdicts. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadIds, measures, measuresOf, type LoadId } from '../../src/names.js';
import { printJson, reportJson } from '../../src/report/json.js';
import { reportSchema } from '../../src/report/schema.js';
import { checked } from '../reading.js';

/** The table as printed on the page of the contract: names, and the loads that have them. */
const atRest = 'empty, seated, seated-feet-up, with-a-child';
const hardLean = 'leaning-back-hard, leaning-back-hard-with-a-child';
const gettingUp = 'getting-up, getting-up-with-a-child';
const tails = 'child-on-the-tails';
const page: readonly (readonly [names: string, of: string])[] = [
  ['restAngleDeg', atRest],
  ['seatSlopeDeg backAngleDeg', atRest],
  ['contactAtRestM touchFromTailM', atRest],
  ['periodS periodAtSwingS swingDeg', atRest],
  ['tipBackDeg tipBackEnergyJ tipBackPushN tipForwardDeg tipForwardEnergyJ tipForwardPushN', atRest],
  ['rockerEndBackDeg rockerEndForwardDeg', atRest],
  ['tipSidewaysDeg', atRest],
  ['frictionDemand', `${atRest}, ${hardLean}, ${gettingUp}, ${tails}`],
  ['restCount flatLongestM sharpestCornerDeg radiusJump', 'empty'],
  ['seatFrontHeightM kneeHollowGapM seatDepthGapM armHeightGapM footReach', 'seated'],
  ['sweptBackM wallClearanceM', `seated, ${hardLean}`],
  ['peakBackDeg leftToTipBackDeg rockerLeftBackM', `${hardLean}, ${tails}`],
  ['tailLoadBorneKg', tails],
  ['peakForwardDeg rockerLeftForwardM leftToTipForwardDeg kickBackDeg', gettingUp],
  ['edgeLoadBorneN restUnderEdgeLoadDeg', gettingUp],
  ['minFloorForceRatio', `${hardLean}, ${gettingUp}, ${tails}`],
];
const namesOf = (load: LoadId): string[] =>
  page.flatMap(([names, of]) => (of.split(', ').includes(load) ? names.split(' ') : []));

describe('the names', () => {
  it.each(loadIds)('of %s are those of the page', (load) => {
    expect(measuresOf(load).toSorted()).toEqual(namesOf(load).toSorted());
  });

  it('are each on the page, and end in their unit', () => {
    const printed = page.flatMap(([names]) => names.split(' '));
    expect(Object.keys(measures).toSorted()).toEqual(printed.toSorted());
    const endings = { length: 'M', mass: 'Kg', time: 'S', angle: 'Deg', energy: 'J', force: 'N', number: '' };
    for (const [key, { limitKey, kind }] of Object.entries(measures))
      expect(key).toBe(limitKey + endings[kind as keyof typeof endings]);
  });
});

const designs = readdirSync('fixtures', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => `fixtures/${name}/design.yaml`)
  .map((file) => [file, readFileSync(file, 'utf8')] as const);

describe.each(designs)('%s', (_, text) => {
  const report = reportJson(checked(text));

  it('has every name of each of its loads and no other, and is the same bytes twice', () => {
    expect(report.loads.length).toBeGreaterThan(0);
    for (const { id, measures: of } of report.loads)
      expect(Object.keys(of).toSorted()).toEqual(namesOf(id).toSorted());
    expect(printJson([reportJson(checked(text))])).toBe(printJson([report]));
  });

  it('says why a measure has no value, and only then', () => {
    for (const { measures: of, missing } of report.loads) {
      const none = Object.keys(of).filter((key) => of[key as keyof typeof of] === null);
      expect(Object.keys(missing).toSorted()).toEqual(none.toSorted());
      for (const reason of Object.values(missing)) expect(reason).toMatch(/^\S.*\S$/u);
    }
  });

  it('is of its schema, as it is read back', () => {
    expect(reportSchema.parse(JSON.parse(printJson([report])))).toEqual(report);
  });

  it('names each limit by load, measure and sitter', () => {
    for (const { id, load, sitter, measure } of report.limits) {
      const key = id.split('/')[1] === 'rest' ? 'rest' : measures[measure].limitKey;
      expect(id).toBe([load, key, ...(sitter === null ? [] : [sitter])].join('/'));
      expect(report.loads.some((of) => of.id === load && of.sitter === sitter)).toBe(true);
    }
  });

  it('has verdicts, margins and values that agree', () => {
    for (const { min, max, value, margin, verdict, reason } of report.limits) {
      if (value === null) expect([verdict !== 'pass', margin, reason === null]).toEqual([true, null, false]);
      else {
        const nearer = Math.min(value - (min ?? -Infinity), (max ?? Infinity) - value);
        expect(margin).toBeCloseTo(nearer, 9);
        expect(verdict).toBe(nearer >= -1e-9 ? 'pass' : 'fail');
      }
    }
    const verdicts = report.limits.map(({ verdict }) => verdict);
    const worst = (['fail', 'unknown'] as const).find((verdict) => verdicts.includes(verdict)) ?? 'pass';
    expect(report.verdict).toBe(worst);
  });
});
