/** Which loads a limit is for, and why one is unknown, at the corners of the contract's rules. */
import { describe, expect, it } from 'vitest';
import { judge } from '../../src/checks/verdict.js';
import { measureKeys, measures } from '../../src/names.js';
import { checked, oneArc, reported, sitters } from '../reading.js';

const people = `${oneArc}${sitters}`;
const child = 'child: { mass: 9 kg }\n';
const limitsOf = (text: string, limits: string) => reported(`${text}limits: ${limits}\n`).limits;
const idsOf = (text: string, key: string, limits: string) =>
  limitsOf(text, limits)
    .map(({ id }) => id)
    .filter((id) => id.split('/')[1] === key);

describe('a limit without a load on a measure whose default is on a moving load', () => {
  it('judges that load and, with a child, the same with the child', () => {
    const wall = '{ wallClearance: 2 in .. }';
    expect(idsOf(people, 'wallClearance', wall)).toEqual([
      'leaning-back-hard/wallClearance/short',
      'leaning-back-hard/wallClearance/tall',
    ]);
    expect(idsOf(`${people}${child}`, 'wallClearance', wall)).toEqual([
      'leaning-back-hard/wallClearance/short',
      'leaning-back-hard/wallClearance/tall',
      'leaning-back-hard-with-a-child/wallClearance/short',
      'leaning-back-hard-with-a-child/wallClearance/tall',
    ]);
    expect(idsOf(people, 'rockerLeftForward', '{ rockerLeftForward: 1 in .. }')).toEqual([
      'getting-up/rockerLeftForward/short',
      'getting-up/rockerLeftForward/tall',
    ]);
  });

  it('judges the sitter where it is asked for there', () => {
    const room = `${people}room: { wall: 1 m }\n`;
    expect(limitsOf(room, '{ seated: { wallClearance: 2 in .. } }')).toContainEqual(
      expect.objectContaining({ id: 'seated/wallClearance/tall', verdict: 'pass', min: 0.0508 }),
    );
  });
});

describe('a limit without a load', () => {
  /** By the page: one line a measure, with sitters and a child; where no default says otherwise the sitter. */
  it('means some load for every measure, and every load that it means has the measure', () => {
    const unit = { length: 'm', mass: 'kg', time: 's', angle: 'deg', force: 'N', energy: 'J' };
    const stated = measureKeys.map((key) => {
      const { limitKey, kind } = measures[key];
      return `${limitKey}: 0.1${kind in unit ? ` ${unit[kind as keyof typeof unit]}` : ''} ..`;
    });
    const own = limitsOf(`${people}${child}`, `{ ${stated.join(', ')} }`).filter(
      ({ basis }) => basis === 'the design’s own',
    );
    for (const key of measureKeys) {
      const { limitKey, loads } = measures[key];
      const judged = own.filter(({ id }) => id.split('/')[1] === limitKey);
      expect(judged.length, limitKey).toBeGreaterThan(0);
      for (const { load } of judged) expect(loads).toContain(load);
    }
  });

  it('does not reach the empty chair through period or seat slope, nor switch its default off', () => {
    expect(idsOf(people, 'seatSlope', '{ seatSlope: off, period: off }')).toEqual(['empty/seatSlope']);
    expect(idsOf(people, 'period', '{ seatSlope: off, period: off }')).toEqual([]);
  });

  it('is outweighed by one under the load, off or not', () => {
    const own = '{ period: off, seated: { period: 1 s .. 9 s } }';
    expect(idsOf(people, 'period', own)).toEqual(['seated/period/short', 'seated/period/tall']);
    const off = '{ period: 1 s .. 9 s, seated: { period: off } }';
    expect(idsOf(people, 'period', off)).toEqual([]);
  });
});

