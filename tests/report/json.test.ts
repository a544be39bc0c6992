/** The contract's JSON: units, digits, names and what is null. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { measuresOf } from '../../src/names.js';
import { isMissing } from '../../src/numeric/missing.js';
import { printJson, reportJson } from '../../src/report/json.js';
import { reportSchema } from '../../src/report/schema.js';
import { checked, oneArc, reported, sitters } from '../reading.js';

const result = checked(readFileSync('fixtures/porch-rocker/design.yaml', 'utf8'));
const report = reportJson(result, 'abc');

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

describe('the JSON report', () => {
  it('names its keys in the order of the contract', () => {
    expect(Object.keys(report)).toEqual(
      'reportVersion tool design verdict chair loads limits assumptions cautions'.split(' '),
    );
    expect(Object.keys(report.design)).toEqual(['name', 'file', 'sha256', 'kind']);
    expect(Object.keys(report.chair)).toEqual(['massKg', 'centreOfGravityM', 'inertiaKgM2', 'parts']);
    expect(Object.keys(report.loads[0]!)).toEqual(
      'id sitter massKg centreOfGravityM inertiaKgM2 goesOver measures missing secondOpinion'.split(' '),
    );
    expect(Object.keys(report.limits[0]!)).toEqual(
      'id load sitter measure min max value margin verdict reason basis remedies'.split(' '),
    );
  });

  it('has every measure of each load, a number or null with its reason', () => {
    for (const { id, measures, missing } of report.loads) {
      expect(Object.keys(measures)).toEqual(measuresOf(id));
      const none = Object.keys(measures).filter((key) => measures[key as keyof typeof measures] === null);
      expect(Object.keys(missing)).toEqual(none);
    }
  });

  it('has no more than 12 significant digits, and no number that is none', () => {
    const numbers = numbersIn(report);
    expect(numbers.length).toBeGreaterThan(200);
    for (const number of numbers) expect(number).toBe(Number(number.toPrecision(12)));
  });

  it('has angles in degrees and lengths in metres', () => {
    result.loads.forEach(({ measured }, i) => {
      for (const [key, value] of measured) {
        if (isMissing(value)) continue;
        const wanted = key.endsWith('Deg') ? (value / Math.PI) * 180 : value;
        expect(Math.abs(report.loads[i]!.measures[key]! - wanted)).toBeLessThanOrEqual(
          1e-11 * Math.abs(wanted),
        );
      }
    });
  });

  it('weighs a part with all its pieces: parts and extras are the chair', () => {
    const parts = report.chair.parts.reduce((sum, { massKg }) => sum + massKg, 0);
    // 9 oz of screws: 9 × 28.349523125 g.
    expect(parts + 9 * 0.028349523125).toBeCloseTo(report.chair.massKg, 9);
  });

  it('has a limit `rest` without numbers where the chair does not stand', () => {
    const fallen = reported(oneArc.replace('at: [-10, 400]', 'at: [300, 400]'));
    const { loads, limits } = fallen;
    expect(() => reportSchema.parse(fallen)).not.toThrow();
    expect(limits[0]).toMatchObject({ id: 'empty/rest', min: null, max: null, value: null, margin: null });
    expect(limits[0]!.reason).toMatch(/^rolls forward past the nose/);
    expect(loads[0]!.goesOver).toBe('forward');
    expect(loads[0]!.measures.periodS).toBeNull();
  });

  it('gives a limit in the unit of its measure', () => {
    const { limits } = reported(
      `${oneArc}${sitters}limits: { swing: 1 in 12 .. 9 deg, seatFrontHeight: 1 in .. }\n`,
    );
    const of = (id: string) => limits.find((limit) => limit.id === id)!;
    expect(of('seated/swing/short')).toMatchObject({
      min: expect.closeTo((Math.atan(1 / 12) / Math.PI) * 180, 9) as number,
      max: 9,
      value: 6,
    });
    expect(of('seated/seatFrontHeight/short').min).toBe(0.0254);
  });

  it('is one object for one design and an array for several, in one line feed ended text', () => {
    expect(JSON.parse(printJson([report]))).toEqual(report);
    expect(JSON.parse(printJson([report, report]))).toEqual([report, report]);
    expect(printJson([report])).toMatch(/\}\n$/);
    expect(printJson([reportJson(result, 'abc')])).toBe(printJson([report]));
  });
});
