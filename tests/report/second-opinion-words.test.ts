/** What every report says of the second calculation. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { withSecondOpinion, type CheckResult } from '../../src/check-design.js';
import { trusted } from '../../src/checks/second-calculation.js';
import { allAgree, type SecondOpinion } from '../../src/contact/second-opinion.js';
import { reportJson } from '../../src/report/json.js';
import { printJunit } from '../../src/report/junit.js';
import { printMarkdown } from '../../src/report/markdown.js';
import { reportSchema } from '../../src/report/schema.js';
import { secondLine } from '../../src/report/second-opinion-words.js';
import { printText } from '../../src/report/text.js';
import { textWidth } from '../../src/report/text-width.js';
import { checked } from '../reading.js';
import { plain } from './plain.js';

const once = checked(readFileSync('fixtures/two-radii/design.yaml', 'utf8'));
const twice = await withSecondOpinion(once);

/** As if the second calculation had found something else, seated. */
function told(change: Partial<SecondOpinion>): CheckResult {
  const opinions = new Map(twice.opinions);
  const [seated, opinion] = [...opinions].find(([{ load }]) => load.id === 'seated')!;
  opinions.set(seated, { ...opinion, ...change });
  const limits = trusted(once.limits, opinions);
  return { ...twice, opinions, limits, verdict: allAgree(opinions.values()) ? once.verdict : 'unknown' };
}

const reports = (result: CheckResult): readonly string[] => [
  printText(result, plain),
  printMarkdown([result]),
  printJunit([{ result, sha256: null }]),
];

describe('a second calculation', () => {
  it('that agrees changes no verdict and is told in a line of every report', () => {
    expect(twice.limits).toEqual(once.limits);
    expect(twice.verdict).toBe(once.verdict);
    for (const report of reports(twice))
      expect(report.replaceAll(/\s+/g, ' ')).toContain('of a body free to slide and lift, agrees');
    for (const report of reports(once)) expect(report).toContain('No second calculation was made');
  });

  it('that disagrees makes all limits unknown, and every report says so', () => {
    const { compared } = [...twice.opinions!.values()][0]!;
    const result = told({ compared: [{ ...compared[0]!, second: compared[0]!.exact + 1 }] });
    expect(result.verdict).toBe('unknown');
    for (const report of reports(result))
      expect(report.replaceAll(/\s+/g, ' ')).toMatch(/the two calculations disagree: do not trust this one/i);
    for (const { verdict } of result.limits) expect(verdict).toBe('unknown');
  });

  it('says how far it slides, which way, and that it leaves the floor', () => {
    const line = secondLine(told({ slide: -0.0508, lifts: true }));
    expect(line).toContain('it slides about 51 mm back on this floor');
    expect(line).toContain('leaves the floor');
    expect(secondLine(told({ slide: 0.001 }))).not.toContain('slides about');
  });

  it('names who it is of', () => {
    const only = (id: string) => {
      const opinions = [...twice.opinions!].filter(([{ load }]) => load.id === id);
      return secondLine({ ...twice, opinions: new Map(opinions) });
    };
    const sitter = twice.people.persons[0]!.name;
    expect(secondLine(twice)).toContain(`agrees for the empty chair and ${sitter}`);
    expect(only('empty')).toContain('agrees for the empty chair.');
    expect(only('seated')).toContain(`agrees for ${sitter}.`);
  });

  it('that could compare nothing says that', () => {
    const flat = {
      ...twice,
      opinions: new Map(
        [...twice.opinions!].map(([record, opinion]) => [record, { ...opinion, compared: [] }]),
      ),
    };
    expect(secondLine(flat)).toContain('could compare nothing');
    expect(secondLine({ ...twice, opinions: new Map() })).toContain('nothing comes to rest');
  });

  it('is in the JSON by its schema: numbers, how far apart, how far they may be', () => {
    const report = reportJson(twice, 'abc');
    expect(reportSchema.parse(report)).toEqual(report);
    const [empty] = report.loads;
    const opinion = empty!.secondOpinion!;
    expect(opinion.restAngleDeg).toBeCloseTo(empty!.measures.restAngleDeg!, 2);
    expect(opinion.periodAtSwingS).toBeCloseTo(empty!.measures.periodAtSwingS!, 3);
    expect(Math.abs(opinion.tipBackEnergyJ! / empty!.measures.tipBackEnergyJ! - 1)).toBeLessThan(0.008);
    expect(opinion).toMatchObject({ slideM: 0, lifts: false });
    for (const [key, apart] of Object.entries(opinion.disagreement))
      expect(apart).toBeLessThan(opinion.tolerance[key as keyof typeof opinion.tolerance]!);
    expect(Object.keys(opinion.tolerance)).toEqual(['restAngleDeg', 'periodAtSwingS', 'tipBackEnergyJ']);
    const lean = report.loads.find(
      ({ id, sitter }) => id === 'leaning-back-hard' && sitter === once.people.persons[0]!.name,
    );
    expect(lean!.secondOpinion!.peakBackDeg).toBeCloseTo(lean!.measures.peakBackDeg!, 0);
    expect(
      report.loads.filter(({ id }) => id === 'seated').map(({ secondOpinion }) => secondOpinion !== null),
    ).toEqual(once.people.persons.map((_, i) => i === 0));
  });

  it('is the same for the same design', async () => {
    expect(reportJson(await withSecondOpinion(once))).toEqual(reportJson(twice));
  });

  it('is told number by number on the full screen, no line too wide', () => {
    for (const columns of [60, 80, 100]) {
      const text = printText(twice, { ...plain, all: true, columns });
      expect(text).toContain('Calculated a second time');
      for (const line of text.split('\n')) expect(textWidth(line)).toBeLessThanOrEqual(columns);
    }
  });
});