describe('an unknown limit says why', () => {
  it.each([
    ['nobody sits', oneArc, '{ backAngle: 1 deg .. }', 'the design has no sitters'],
    ['no child', people, '{ with-a-child: { period: 1 s .. } }', 'the design has no child'],
    [
      'load off',
      `${people}loads: { seated: off }\n`,
      '{ period: 1 s .. }',
      'the design has put this load off',
    ],
    [
      'moving load off',
      `${people}loads: { leaning-back-hard: off }\n`,
      '{ peakBack: .. 9 deg, child-on-the-tails: { peakBack: off } }',
      'the design has put this load off',
    ],
    ['nobody gets up', oneArc, '{ kickBack: .. 9 deg }', 'the design has no sitters'],
    ['no arms', people, '{ armHeightGap: 0 mm .. }', 'the design has no arms line'],
  ])('%s', (_, text, limits, reason) => {
    const asked = limitsOf(text, limits).filter(({ basis }) => basis === 'the design’s own');
    expect(asked.length).toBeGreaterThan(0);
    for (const limit of asked)
      expect(limit).toMatchObject({ verdict: 'unknown', value: null, margin: null, reason });
  });

  it('a limit whose load is off has an id a sitter all the same', () => {
    const ids = idsOf(`${people}loads: { seated: off }\n`, 'period', '{ period: 1 s .. }');
    expect(ids).toEqual(['seated/period/short', 'seated/period/tall']);
  });
});

describe('a load without a rest', () => {
  const tight = (text: string) =>
    text.replace('radius: 1000', 'radius: 390').replace('nose: 400, tail: 500', 'nose: 300, tail: 300');

  it('leaves out the default limits of what the file does not give, as with a rest', () => {
    const bare = tight(oneArc).replace(/^seat:.*\n/m, '');
    expect(reported(bare).limits.map(({ id }) => id)).toEqual([
      'empty/rest',
      'empty/restCount',
      'empty/flatLongest',
      'empty/radiusJump',
      'child-on-the-tails/rest',
    ]);
    const asked = limitsOf(bare, '{ empty: { seatSlope: 0 deg .. } }');
    expect(asked.find(({ id }) => id === 'empty/seatSlope')).toMatchObject({
      verdict: 'unknown',
      reason: 'the design has no seat line',
    });
  });

  it('does not touch other loads: each sitter has a rest limit of their own', () => {
    const { limits } = reported(tight(people).replace('at: [-10, 400]', 'at: [-10, 60]'));
    const rests = limits.filter(({ id }) => id.split('/')[1] === 'rest').map(({ id }) => id);
    expect(rests).toEqual(
      ['seated', 'seated-feet-up', 'leaning-back-hard', 'getting-up'].flatMap((load) => [
        `${load}/rest/short`,
        `${load}/rest/tall`,
      ]),
    );
    expect(limits.filter(({ load }) => load === 'empty').map(({ verdict }) => verdict)).not.toContain(
      'unknown',
    );
    for (const { load, id, verdict } of limits.filter(({ load }) => load !== 'empty'))
      expect([id, verdict]).toEqual([id, id.startsWith(`${load}/rest/`) ? 'fail' : 'unknown']);
  });
});

describe('for others than the first sitter', () => {
  const knees = (text: string) => checked(text).limits.find(({ id }) => id === 'seated/kneeHollowGap/tall')!;

  it('the other side is a caution, and only while it is the default that judges', () => {
    // A seat that is low for both: 1.9 m tall, a knee hollow about 9 cm higher.
    const text = people.replace('front: [300, 380]', 'front: [300, 330]');
    expect(knees(text)).toMatchObject({ verdict: 'pass', cautioned: true, range: { min: 0, max: null } });
    expect(knees(`${text}limits: { kneeHollowGap: 0 mm .. 50 mm }\n`)).toMatchObject({
      verdict: 'fail',
      cautioned: false,
    });
  });

  it('the first in the file is whom the chair is made for, however the names go', () => {
    const [head, short, tall] = sitters.split('\n');
    const turned = `${oneArc}${head!}\n${tall!}\n${short!}\n`;
    expect(knees(turned).range).toEqual({ min: 0, max: 0.05 });
  });
});

describe('at the bound', () => {
  it.each([
    [0, null, -1e-17],
    [null, 0, 1e-17],
    [0, null, -1e-10],
    [1.8, 2.6, 1.8],
    [1.8, 2.6, 2.6],
    [1, 1, 1],
  ])('%s .. %s is met by %s', (min, max, value) => {
    expect(judge({ min, max }, value)).toMatchObject({ verdict: 'pass', margin: 0 });
  });

  it.each([
    [0, null, -1e-8],
    [1, 1, 2],
    [1, 1, 0],
    [null, null, NaN],
    [null, 1, NaN],
  ])('%s .. %s is not met by %s', (min, max, value) => {
    expect(judge({ min, max }, value).verdict).toBe('fail');
  });
});
