/** What nobody draws on purpose. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygon, type Loop } from '../../src/geometry/piece.js';
import { plus } from '../../src/geometry/point.js';
import type { MassProperties } from '../../src/mass.js';
import { between, roundRockers } from '../arbitraries/rolling.js';
import { movedLoop, movedPoint } from '../oracles/moved-loop.js';
import { periodAt, restOf, smallPeriodOf } from '../oracles/round-runner.js';
import { balances, degree, off, roll, settled, swingFreely, swingFrom, there, why } from './roll.js';
import { plumbAbove, roundRunner, runner } from './runners.js';

describe('G at the centre of the arc', () => {
  const { outline } = roundRunner({ x: 0, y: 1 }, 1, -0.4, 0.4);

  it.each([0, 1e-17, -1e-16])(
    '%f m off: stays wherever it is put, so rests nowhere and rolls neither way',
    (x) => {
      const record = roll(outline, { mass: 50, centre: { x, y: 1 - 2 * x }, inertia: 4 });
      expect(record.atRest).toBeNull();
      expect(record.rollsOff).toBeNull();
      expect(record.restsOnSurface).toEqual([]);
    },
  );

  it('a ball has no rest and no crest', () => {
    const ball: Loop = [{ kind: 'arc', centre: { x: 3, y: 2 }, radius: 2, start: 1, sweep: 2 * Math.PI }];
    expect(balances(ball, { x: 3, y: 2 })).toEqual([]);
    expect(roll(ball, { mass: 1, centre: { x: 3, y: 2 }, inertia: 1 }).atRest).toBeNull();
  });

  it('half a micrometre below it is a long period, not none', () => {
    const body: MassProperties = { mass: 50, centre: { x: 0, y: 1 - 5e-7 }, inertia: 4 };
    const { smallPeriod } = settled(outline, body);
    const exact = smallPeriodOf({ centre: { x: 0, y: 1 }, radius: 1, body });
    // The hang itself is a difference of metres: 5e-7 m to a rounding of 1 m.
    expect(off(there(smallPeriod), exact)).toBeLessThan(1e-9);
  });
});

describe('rest exactly at θ = 0', () => {
  it.each([0, 1e-12, -1e-12, 1e-10])('G %f m off plumb', (x) => {
    const { outline } = roundRunner({ x: 0, y: 1.1 }, 1.1, -0.4, 0.4);
    expect(settled(outline, { mass: 50, centre: { x, y: 0.6 }, inertia: 4 }).rest.lean).toBeCloseTo(
      -x / 0.5,
      12,
    );
  });

  it('at a joint that lies at θ = 0', () => {
    for (const [front, rear] of [
      [1, 1.5],
      [1.5, 1],
    ] as const) {
      const made = runner(
        [
          { radius: front, turn: 0.4 },
          { radius: rear, turn: 0.4 },
        ],
        -0.4,
      );
      const centre = plumbAbove(made.tracks, 0, 0.6);
      const body: MassProperties = { mass: 50, centre, inertia: 4 };
      const { rest, smallPeriod } = settled(made.outline, body);
      const sides = made.tracks.slice(1, 3).map((arc) => smallPeriodOf({ ...arc, body }));
      expect(Math.abs(rest.lean)).toBeLessThan(1e-12);
      expect(off(there(smallPeriod), (sides[0]! + sides[1]!) / 2)).toBeLessThan(1e-9);
    }
  });

  it('at a joint that lies there, G a little ahead or behind: rests on that arc', () => {
    const made = runner(
      [
        { radius: 1, turn: 0.4 },
        { radius: 1.5, turn: 0.4 },
      ],
      -0.4,
    );
    const over = plumbAbove(made.tracks, 0, 0.6);
    for (const x of [-1e-3, -1e-6, 1e-6, 1e-3]) {
      const body: MassProperties = { mass: 50, centre: plus(over, { x, y: 0 }), inertia: 4 };
      const arc = made.tracks[x > 0 ? 1 : 2]!;
      const { rest, smallPeriod } = settled(made.outline, body);
      expect(rest.lean).toBeCloseTo(restOf({ ...arc, body }), 12);
      expect(off(there(smallPeriod), smallPeriodOf({ ...arc, body }))).toBeLessThan(1e-9);
    }
  });
});

describe('rest at the very end of the surface', () => {
  const end = 0.3;
  const { outline } = roundRunner({ x: 0, y: 1 }, 1, -0.4, end);
  const behind = (lean: number): MassProperties => ({
    mass: 50,
    centre: { x: -0.4 * Math.sin(lean), y: 1 - 0.4 * Math.cos(lean) },
    inertia: 4,
  });

  it('a hair inside it stands, a hair outside it rolls off back', () => {
    expect(settled(outline, behind(end - 1e-6)).rest.lean).toBeCloseTo(end - 1e-6, 12);
    expect(settled(outline, behind(end - 1e-6)).back.rockerEnd).toBeGreaterThan(0);
    const over = roll(outline, behind(end + 1e-6));
    expect([over.atRest, over.rollsOff]).toEqual([null, 'back']);
  });

  it('exactly on it: one or the other, no nonsense', () => {
    const { atRest, rollsOff } = roll(outline, behind(end));
    if (atRest) expect(atRest.rest.lean).toBeCloseTo(end, 6);
    else expect(rollsOff).toBe('back');
  });

  it('drawn beyond it forward rolls off forward', () => {
    expect(roll(outline, behind(-0.41)).rollsOff).toBe('forward');
  });
});

describe('the pose as drawn', () => {
  it('upside down, on its side: the same rest, counted from there', () => {
    fc.assert(
      fc.property(
        roundRockers,
        between(-Math.PI, Math.PI),
        ({ runner: made, body, centre, radius }, turn) => {
          const rocker = { centre, radius, body };
          const outline = movedLoop(made.outline, { turn });
          const moved = { ...body, centre: movedPoint(body.centre, { turn }) };
          const near = balances(outline, moved.centre)
            .filter(({ kind }) => kind === 'rest')
            .map(({ lean }) => (lean + turn - restOf(rocker)) / (2 * Math.PI));
          expect(Math.min(...near.map((turns) => Math.abs(turns - Math.round(turns))))).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it('upside down it does not stand on its rockers', () => {
    const made = roundRunner({ x: 0, y: 1.1 }, 1.1, -0.4, 0.4);
    const back = polygon([
      { x: -0.2, y: 0.1 },
      { x: 0.2, y: 0.1 },
      { x: 0.1, y: 1.2 },
      { x: -0.1, y: 1.2 },
    ]);
    const turned = movedLoop([...made.outline, ...back], { turn: Math.PI });
    const body = { mass: 50, centre: movedPoint({ x: 0.02, y: 0.6 }, { turn: Math.PI }), inertia: 4 };
    const record = roll(turned, body);
    expect(record.atRest?.rest.flat ?? 0.2).toBeGreaterThan(0.1);
  });

  it('the cut of the profile at half a turn, near the contact, does not matter', () => {
    const made = roundRunner({ x: 0, y: 1.1 }, 1.1, -0.5, 0.5);
    const body: MassProperties = { mass: 50, centre: { x: 0.01, y: 0.6 }, inertia: 4 };
    const rocker = { centre: { x: 0, y: 1.1 }, radius: 1.1, body };
    for (const turn of [Math.PI, Math.PI - 0.02, Math.PI + 0.03, -Math.PI + 0.4]) {
      const outline = movedLoop(made.outline, { turn });
      const moved = { ...body, centre: movedPoint(body.centre, { turn }) };
      const rest = restOf(rocker) - turn;
      for (const amplitude of [0.05, 0.2, 0.4]) {
        for (const whole of [0, 2 * Math.PI, -2 * Math.PI]) {
          const swing = there(swingFreely(outline, moved, rest + whole, rest + whole + amplitude));
          expect(off(swing.period, periodAt(rocker, amplitude))).toBeLessThan(1e-11);
          expect(swing.turns[0]).toBeCloseTo(rest + whole - amplitude, 11);
        }
      }
    }
  });
});

describe('sizes', () => {
  it.each([1e-3, 1e-2, 10, 1e3, 1e4])('radius %f m with G as low in proportion', (radius) => {
    const { outline } = roundRunner({ x: 0, y: radius }, radius, -0.4, 0.4);
    const body: MassProperties = {
      mass: 50,
      centre: { x: 0.01 * radius, y: 0.5 * radius },
      inertia: 50 * (0.3 * radius) ** 2,
    };
    const rocker = { centre: { x: 0, y: radius }, radius, body };
    const { smallPeriod, rest } = settled(outline, body);
    expect(rest.lean).toBeCloseTo(restOf(rocker), 12);
    expect(off(there(smallPeriod), smallPeriodOf(rocker))).toBeLessThan(1e-9);
    const { period } = there(swingFrom(outline, body, rest.lean, rest.lean + 6 * degree));
    expect(off(period, periodAt(rocker, 6 * degree))).toBeLessThan(1e-12);
  });

  // The long arm of H' makes the integrand sharp: the rule must see it.
  it.each([3, 10, 100, 1e3, 1e4])('radius %f m under a body of a metre', (radius) => {
    const { outline } = roundRunner({ x: 0, y: radius }, radius, -0.4, 0.4);
    const body: MassProperties = { mass: 50, centre: { x: 0, y: 0.5 }, inertia: 4 };
    const rocker = { centre: { x: 0, y: radius }, radius, body };
    const { rest } = settled(outline, body);
    const { period } = there(swingFrom(outline, body, rest.lean, rest.lean + 6 * degree));
    expect(off(period, periodAt(rocker, 6 * degree, 400_000))).toBeLessThan(1e-9);
  });

  it('swings from a hair to nearly over', () => {
    const ball: Loop = [{ kind: 'arc', centre: { x: 0, y: 1 }, radius: 1, start: 0, sweep: 2 * Math.PI }];
    const body: MassProperties = { mass: 5, centre: { x: 0, y: 0.7 }, inertia: 0.4 };
    const rocker = { centre: { x: 0, y: 1 }, radius: 1, body };
    for (const amplitude of [1e-6, 1e-3, 0.5, 1, 2, 3, 3.14]) {
      const { period } = there(swingFrom(ball, body, 0, amplitude));
      expect(off(period, periodAt(rocker, amplitude, 20_000))).toBeLessThan(1e-10);
    }
  });

  it('a swing of nothing is none', () => {
    const { outline } = roundRunner({ x: 0, y: 1 }, 1, -0.4, 0.4);
    const body: MassProperties = { mass: 5, centre: { x: 0, y: 0.7 }, inertia: 0.4 };
    expect(why(swingFrom(outline, body, 0, 0))).toBe('let go at rest');
  });
});

describe('numbers that are none', () => {
  it('never become a rest', () => {
    const { outline } = roundRunner({ x: 0, y: 1 }, 1, -0.4, 0.4);
    expect(roll(outline, { mass: 5, centre: { x: Number.NaN, y: 0.7 }, inertia: 0.4 }).atRest).toBeNull();
  });
});
