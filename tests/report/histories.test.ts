import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { historiesCsv, historiesJson } from '../../src/report/histories.js';
import { reportJson } from '../../src/report/json.js';
import { checked } from '../reading.js';
import { trueroll } from '../stand-in-world.js';

const path = 'fixtures/porch-rocker/design.yaml';
const result = checked(readFileSync(path, 'utf8'));
interface Told {
  readonly histories: readonly {
    readonly load: string;
    readonly sitter: string | null;
    readonly moments: readonly Readonly<Record<string, number>>[];
  }[];
}
const told = JSON.parse(historiesJson([result])) as Told;
const report = reportJson(result);

describe('histories', () => {
  it('are of every moving load, in the order of the report', () => {
    const moving = report.loads.filter(({ id }) => /leaning|getting|tails/u.test(id));
    expect(told.histories.map(({ load, sitter }) => [load, sitter])).toEqual(
      moving.map(({ id, sitter }) => [id, sitter]),
    );
  });

  it('reach the peaks and the lightest moment of the report', () => {
    for (const { load, sitter, moments } of told.histories) {
      const { measures } = report.loads.find((one) => one.id === load && one.sitter === sitter)!;
      const all = (key: string): number[] => moments.map((moment) => moment[key]!);
      const { peakBackDeg, peakForwardDeg, minFloorForceRatio, frictionDemand } = measures;
      if (typeof peakBackDeg === 'number')
        expect(Math.max(...all('leanFromRestDeg'))).toBeCloseTo(peakBackDeg, 8);
      if (typeof peakForwardDeg === 'number')
        expect(-Math.min(...all('leanFromRestDeg'))).toBeCloseTo(peakForwardDeg, 8);
      // Sampled every 0.01 s: no higher than the top, and near it.
      const lightest = Math.min(...all('floorForceRatio'));
      expect(lightest).toBeGreaterThan(minFloorForceRatio! - 1e-9);
      expect(lightest).toBeLessThan(minFloorForceRatio! + 0.01);
      const demand = Math.max(...all('frictionRatio').map(Math.abs));
      expect(demand).toBeLessThan(frictionDemand! + 1e-9);
      expect(demand).toBeGreaterThan(frictionDemand! - 0.01);
    }
  });

  it('go on in time, no step longer than a hundredth of a second', () => {
    for (const { moments } of told.histories)
      moments.slice(1).forEach(({ timeS }, i) => {
        const step = timeS! - moments[i]!['timeS']!;
        expect(step).toBeGreaterThanOrEqual(0);
        expect(step).toBeLessThan(0.01 + 1e-9);
      });
  });

  it('as a table have the same numbers, names quoted where they must be', () => {
    const named = { ...result, file: 'a "chair", tall.yaml' };
    const [head, first] = historiesCsv([named]).split('\r\n');
    expect(head!.split(',').slice(0, 4)).toEqual(['file', 'load', 'sitter', 'timeS']);
    const start = told.histories[0]!;
    const numbers = Object.values(start.moments[0]!).map(String);
    expect(first).toBe(['"a ""chair"", tall.yaml"', start.load, start.sitter, ...numbers].join(','));
    const rows = told.histories.reduce((sum, { moments }) => sum + moments.length, 0);
    expect(historiesCsv([named]).trimEnd().split('\r\n')).toHaveLength(rows + 1);
  });
});

describe('check --histories', () => {
  const files = { [path]: readFileSync(path) };

  it('answers with them in JSON, and its exit code stays', async () => {
    const { code, stdout } = await trueroll(['check', path, '--histories'], { files });
    expect(code).toBe(0);
    expect((JSON.parse(stdout) as Told).histories.length).toBe(told.histories.length);
  });

  it('writes a table, or JSON by the name of the file', async () => {
    const argv = (out: string): string[] => ['check', path, '--histories', '--out', out];
    const table = (await trueroll(argv('h.csv'), { files })).written.get('h.csv');
    expect(table).toMatch(/^file,load,sitter,timeS,/);
    const json = (await trueroll(argv('h.json'), { files })).written.get('h.json');
    expect(json).toMatch(/^\{\n/);
  });
});
