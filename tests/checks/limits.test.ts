/** The contract's rules about limits. */
import { describe, expect, it } from 'vitest';
import { defaultLimits, type SeatedFigures } from '../../src/checks/default-limits.js';
import { judge, marginIn, worst } from '../../src/checks/verdict.js';
import type { DesignInSI } from '../../src/design/design.js';
import { chairKinds, type LoadId, type MeasureKey } from '../../src/names.js';
import { oneArc, reported, sitters } from '../reading.js';

const limitOf = (text: string, id: string) => reported(text).limits.find((limit) => limit.id === id);
const ids = (text: string) => reported(text).limits.map(({ id }) => id);

describe('a limit stated without a load', () => {
  it('of seat slope or period means the sitters', () => {
    const text = `${oneArc}${sitters}limits: { seatSlope: -90 deg .. 90 deg, period: 0.1 s .. 9 s }\n`;
    expect(limitOf(text, 'seated/seatSlope/tall')).toMatchObject({ min: -90, basis: 'the design’s own' });
    expect(limitOf(text, 'seated/period/short')).toMatchObject({ max: 9 });
    expect(limitOf(text, 'empty/seatSlope')?.min).toBe(0);
  });

  it('of period without sitters is unknown, for nobody sits', () => {
    const text = `${oneArc}limits: { period: 0.1 s .. 9 s }\n`;
    expect(limitOf(text, 'seated/period')).toMatchObject({ verdict: 'unknown', value: null });
    expect(reported(text).verdict).toBe('unknown');
  });

  it('of a measure without default judges every sitter, or the empty chair', () => {
    const limits = 'limits: { tipBack: 10 deg .. }\n';
    expect(ids(`${oneArc}${sitters}${limits}`).filter((id) => id.includes('tipBack'))).toEqual([
      'seated/tipBack/short',
      'seated/tipBack/tall',
    ]);
    expect(ids(`${oneArc}${limits}`)).toContain('empty/tipBack');
  });

  it('of a measure of one load judges that load', () => {
    expect(limitOf(`${oneArc}limits: { flatLongest: .. 3 mm }\n`, 'empty/flatLongest')?.max).toBe(0.003);
  });

  it('replaces the default of every sitter on both sides', () => {
    const text = `${oneArc}${sitters}limits: { kneeHollowGap: -1 m .. 1 m }\n`;
    expect(limitOf(text, 'seated/kneeHollowGap/tall')).toMatchObject({ min: -1, max: 1 });
  });
});

describe('a limit stated under a load', () => {
  it('judges that load only, whatever is stated without one', () => {
    const text = `${oneArc}limits: { empty: { seatSlope: -5 deg .. 50 deg }, restCount: off }\n`;
    expect(limitOf(text, 'empty/seatSlope')).toMatchObject({ min: -5, max: 50 });
    expect(ids(text)).not.toContain('empty/restCount');
  });

  it('can be off', () => {
    expect(ids(`${oneArc}limits: { empty: { seatSlope: off } }\n`)).not.toContain('empty/seatSlope');
  });

  it('on a load that nobody is there for is unknown, and a failing one outweighs it', () => {
    const unknown = 'leaning-back-hard: { rockerLeftBack: 50 mm .. }';
    expect(reported(`${oneArc}limits: { ${unknown} }\n`).limits.at(-1)).toMatchObject({
      id: 'leaning-back-hard/rockerLeftBack',
      verdict: 'unknown',
      value: null,
    });
    expect(reported(`${oneArc}limits: { ${unknown}, empty: { tipBack: 89 deg .. } }\n`).verdict).toBe('fail');
  });
});

