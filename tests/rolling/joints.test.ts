/** Runners of several tangent arcs, and corners between them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MassProperties } from '../../src/mass.js';
import { between } from '../arbitraries/rolling.js';
import { rollToTurn } from '../oracles/rolling-motion.js';
import { smallPeriodOf } from '../oracles/round-runner.js';
import { balances, off, roll, settled, swingFrom, there } from './roll.js';
import { plumbAbove, runner, type Runner, type Step } from './runners.js';

const exact = 1e-9;

interface TwoRadii {
  readonly made: Runner;
  readonly body: MassProperties;
  readonly joint: number;
}

const twoRadii = fc
  .record({
    front: between(0.75, 3),
    rear: between(0.75, 3),
    joint: between(-0.15, 0.15),
    height: between(0.2, 0.7),
    gyration: between(0.1, 0.6),
    at: between(-3, 3),
  })
  .map(({ front, rear, joint, height, gyration, at }): TwoRadii => {
    const steps: Step[] = [
      { radius: front, turn: joint + 0.5 },
      { radius: rear, turn: 0.5 - joint },
    ];
    const made = runner(steps, -0.5, { x: at, y: 0.1 });
    const centre = plumbAbove(made.tracks, joint, height);
    return { made, body: { mass: 50, centre, inertia: 50 * gyration ** 2 }, joint };
  });

describe('rest at the joint of two radii', () => {
  it('is found there, its small period half of each side', () => {
    fc.assert(
      fc.property(twoRadii, ({ made, body, joint }) => {
        fc.pre(Math.abs(made.tracks[1]!.radius - made.tracks[2]!.radius) > 1e-3);
        const { rest, smallPeriod } = settled(made.outline, body);
        expect(Math.abs(rest.lean - joint)).toBeLessThan(1e-9);
        const sides = made.tracks.slice(1, 3).map((arc) => smallPeriodOf({ ...arc, body }));
        expect(off(there(smallPeriod), (sides[0]! + sides[1]!) / 2)).toBeLessThan(exact);
        expect(rest.place).toBe('joint');
      }),
    );
  });

  it('swings as the motion step by step', () => {
    fc.assert(
      fc.property(twoRadii, between(0.02, 0.2), ({ made, body, joint }, amplitude) => {
        const release = joint + amplitude;
        const swing = swingFrom(made.outline, body, joint, release);
        const one = rollToTurn(made.tracks, body, release, -1, 2e-4);
        fc.pre(one.turn !== null && one.turn > -0.5);
        const { period, turns } = there(swing);
        expect(off(period, 2 * one.time)).toBeLessThan(exact);
        expect(Math.abs(turns[0] - one.turn)).toBeLessThan(1e-9);
        expect(turns[1]).toBe(release);
      }),
      { numRuns: 50 },
    );
  });

  it('a small swing tends to the small period, as amplitude and not its square: the joint shifts with it', () => {
    fc.assert(
      fc.property(twoRadii, ({ made, body, joint }) => {
        const small = there(settled(made.outline, body).smallPeriod);
        const { period } = there(swingFrom(made.outline, body, joint, joint + 1e-5));
        expect(off(period, small)).toBeLessThan(1e-4);
      }),
    );
  });
});

describe('runners of many arcs', () => {
  const many = fc
    .record({
      arcs: fc.array(fc.record({ radius: between(0.8, 3), turn: between(0.01, 0.2) }), {
        minLength: 2,
        maxLength: 7,
      }),
      start: between(0.2, 0.8),
      height: between(0.2, 0.7),
      gyration: between(0.1, 0.6),
    })
    .map(({ arcs, start, height, gyration }) => {
      const turn = arcs.reduce((sum, arc) => sum + arc.turn, 0);
      const made = runner(arcs, -start * turn);
      const centre = plumbAbove(made.tracks, 0, height);
      return { made, turn, start, body: { mass: 50, centre, inertia: 50 * gyration ** 2 } };
    });

  it('swing as the motion step by step, over every joint', () => {
    fc.assert(
      fc.property(many, between(0.05, 0.95), ({ made, turn, start, body }, share) => {
        const release = share * (1 - start) * turn;
        fc.pre(release > 1e-3);
        const swing = swingFrom(made.outline, body, 0, release);
        const one = rollToTurn(made.tracks, body, release, -1, 2e-4);
        if (one.turn === null || one.turn < -start * turn) {
          expect(swing).toHaveProperty('missing', 'the swing passes the nose end of the rockers');
          return;
        }
        expect(off(there(swing).period, 2 * one.time)).toBeLessThan(exact);
      }),
      { numRuns: 60 },
    );
  });

  it('an arc cut in pieces swings as the arc', () => {
    fc.assert(
      fc.property(
        fc.array(between(0.01, 1), { minLength: 1, maxLength: 8 }),
        between(0.05, 0.35),
        (shares, release) => {
          const whole = shares.reduce((sum, share) => sum + share, 0);
          const cut = runner(
            shares.map((share) => ({ radius: 1.1, turn: (0.8 * share) / whole })),
            -0.4,
          );
          const one = runner([{ radius: 1.1, turn: 0.8 }], -0.4);
          const body: MassProperties = { mass: 70, centre: plumbAbove(one.tracks, 0, 0.6), inertia: 8 };
          const there1 = there(swingFrom(one.outline, body, 0, release));
          const there2 = there(swingFrom(cut.outline, body, 0, release));
          expect(off(there2.period, there1.period)).toBeLessThan(1e-12);
          expect(
            off(there(settled(cut.outline, body).smallPeriod), there(settled(one.outline, body).smallPeriod)),
          ).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

describe('corners', () => {
  it('a corner under G is a crest, with a rest on either side', () => {
    const made = runner([{ radius: 1, turn: 0.3 }, { corner: 0.1 }, { radius: 1, turn: 0.3 }], -0.35);
    const centre = plumbAbove(made.tracks, 0, 0.5);
    const near = balances(made.outline, centre).filter(({ lean }) => Math.abs(lean) < 0.3);
    expect(near.map(({ kind }) => kind)).toEqual(['rest', 'crest', 'rest']);
    expect(near[1]!.lean).toBeCloseTo(0, 12);
    expect(near[0]!.lean).toBeCloseTo(-near[2]!.lean, 9);
    const { atRest, rollsOff, restsOnSurface } = roll(made.outline, { mass: 50, centre, inertia: 4 });
    expect(atRest).toBeNull();
    expect(rollsOff).toBeNull();
    expect(restsOnSurface).toHaveLength(2);
  });

  it('drawn a little off the crest it rolls to the rest on that side', () => {
    const made = runner([{ radius: 1, turn: 0.3 }, { corner: 0.1 }, { radius: 1, turn: 0.3 }], -0.35);
    const over = plumbAbove(made.tracks, 0, 0.5);
    for (const side of [-1, 1]) {
      const body = { mass: 50, centre: { x: over.x + side * 1e-4, y: over.y }, inertia: 4 };
      expect(Math.sign(settled(made.outline, body).rest.lean)).toBe(-side);
    }
  });

  it('a turn of rounding at a joint is no crest: as many rests as without it', () => {
    for (const corner of [1e-12, 1e-11, 1e-10, 1e-9]) {
      const made = runner([{ radius: 0.9, turn: 0.3 }, { corner }, { radius: 1.3, turn: 0.3 }], -0.3);
      const found = balances(made.outline, plumbAbove(made.tracks, 0, 0.5));
      const near = found.filter(({ lean }) => Math.abs(lean) < 0.2).map(({ kind }) => kind);
      expect(
        near.filter((kind) => kind === 'rest').length - near.filter((kind) => kind === 'crest').length,
      ).toBe(1);
    }
  });
});
