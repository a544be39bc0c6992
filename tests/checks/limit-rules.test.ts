/** Rules of the contract about limits that a whole check shows: order and ids, other sides, rests, loads that are off. */
import { describe, expect, it } from 'vitest';
import { defaultLimits } from '../../src/checks/default-limits.js';
import { limitsOf } from '../../src/checks/limit.js';
import type { DesignInSI } from '../../src/design/design.js';
import { chairKinds, type ChairKind, type LoadId, type MeasureKey } from '../../src/names.js';
import { checked, oneArc, reported, sitters } from '../reading.js';

const text = `${oneArc}${sitters}`;
const limitsFor = (design: string) => {
  const result = checked(design);
  return limitsOf(result.design, result.people);
};
const judged = (design: string, id: string) => checked(design).limits.find((limit) => limit.id === id)!;
const ids = (design: string): string[] => checked(design).limits.map(({ id }) => id);

describe('ids', () => {
  it('are load, limit and sitter, by load, then sitter, then measure', () => {
    expect(ids(text)).toEqual([
      ...['seatSlope', 'restCount', 'flatLongest', 'radiusJump'].map((key) => `empty/${key}`),
      ...['short', 'tall'].flatMap((name) =>
        [
          'seatSlope',
          'backAngle',
          'period',
          'tipSideways',
          'frictionDemand',
          'kneeHollowGap',
          'seatDepthGap',
          'footReach',
        ].map((key) => `seated/${key}/${name}`),
      ),
    ]);
  });

  it('have a sitter’s name as it is written', () => {
    expect(ids(text.replace('name: short', 'name: "my / aunt"'))).toContain('seated/period/my / aunt');
  });

  it('without sitters are of the empty chair only', () => {
    expect(ids(oneArc)).toEqual([
      'empty/seatSlope',
      'empty/restCount',
      'empty/flatLongest',
      'empty/radiusJump',
    ]);
  });
});

describe('a bare key', () => {
  const wall = `${text}room: { wall: 2 m }\nchild: { mass: 9 kg }\n`;
  const hardLeans = ['leaning-back-hard', 'leaning-back-hard-with-a-child'];
  const ofMeasure = (design: string, measure: MeasureKey) =>
    limitsFor(design).filter((limit) => limit.measure === measure);

  it('replaces the default on every load that has one, for each sitter', () => {
    const limits = ofMeasure(`${wall}limits: { wallClearance: 1 m .. }\n`, 'wallClearanceM');
    expect(limits.map(({ load, sitter }) => `${load} ${sitter}`)).toEqual(
      hardLeans.flatMap((load) => ['short', 'tall'].map((name) => `${load} ${name}`)),
    );
    for (const { range, asked } of limits) expect([range, asked]).toEqual([{ min: 1, max: null }, true]);
  });

  it('that is off drops every one of them, and one under a load stands against it', () => {
    expect(ofMeasure(`${wall}limits: { wallClearance: off }\n`, 'wallClearanceM')).toEqual([]);
    const kept = `${wall}limits: { seated: { wallClearance: 1 m .. }, wallClearance: off }\n`;
    expect(ofMeasure(kept, 'wallClearanceM').map(({ load }) => load)).toEqual(['seated', 'seated']);
  });

  it('of seat slope that is off drops that of the sitters and leaves the empty chair’s', () => {
    const left = ids(`${text}limits: { seatSlope: off }\n`).filter((id) => id.includes('seatSlope'));
    expect(left).toEqual(['empty/seatSlope']);
  });

  it('of a measure that one load has judges that load, without a sitter', () => {
    const limits = ofMeasure(`${text}limits: { sharpestCorner: .. 5 deg }\n`, 'sharpestCornerDeg');
    expect(limits.map(({ load, sitter }) => [load, sitter])).toEqual([['empty', null]]);
  });

  it('of a measure of moving loads without default judges its plain load', () => {
    const limits = ofMeasure(`${text}limits: { peakForward: .. 20 deg }\n`, 'peakForwardDeg');
    expect(limits.map(({ load, sitter }) => [load, sitter])).toEqual([
      ['getting-up', 'short'],
      ['getting-up', 'tall'],
    ]);
  });

  it('replaces a default of the first sitter’s sides for every other sitter too, without a caution', () => {
    const limits = ofMeasure(`${text}limits: { seatDepthGap: 0 mm .. 1 mm }\n`, 'seatDepthGapM');
    for (const { range, cautioned } of limits)
      expect({ range, cautioned }).toEqual({ range: { min: 0, max: 0.001 }, cautioned: null });
  });
});