describe('default limits', () => {
  it('of fit are judged on both sides for the first sitter, for others on the side that hurts', () => {
    const text = `${oneArc}${sitters}`;
    expect(limitOf(text, 'seated/kneeHollowGap/short')).toMatchObject({ min: 0, max: 0.05 });
    expect(limitOf(text, 'seated/kneeHollowGap/tall')).toMatchObject({ min: 0, max: null });
    expect(limitOf(text, 'seated/seatDepthGap/tall')).toMatchObject({ min: 0.025, max: null });
  });

  it('are left out where the file does not give what they need, and unknown where it asks for them', () => {
    expect(ids(`${oneArc}${sitters}`).filter((id) => id.includes('armHeightGap'))).toEqual([]);
    const asked = `${oneArc}${sitters}limits: { armHeightGap: 0 mm .. 9 mm }\n`;
    expect(limitOf(asked, 'seated/armHeightGap/short')).toMatchObject({
      verdict: 'unknown',
      reason: 'the design has no arms line',
    });
  });

  it('of a load without a rest are unknown, and its rest fails', () => {
    const tight = oneArc
      .replace('radius: 1000', 'radius: 390')
      .replace('nose: 400, tail: 500', 'nose: 300, tail: 300');
    const { limits, verdict } = reported(tight);
    expect(verdict).toBe('fail');
    const ofEmpty = limits.filter(({ load }) => load === 'empty');
    expect(ofEmpty[0]).toMatchObject({ id: 'empty/rest', verdict: 'fail', value: null, margin: null });
    expect(ofEmpty.slice(1).length).toBeGreaterThan(0);
    expect(ofEmpty.slice(1).every((limit) => limit.verdict === 'unknown')).toBe(true);
    // What steps on the tails of a chair that stands nowhere has nothing to be counted from.
    expect(limits.filter(({ load }) => load !== 'empty').map(({ id, verdict }) => [id, verdict])).toEqual([
      ['child-on-the-tails/rest', 'fail'],
    ]);
  });

  // The table of default limits, a column a kind: adult, nursing, child, porch; degrees, seconds, millimetres.
  const degree = Math.PI / 180;
  const table: [LoadId, MeasureKey, number, (readonly [number | null, number | null])[]][] = [
    [
      'seated',
      'periodS',
      1,
      [
        [1.8, 2.6],
        [1.8, 2.5],
        [1.3, 2],
        [1.9, 2.8],
      ],
    ],
    [
      'seated',
      'seatSlopeDeg',
      degree,
      [
        [5, 11],
        [4, 9],
        [2, 8],
        [6, 13],
      ],
    ],
    [
      'seated',
      'backAngleDeg',
      degree,
      [
        [18, 26],
        [14, 22],
        [12, 20],
        [20, 30],
      ],
    ],
    [
      'empty',
      'seatSlopeDeg',
      degree,
      [
        [0, 9],
        [0, 8],
        [0, 8],
        [1, 11],
      ],
    ],
    [
      'seated',
      'kneeHollowGapM',
      0.001,
      [
        [0, 50],
        [12, 65],
        [0, 40],
        [0, 50],
      ],
    ],
    [
      'seated',
      'footReach',
      1,
      [
        [null, 0.95],
        [null, 0.92],
        [null, 0.95],
        [null, 0.95],
      ],
    ],
    [
      'seated',
      'seatDepthGapM',
      0.001,
      [
        [25, 75],
        [25, 75],
        [25, 50],
        [25, 75],
      ],
    ],
    [
      'seated',
      'armHeightGapM',
      0.001,
      [
        [-12, 25],
        [0, 25],
        [-12, 12],
        [-12, 25],
      ],
    ],
    [
      'seated',
      'tipSidewaysDeg',
      degree,
      [
        [15, null],
        [15, null],
        [18, null],
        [15, null],
      ],
    ],
    [
      'empty',
      'flatLongestM',
      0.001,
      [
        [null, 25],
        [null, 25],
        [null, 12],
        [null, 25],
      ],
    ],
    [
      'empty',
      'radiusJump',
      1,
      [
        [null, 0.15],
        [null, 0.15],
        [null, 0.15],
        [null, 0.15],
      ],
    ],
    [
      'empty',
      'restCount',
      1,
      [
        [1, 1],
        [1, 1],
        [1, 1],
        [1, 1],
      ],
    ],
    [
      'seated',
      'frictionDemand',
      1,
      [
        [null, 0.28],
        [null, 0.28],
        [null, 0.28],
        [null, 0.28],
      ],
    ],
  ];

  const nothingSeated: SeatedFigures = { rockerEndBack: null };

  it.each(table)('%s, %s', (load, measure, unit, byKind) => {
    const limit = defaultLimits.find((each) => each.load === load && each.measure === measure)!;
    chairKinds.forEach((kind, i) => {
      const design = { kind, floor: { name: null, friction: 0.4, rolling: 0 } } as DesignInSI;
      const { min, max } = limit.range(design, nothingSeated)!;
      const [least, most] = byKind[i]!;
      expect([min, max].map((end) => (end === null ? null : end / unit))).toEqual([
        least === null ? null : expect.closeTo(least, 9),
        most === null ? null : expect.closeTo(most, 9),
      ]);
    });
  });

  it('are those of the table and no others', () => {
    const here = defaultLimits.filter(({ load }) => load === 'empty' || load === 'seated');
    expect(here).toHaveLength(table.length);
  });
});

describe('a verdict', () => {
  it('is met at the bound, even where rounding leaves it a digit short', () => {
    expect(judge({ min: 0.3, max: null }, 0.1 + 0.2)).toMatchObject({ verdict: 'pass' });
    expect(judge({ min: null, max: 0.0254 }, 0.0254 * (1 + 1e-15)).verdict).toBe('pass');
    expect(judge({ min: null, max: 0.0254 }, 0.0254 * (1 + 1e-6)).verdict).toBe('fail');
  });

  it('never passes NaN', () => {
    expect(judge({ min: 0, max: 1 }, NaN).verdict).toBe('fail');
    expect(judge({ min: null, max: null }, NaN).verdict).toBe('fail');
  });

  it('has a margin to the nearer bound, negative outside', () => {
    expect(marginIn({ min: 1, max: 4 }, 2)).toBe(1);
    expect(marginIn({ min: 1, max: 4 }, 3.5)).toBe(0.5);
    expect(marginIn({ min: 1, max: 4 }, 5)).toBe(-1);
    expect(marginIn({ min: 1, max: null }, 0)).toBe(-1);
  });

  it('of several is fail before unknown before pass', () => {
    expect(worst(['pass', 'unknown', 'fail'])).toBe('fail');
    expect(worst(['pass', 'unknown'])).toBe('unknown');
    expect(worst([])).toBe('pass');
  });
});
