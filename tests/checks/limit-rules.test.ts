/** Rules of the contract about limits that a whole check shows: order and ids, other sides, rests, loads that are off. */
import { describe, expect, it } from 'vitest';
import { defaultLimits, type SeatedFigures } from '../../src/checks/default-limits.js';
import { limitsOf } from '../../src/checks/limit.js';
import { seatedFigures } from '../../src/checks/seated-figures.js';
import type { DesignInSI } from '../../src/design/design.js';
import { chairKinds, type ChairKind, type LoadId, type MeasureKey } from '../../src/names.js';
import { checked, oneArc, reported, sitters } from '../reading.js';

const text = `${oneArc}${sitters}`;
const limitsFor = (design: string) => {
  const result = checked(design);
  return limitsOf(result.design, result.people, seatedFigures(result.loads));
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
      ...['short', 'tall'].flatMap((name) =>
        ['leftToTipBack', 'rockerLeftBack'].map((key) => `leaning-back-hard/${key}/${name}`),
      ),
      ...['short', 'tall'].flatMap((name) =>
        ['rockerLeftForward', 'kickBack'].map((key) => `getting-up/${key}/${name}`),
      ),
    ]);
  });

  it('with a child have those of the moving loads a second time, and of the room only where it is given', () => {
    const plain = ids(`${text}room: { wall: 2 m }\n`);
    const held = ids(`${text}room: { wall: 2 m }\nchild: { mass: 9 kg }\n`);
    const moving = plain.filter((id) => /^(leaning|getting)/.test(id));
    expect(moving.filter((id) => id.includes('wallClearance'))).toHaveLength(2);
    expect(held).toEqual([...plain, ...moving.map((id) => id.replace('/', '-with-a-child/'))]);
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
    // The child steps on the tails of the empty chair: that load begins from the same rest.
    expect(rests.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['empty/rest', 'fail'],
      ['child-on-the-tails/rest', 'fail'],
    ]);
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

describe('a moving load whose pose at the start has no rest', () => {
  // A nose so short that a trunk bent forward by 60° goes over it, and one that sits up does not.
  const bent = `${text.replace('nose: 400', 'nose: 150')}loads: { leaning-back-hard: { trunkAhead: 60 deg } }\n`;

  it('fails its own rest, and its other limits are unknown; the seated rest stands', () => {
    const limits = checked(bent).limits;
    expect(limits.filter(({ measure }) => measure === null).map(({ id, verdict }) => [id, verdict])).toEqual(
      ['short', 'tall'].map((name) => [`leaning-back-hard/rest/${name}`, 'fail']),
    );
    const ofLean = limits.filter(({ load, measure }) => load === 'leaning-back-hard' && measure !== null);
    expect(ofLean).toHaveLength(4);
    for (const limit of ofLean)
      expect(limit).toMatchObject({
        verdict: 'unknown',
        value: null,
        reason: 'does not come to rest on its rockers',
      });
  });
});

describe('a load that goes over', () => {
  // Tails that end a hand behind the touch: nobody leans back hard in it and stays up.
  const short = `${text.replace('tail: 500', 'tail: 260')}room: { wall: 2 m }\n`;
  const leaning = (design: string, id: 'leaning-back-hard' | 'child-on-the-tails' = 'leaning-back-hard') =>
    checked(design).limits.filter(({ load }) => load === id);

  it('fails all of its limits, says so, and has no number of its motion', () => {
    const limits = leaning(short);
    expect(limits.map(({ id }) => id)).toEqual(
      ['short', 'tall'].flatMap((name) =>
        ['wallClearance', 'leftToTipBack', 'rockerLeftBack'].map((key) => `leaning-back-hard/${key}/${name}`),
      ),
    );
    for (const { verdict, value, margin, reason } of limits)
      expect({ verdict, value, margin, reason }).toEqual({
        verdict: 'fail',
        value: null,
        margin: null,
        reason: 'goes over backwards',
      });
    const rolled = reported(short).loads.filter(({ id }) => id === 'leaning-back-hard');
    for (const { goesOver, measures } of rolled)
      expect([goesOver, measures['peakBackDeg'], measures['sweptBackM']]).toEqual(['back', null, null]);
  });

  it('fails what the design asks of it, even what its numbers until then would meet', () => {
    const asked = leaning(
      `${short}limits: { leaning-back-hard: { frictionDemand: .. 9, peakBack: 0 deg .. } }\n`,
    );
    for (const key of ['frictionDemand', 'peakBack'])
      expect(asked.find(({ id }) => id === `leaning-back-hard/${key}/tall`)).toMatchObject({
        verdict: 'fail',
        reason: 'goes over backwards',
      });
  });

  it('forwards says that: a chair whose sitter gets up over a short nose', () => {
    const ahead = checked(text.replace('at: [-10, 400]', 'at: [300, 400]')).limits.filter(
      ({ load }) => load === 'getting-up',
    );
    expect(ahead).toHaveLength(4);
    for (const { verdict, reason } of ahead)
      expect([verdict, reason]).toEqual(['fail', 'goes over forwards']);
  });

  it('without a limit fails none: a child who tips the empty chair', () => {
    const result = checked(text);
    const tails = result.loads.find(({ record }) => record.load.id === 'child-on-the-tails')!;
    expect(tails.record.motion?.goesOver).toBe('back');
    expect(leaning(text, 'child-on-the-tails')).toEqual([]);
    const asked = `${text}limits: { child-on-the-tails: { tailLoadBorne: 1 kg .. } }\n`;
    expect(leaning(asked, 'child-on-the-tails')).toMatchObject([
      { id: 'child-on-the-tails/tailLoadBorne', verdict: 'fail', reason: 'goes over backwards' },
    ]);
  });
});

describe('a default limit whose number should be there and is not', () => {
  const wild = `${text}loads: { seated: { swing: 40 deg } }\n`;

  it('is unknown: the friction of a swing that passes the end of the rockers', () => {
    const { limits } = checked(wild);
    const unknown = limits.filter(({ verdict }) => verdict === 'unknown');
    expect(unknown.map(({ id, reason }) => [id, reason])).toEqual(
      ['short', 'tall'].map((name) => [
        `seated/frictionDemand/${name}`,
        'the swing passes the tail end of the rockers',
      ]),
    );
  });

  it('is unknown: the period of a sitter who rests on a flat', () => {
    // The chord of the arc from -150 to 150 mm: 1000 - sqrt(1000² - 150²) = 11.314 over its lowest place.
    const flat =
      "path: 'M -500 133.975 A 1000 1000 0 0 1 -150 11.314 L 150 11.314 A 1000 1000 0 0 1 400 83.485 L 380 140 L -480 190 Z'";
    const design = text.replace(/rocker: \{ radius.*?\}/, flat);
    const result = checked(design);
    const rest = result.loads.find(({ record }) => record.load.id === 'seated')!.record.roll.atRest!.rest;
    expect(rest.flat).toBeGreaterThan(0);
    const period = result.limits.find(({ id }) => id === 'seated/period/short')!;
    expect(period).toMatchObject({ verdict: 'unknown', value: null });
    expect(period.reason).toMatch(/flat/);
    expect(judged(`${design}limits: { period: off }\n`, 'seated/period/short')).toBeUndefined();
  });

  it('is left out all the same where the file does not give what it takes', () => {
    const bare = text.replace(/^spacing:.*\n/m, '');
    for (const key of ['tipSideways', 'armHeightGap', 'wallClearance'])
      expect(ids(bare).filter((id) => id.includes(`/${key}`))).toEqual([]);
  });
});

describe('kicking back', () => {
  const child = 'child: { mass: 9 kg }\n';
  const kicks = (design: string) => checked(design).limits.filter(({ measure }) => measure === 'kickBackDeg');

  it('is held against the way from the same sitter’s seated rest to the end of the rockers', () => {
    const result = checked(`${text}${child}`);
    // On an arc of 1 m about (0, 1) the tail ends at a lean of asin(0.5); the seated rest is plumb under its centre.
    const most = new Map(
      result.loads
        .filter(({ record }) => record.load.id === 'seated')
        .map(({ record: { load } }) => {
          const { x, y } = load.body.centre;
          return [load.sitter, Math.asin(0.5) - Math.atan2(-x, 1 - y)];
        }),
    );
    const limits = kicks(`${text}${child}`);
    expect(limits.map(({ load, sitter }) => `${load} ${sitter}`)).toEqual(
      ['getting-up', 'getting-up-with-a-child'].flatMap((load) =>
        ['short', 'tall'].map((name) => `${load} ${name}`),
      ),
    );
    for (const { range, sitter, value, verdict } of limits) {
      expect(range.min).toBeNull();
      expect(range.max).toBeCloseTo(most.get(sitter)!, 9);
      expect(verdict).toBe(value! <= range.max! ? 'pass' : 'fail');
    }
    expect(new Set(limits.map(({ verdict }) => verdict))).toEqual(new Set(['pass', 'fail']));
  });

  it('is held against the same where the seated load is off', () => {
    const off = kicks(`${text}loads: { seated: off }\n`);
    expect(off).toEqual(kicks(text));
    expect(off).toHaveLength(2);
  });

  it('is held against the same where nobody sits in it without the child', () => {
    const off = kicks(`${text}${child}loads: { seated: off, getting-up: off }\n`);
    expect(off).toEqual(kicks(`${text}${child}`).filter(({ load }) => load === 'getting-up-with-a-child'));
    expect(off).toHaveLength(2);
  });

  it('is not held against anything where that sitter rests nowhere, and is not judged when off', () => {
    const tight = text
      .replace('radius: 1000', 'radius: 390')
      .replace('nose: 400, tail: 500', 'nose: 300, tail: 300');
    expect(kicks(tight)).toEqual([]);
    expect(kicks(`${text}limits: { kickBack: off }\n`)).toEqual([]);
  });

  it('is what the design says where it says so', () => {
    const own = kicks(`${text}limits: { kickBack: .. 30 deg }\n`);
    for (const { range, basis } of own)
      expect([range.max, basis]).toEqual([expect.closeTo(Math.PI / 6, 12), 'the design’s own']);
    expect(own).toHaveLength(2);
  });
});

describe('limits that a design asks for on moving loads', () => {
  it('are judged by the number of that load', () => {
    const asked = `${text}limits: { peakForward: .. 36 deg, leaning-back-hard: { minFloorForceRatio: 0.5 .., peakBack: .. 20 deg } }\n`;
    const result = checked(asked);
    const own = result.limits.filter(({ basis }) => basis === 'the design’s own');
    expect(own.map(({ id }) => id).sort()).toEqual(
      [
        'getting-up/peakForward',
        'leaning-back-hard/minFloorForceRatio',
        'leaning-back-hard/peakBack',
      ].flatMap((id) => ['short', 'tall'].map((name) => `${id}/${name}`)),
    );
    for (const { load, sitter, measure, range, value, verdict } of own) {
      const of = result.loads.find(({ record }) => record.load.id === load && record.load.sitter === sitter)!;
      expect(value).toBe(of.measured.get(measure!));
      expect(verdict).toBe(
        value! >= (range.min ?? -Infinity) && value! <= (range.max ?? Infinity) ? 'pass' : 'fail',
      );
    }
    expect(new Set(own.map(({ verdict }) => verdict))).toEqual(new Set(['pass', 'fail']));
  });

  it('on one whose measure takes what the file does not give are unknown', () => {
    const { limits } = reported(`${text}limits: { leaning-back-hard: { wallClearance: 50 mm .. } }\n`);
    for (const name of ['short', 'tall'])
      expect(limits.find(({ id }) => id === `leaning-back-hard/wallClearance/${name}`)).toMatchObject({
        verdict: 'unknown',
        reason: 'the design does not say how much room is behind the chair (`room.wall`)',
      });
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
  const nothingSeated: SeatedFigures = { rockerEndBack: null };

  it.each(table)('%s, %s', (load, measure, unit, leasts) => {
    const { range } = defaultLimits.find((each) => each.load === load && each.measure === measure)!;
    chairKinds.forEach((kind: ChairKind, i) => {
      const { min, max } = range({ kind } as DesignInSI, nothingSeated)!;
      expect([min! / unit, max]).toEqual([expect.closeTo(leasts[i]!, 9), null]);
    });
  });

  it.each(['getting-up', 'getting-up-with-a-child'])('%s, kickBackDeg: at most the rocker’s end', (load) => {
    const { range } = defaultLimits.find((each) => each.load === load && each.measure === 'kickBackDeg')!;
    for (const kind of chairKinds) {
      expect(range({ kind } as DesignInSI, { rockerEndBack: 0.4 })).toEqual({ min: null, max: 0.4 });
      expect(range({ kind } as DesignInSI, nothingSeated)).toBeNull();
    }
  });

  it('are those of the table and kicking back, and no others', () => {
    const moving = defaultLimits.filter(({ load }) => load !== 'empty' && load !== 'seated');
    expect(moving).toHaveLength(table.length + 2);
  });

  it('with a child are judged by the nursing column, whatever the kind', () => {
    const held = `${text}child: { mass: 9 kg }\n`.replace('trueroll: 1', 'trueroll: 1\nkind: porch');
    const least = (id: string) => reported(held).limits.find((limit) => limit.id === id)!.min;
    expect(least('leaning-back-hard/rockerLeftBack/short')).toBeCloseTo(0.05, 12);
    expect(least('leaning-back-hard-with-a-child/rockerLeftBack/short')).toBeCloseTo(0.075, 12);
    expect(least('leaning-back-hard/leftToTipBack/short')).toBeCloseTo(8, 12);
    expect(least('leaning-back-hard-with-a-child/leftToTipBack/short')).toBeCloseTo(10, 12);
    expect(least('getting-up/rockerLeftForward/short')).toBeCloseTo(0.025, 12);
    expect(least('getting-up-with-a-child/rockerLeftForward/short')).toBeCloseTo(0.05, 12);
  });
});
