/** What is read off a moving load beside its measures: the worst moment, what its assumptions matter, fingers, legs, tests. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { distance, minus, plus, times } from '../../src/geometry/point.js';
import { loadsOf } from '../../src/loads/loads-of.js';
import { seatPeople } from '../../src/loads/people.js';
import { measureLoad } from '../../src/measures/catalogue.js';
import { backOverShoulder, kneeAngle } from '../../src/measures/leg-and-back.js';
import { fingerGaps, pinchWedge } from '../../src/measures/pinch-wedge.js';
import { rollLoads, type LoadRecord } from '../../src/measures/record.js';
import { sensitivitiesOf, type Change } from '../../src/measures/sensitivities.js';
import { uprightTests } from '../../src/measures/upright-tests.js';
import { isMissing } from '../../src/numeric/missing.js';
import { pushedRest } from '../../src/rolling/pushed-rest.js';
import { rollThrough, turningLeans } from '../../src/rolling/scripted-roll.js';
import type { LoadId, MeasureKey } from '../../src/names.js';
import { checked, oneArc, sitters } from '../reading.js';

const degree = Math.PI / 180;
const text = (design: string, loads = ''): string =>
  `${readFileSync(`fixtures/${design}/design.yaml`, 'utf8')}\n${loads}`;
const loadOf = (design: string, id: LoadId, sitter: string | null) =>
  checked(design).loads.find(({ record: { load } }) => load.id === id && load.sitter === sitter)!;
const recordOf = (design: string, id: LoadId, sitter: string | null): LoadRecord =>
  loadOf(design, id, sitter).record;
const valueOf = (design: string, id: LoadId, sitter: string | null, key: MeasureKey): number =>
  loadOf(design, id, sitter).measured.get(key) as number;

describe('the worst moment of a rock', () => {
  const porch = recordOf(text('porch-rocker'), 'leaning-back-hard', 'tallest');
  const worst = porch.worst();
  if (isMissing(worst)) throw new RangeError('the worst moment of the porch rocker is missing');

  it('takes the chair farther back than a shove from rest', () => {
    expect(worst.farthest).toBeGreaterThan(porch.motion!.farthest.back + degree);
  });

  it('is what the shove from there does, to the closeness of the search', () => {
    const run = rollThrough(porch.motion!.course, worst);
    // 1e-7 a step, some dozens of steps.
    expect(Math.max(...turningLeans(run))).toBeCloseTo(worst.farthest, 5);
  });

  // The rock of the leaned pose, taken from its own free motion: let go 6° back, moment by moment over one period.
  it('is as bad as the worst of three hundred moments of the rock itself', () => {
    const { course, run } = porch.motion!;
    const start = run.legs[0]!.from.lean;
    const { fixed, moving } = course.script;
    const ahead = moving.map((mass) => ({
      ...mass,
      motion: () => {
        const still = { x: 0, y: 0 };
        return { ...mass.motion(0), velocity: still, acceleration: still, turnRate: 0, turnAcceleration: 0 };
      },
    }));
    const frozen = { ...course.script, fixed, moving: ahead, foot: null, breaks: [], end: 0 };
    const rocking = { ...course, script: frozen, endsFalling: false, until: 3, longestStep: 0.01 };
    const rock = rollThrough(rocking, { lean: start + 6 * degree, rate: 0 });
    const peaks = rock.legs.flatMap(({ points }) =>
      points.slice(1).map((point, i) => {
        const before = points[i]!;
        const rate = (point.state[0]! - before.state[0]!) / (point.time - before.time);
        const lean = (point.state[0]! + before.state[0]!) / 2;
        return Math.max(...turningLeans(rollThrough({ ...course, closeness: 1e-8 }, { lean, rate })));
      }),
    );
    expect(peaks.length).toBeGreaterThan(250);
    // Between moments 0.01 s apart, and rates from differences of 0.01 s: some thousandths of a degree.
    expect(Math.abs(Math.max(...peaks) - worst.farthest)).toBeLessThan(0.01 * degree);
  });

  it('may go over where the shove from rest does not; only a hard lean has one', () => {
    const wild = text('porch-rocker', 'loads: { leaning-back-hard: { shove: 0.35 } }');
    const record = recordOf(wild, 'leaning-back-hard', 'tallest');
    expect(record.motion!.goesOver).toBeNull();
    const found = record.worst();
    expect(!isMissing(found) && found.farthest).toBe(Infinity);
    expect(isMissing(recordOf(text('porch-rocker'), 'seated', 'tallest').worst())).toBe(true);
  });
});

describe('how much an assumption matters', () => {
  const plain = text('porch-rocker');
  const of = (id: LoadId, what: Change['of'], by: number) =>
    sensitivitiesOf(recordOf(plain, id, 'tallest')).find(
      (one) => one.of === what && Math.abs(one.by - by) < 1e-9,
    )!;

  // The same change written into the design; 1e-7 a step in the search, some dozens of steps.
  it.each([
    ['trunk', 5 * degree, 'trunkAhead: 20 deg'],
    ['trunk', -5 * degree, 'trunkAhead: 10 deg'],
    ['shove', 0.1, 'shoveTime: 0.6 s'],
    ['shove', -0.1, 'shoveTime: 0.4 s'],
  ] as const)('of the %s by %d is what the design so changed does', (what, by, setting) => {
    const changed = text('porch-rocker', `loads: { leaning-back-hard: { ${setting} } }`);
    const peak = (design: string) => valueOf(design, 'leaning-back-hard', 'tallest', 'peakBackDeg');
    const found = of('leaning-back-hard', what, by);
    expect(found.farther).toBeCloseTo(peak(changed) - peak(plain), 5);
    expect(found.rockerLeft).toBeCloseTo(
      valueOf(changed, 'leaning-back-hard', 'tallest', 'rockerLeftBackM'),
      5,
    );
  });

  it('of the time to get up is what the design so changed does', () => {
    const changed = text('porch-rocker', 'loads: { getting-up: { leaveTime: 1.5 s } }');
    const peak = (design: string) => valueOf(design, 'getting-up', 'tallest', 'peakForwardDeg');
    expect(of('getting-up', 'leaving time', 0.3).farther).toBeCloseTo(peak(changed) - peak(plain), 5);
  });

  // The figure of the project's mechanics page: the feet 0.1 m forward or back move the peak by 3 to 4°.
  it('of the feet is some degrees, farther back when they stand farther ahead', () => {
    expect(of('leaning-back-hard', 'feet', 0.1).farther! / degree).toBeGreaterThan(2.5);
    expect(of('leaning-back-hard', 'feet', 0.1).farther! / degree).toBeLessThan(4.5);
    expect(of('leaning-back-hard', 'feet', -0.1).farther).toBeLessThan(0);
  });

  it('is farther forward when the seat is left nearer to its front', () => {
    expect(of('getting-up', 'leaving place', -0.05).farther).toBeGreaterThan(0);
    expect(of('getting-up', 'leaving place', 0.05).farther).toBeLessThan(0);
  });

  it('is not told of what goes over, or does not move', () => {
    expect(sensitivitiesOf(recordOf(plain, 'seated', 'tallest'))).toEqual([]);
    expect(sensitivitiesOf(recordOf(plain, 'child-on-the-tails', null))).toEqual([]);
  });
});

describe('getting up as slowly as you like', () => {
  it.each(['0.05 s', '3.9 s', '4 s', '30 s'])('leaves a kick to tell, in %s', (time) => {
    const slow = text('porch-rocker', `loads: { getting-up: { leaveTime: ${time} } }`);
    expect(valueOf(slow, 'getting-up', 'tallest', 'kickBackDeg')).toBeTypeOf('number');
  });
});

describe('the wedge under the tails', () => {
  const { chair } = checked(oneArc);

  // One arc: gap R (1 - cos φ), distance R sin φ.
  it('is where the gap under the arc is a finger’s', () => {
    const at = (gap: number): number => Math.sin(Math.acos(1 - gap));
    const { from, to } = pinchWedge(chair, 0)!;
    expect(from).toBeCloseTo(at(fingerGaps.least), 10);
    expect(to).toBeCloseTo(at(fingerGaps.most), 10);
  });

  it('is about sqrt(2 R gap) behind the touch: off by x²/(8 R²) of it', () => {
    const rough = Math.sqrt(2 * fingerGaps.most);
    const off = 1 - pinchWedge(chair, 0)!.to / rough;
    expect(off / (rough ** 2 / 8)).toBeCloseTo(1, 1);
  });

  it('ends with the tails, and is not there where they end before it', () => {
    const short = (tail: number) => checked(oneArc.replace('tail: 500', `tail: ${tail}`)).chair;
    expect(pinchWedge(short(150), 0)!.to).toBeCloseTo(0.15, 9);
    expect(pinchWedge(short(100), 0)).toBeNull();
  });
});

describe('legs and back', () => {
  const design = `${oneArc}${sitters}`;
  const { chair, load, roll } = recordOf(design, 'seated', 'short');
  const rest = roll.atRest!.rest.lean;

  // d of the reach of the foot, and the law of cosines.
  it('the knee opens as far as the foot reaches', () => {
    const apart = valueOf(design, 'seated', 'short', 'footReach') * 0.491 * 1.55;
    const [thigh, shank] = [0.245 * 1.55, 0.246 * 1.55];
    const cosine = (thigh ** 2 + shank ** 2 - apart ** 2) / (2 * thigh * shank);
    expect(kneeAngle(chair, load.person!, rest, rest + load.swing)).toBeCloseTo(Math.acos(cosine), 12);
  });

  it('is straight where the foot is out of reach', () => {
    expect(kneeAngle(chair, load.person!, rest, rest + 1.2)).toBe(Math.PI);
  });

  // The hip is 0.072 of the stature ahead of the back line, the shoulder 0.288 up along it from there.
  it('the back ends so far over the shoulder', () => {
    const { hip } = load.person!.pose.joints;
    const [x, y] = [-350 - -150, 1000 - 350].map((size) => size / Math.hypot(200, 650)) as [number, number];
    const top = (-0.35 - hip.x) * x + (1 - hip.y) * y;
    expect(backOverShoulder(chair, load.person!)).toBeCloseTo(top - 0.288 * 1.55, 12);
  });
});

describe('a chair under presses and a push', () => {
  const { chair } = checked(oneArc);

  /**
   * One arc about (0, R), R = 1: m g e cos θ-terms by hand,
   *     Σ w (x cos θ - (y - R) sin θ) = P (R + p_x sin θ + (p_y - R) cos θ)
   */
  it('rests where the moments about the contact of its arc balance', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), (force) => {
        const push = { place: { x: -0.3, y: 0.8 }, force };
        const load = { place: { x: 0.1, y: 0.35 }, force: 200 };
        const lean = pushedRest(chair.profile, chair.body, [load], push, 0)!;
        const { mass, centre } = chair.body;
        const moment = (weight: number, q: { x: number; y: number }): number =>
          weight * (q.x * Math.cos(lean) - (q.y - 1) * Math.sin(lean));
        const height = 1 + push.place.x * Math.sin(lean) + (push.place.y - 1) * Math.cos(lean);
        // A ten-billionth of the moments of some ten newton metres: the root is found to the last digits of θ.
        expect(moment(mass * 9.80665, centre) + moment(200, load.place)).toBeCloseTo(force * height, 8);
      }),
    );
  });

  it('rests nowhere under a push that it cannot hold', () => {
    expect(pushedRest(chair.profile, chair.body, [], { place: { x: 0, y: 1 }, force: 300 }, 0)).toBeNull();
  });

  it('is told of the loads of upright chairs with what of them was read', () => {
    const [back, forward] = uprightTests(chair, 0);
    // By hand: the seat 0.35 m up at 175 mm from the meeting of the lines, as inclined: 0.2857 (1000 - h).
    const height = 350 + (175 * 30) / Math.hypot(450, 30);
    expect(back!.level).toBeCloseTo(0.2857 * (1000 - height), 6);
    expect([back!.down, forward!.down, forward!.level]).toEqual([600, 600, 20]);
    expect(back!.source).toMatch(/from memory/);
    expect(uprightTests({ ...chair, back: null }, 0)).toEqual([]);
  });
});

test('a chair fallen on its side that a sitter rocks to a standstill on a flat asks for no grip there', () => {
  const { design, chair } = checked(text('porch-rocker'));
  // Farther back than a design may draw it: by 2.54 m along the seat.
  const { front, rear } = design.seat!;
  const far = times(minus(front, rear), -2.54 / distance(front, rear));
  const back = { foot: plus(design.back!.foot, far), top: plus(design.back!.top, far) };
  const seated = seatPeople({ ...design, back });
  if (!seated.ok) throw new Error('nobody seated');
  const loads = loadsOf(design, { ...chair, back }, seated.people, ['getting-up']);
  for (const record of rollLoads({ ...chair, back }, loads, 0)) {
    expect(record.motion!.run.legs.length).toBeGreaterThan(20);
    expect(measureLoad(record).get('frictionDemand')).toBeGreaterThan(0);
  }
});