describe('the other side', () => {
  const armed = `${text}arms: { rear: [-140, 500], front: [300, 520] }\n`;
  const sides = (design: string, name: string) =>
    limitsFor(design)
      .filter(({ sitter, measure }) => sitter === name && /Gap/.test(measure))
      .map(({ measure, range, cautioned }) => [measure, range, cautioned]);

  it('is judged for the first sitter', () => {
    expect(sides(armed, 'short')).toEqual([
      ['kneeHollowGapM', { min: 0, max: 0.05 }, null],
      ['seatDepthGapM', { min: 0.025, max: 0.075 }, null],
      ['armHeightGapM', { min: -0.012, max: 0.025 }, null],
    ]);
  });

  it('is a caution for the others: knee and seat not below, arms not above', () => {
    expect(sides(armed, 'tall')).toEqual([
      ['kneeHollowGapM', { min: 0, max: null }, { min: null, max: 0.05 }],
      ['seatDepthGapM', { min: 0.025, max: null }, { min: null, max: 0.075 }],
      ['armHeightGapM', { min: null, max: 0.025 }, { min: -0.012, max: null }],
    ]);
  });

  it('that is not met passes with a caution; that is met passes without', () => {
    const tall = judged(text, 'seated/kneeHollowGap/tall');
    expect(tall.value).toBeGreaterThan(0.05);
    expect(tall).toMatchObject({ verdict: 'pass', cautioned: true });
    expect(
      checked(text)
        .limits.filter(({ cautioned }) => cautioned)
        .every(({ sitter }) => sitter === 'tall'),
    ).toBe(true);
    const twins = text.replace(/name: tall.*/, 'name: twin, body: female, stature: 1.55 m, mass: 50 kg }');
    expect(judged(twins, 'seated/footReach/twin').cautioned).toBe(false);
  });
});

describe('a load without a rest', () => {
  // Empty it rolls past the nose; with somebody in it, it stands.
  const ahead = text.replace('at: [-10, 400]', 'at: [300, 400]');

  it('fails its own rest and no other', () => {
    const limits = checked(ahead).limits;
    const rests = limits.filter(({ measure }) => measure === null);
    expect(rests.map(({ id, verdict }) => [id, verdict])).toEqual([['empty/rest', 'fail']]);
    const ofEmpty = limits.filter(({ load, measure }) => load === 'empty' && measure !== null);
    expect(ofEmpty.length).toBe(4);
    for (const { verdict, value, margin, reason } of ofEmpty)
      expect({ verdict, value, margin, reason }).toEqual({
        verdict: 'unknown',
        value: null,
        margin: null,
        reason: 'does not come to rest on its rockers',
      });
    for (const limit of limits.filter(({ load }) => load === 'seated'))
      expect(limit.verdict).not.toBe('unknown');
  });
});

describe('verdicts in the report', () => {
  it('have their margin in the unit of the measure, and the basis of every one', () => {
    const { limits } = reported(text);
    for (const { min, max, value, margin, verdict, basis } of limits) {
      const nearer = Math.min(min === null ? Infinity : value! - min, max === null ? Infinity : max - value!);
      expect(margin).toBeCloseTo(nearer, 9);
      expect(verdict).toBe(nearer >= 0 ? 'pass' : 'fail');
      expect(basis).toMatch(/^common practice or this project’s judgement, no source: \S/);
    }
  });

  it('exactly at a bound are met, of either end', () => {
    for (const range of ['6 deg .. 7 deg', '5 deg .. 6 deg', '6 deg .. 6 deg'])
      expect(judged(`${text}limits: { swing: ${range} }\n`, 'seated/swing/short')).toMatchObject({
        verdict: 'pass',
        margin: 0,
      });
    expect(judged(`${text}limits: { swing: 6.00001 deg .. }\n`, 'seated/swing/short').verdict).toBe('fail');
  });

  it('fail beats unknown', () => {
    const open = 'limits: { armHeightGap: 0 mm .. 9 mm, tipBack: 1 deg .. ';
    const fails = checked(`${text}${open}, swing: 7 deg .. }\n`);
    expect(fails.limits.map(({ verdict }) => verdict)).toContain('unknown');
    expect(fails.verdict).toBe('fail');
  });
});

describe('default limits of moving loads', () => {
  const degree = Math.PI / 180;
  /** Least, by kind: adult, nursing, child, porch. With a child the numbers of a nursing chair, whatever the kind. */
  const table: [LoadId, MeasureKey, number, readonly number[]][] = [
    ['leaning-back-hard', 'rockerLeftBackM', 0.001, [50, 75, 75, 50]],
    ['leaning-back-hard', 'leftToTipBackDeg', degree, [8, 10, 12, 8]],
    ['leaning-back-hard', 'wallClearanceM', 0.001, [50, 50, 50, 50]],
    ['getting-up', 'rockerLeftForwardM', 0.001, [25, 50, 40, 25]],
    ['leaning-back-hard-with-a-child', 'rockerLeftBackM', 0.001, [75, 75, 75, 75]],
    ['leaning-back-hard-with-a-child', 'leftToTipBackDeg', degree, [10, 10, 10, 10]],
    ['leaning-back-hard-with-a-child', 'wallClearanceM', 0.001, [50, 50, 50, 50]],
    ['getting-up-with-a-child', 'rockerLeftForwardM', 0.001, [50, 50, 50, 50]],
  ];
  it.each(table)('%s, %s', (load, measure, unit, leasts) => {
    const { range } = defaultLimits.find((each) => each.load === load && each.measure === measure)!;
    chairKinds.forEach((kind: ChairKind, i) => {
      const { min, max } = range({ kind } as DesignInSI);
      expect([min! / unit, max]).toEqual([expect.closeTo(leasts[i]!, 9), null]);
    });
  });
});
