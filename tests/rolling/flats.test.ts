import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { profileOf } from '../../src/geometry/profile.js';
import { contactAt } from '../../src/geometry/profile.js';
import type { MassProperties } from '../../src/mass.js';
import { flatImpact } from '../../src/rolling/flat-impact.js';
import { between } from '../arbitraries/rolling.js';
import { armAt, rollToTurn, type Motion } from '../oracles/rolling-motion.js';
import { denseMaximum } from '../oracles/dense-maximum.js';
import { balances, degree, off, settled, swingFrom, there, why } from './roll.js';
import { plumbAbove, runner, type Runner } from './runners.js';
import { isMissing } from '../../src/numeric/missing.js';

/** A runner with one flat of length `flat` between two arcs, drawn standing on it. */
interface WithFlat {
  readonly made: Runner;
  readonly body: MassProperties;
  readonly flat: number;
}

/** G plumb over the flat, `ahead` of its rear end. */
function withFlat(
  radii: readonly [number, number],
  flat: number,
  share: number,
  height: number,
  gyration: number,
): WithFlat {
  const made = runner([{ radius: radii[0], turn: 0.4 }, { flat }, { radius: radii[1], turn: 0.4 }], -0.4);
  const [front, rear] = [
    plumbAbove(made.tracks, -1e-13, height),
    plumbAbove(made.tracks.slice(2), 0, height),
  ];
  const centre = { x: rear.x + share * (front.x - rear.x), y: rear.y };
  return { made, body: { mass: 60, centre, inertia: 60 * gyration ** 2 }, flat };
}

const withFlats = fc
  .record({
    front: between(0.8, 2),
    rear: between(0.8, 2),
    flat: between(0.001, 0.06),
    share: between(0.02, 0.98),
    height: between(0.3, 0.7),
    gyration: between(0.2, 0.5),
  })
  .map(({ front, rear, flat, share, height, gyration }) =>
    withFlat([front, rear], flat, share, height, gyration),
  );

const contacts = ({ made }: WithFlat) =>
  [-1, 1].map((side) => contactAt(profileOf([[made.outline]]), side * 1e-10).x) as [number, number];

describe('rest on a flat', () => {
  it('stands there over its whole length, touching plumb under G, without a small swing', () => {
    fc.assert(
      fc.property(withFlats, (chair) => {
        const { made, body, flat } = chair;
        const { rest, smallPeriod } = settled(made.outline, body);
        expect(rest.place).toBe('flat');
        expect(Math.abs(rest.lean)).toBeLessThan(1e-9);
        expect(off(rest.flat, flat)).toBeLessThan(1e-9);
        expect(rest.contact.x).toBeCloseTo(body.centre.x, 9);
        expect(why(smallPeriod)).toContain('rests on a flat');
        const [front, rear] = contacts(chair);
        expect(rest.contactLength).toBeCloseTo(
          settled(made.outline, { ...body, centre: { ...body.centre, x: rear } }).rest.contactLength -
            (body.centre.x - rear),
          9,
        );
        expect(front - rear).toBeCloseTo(flat, 9);
      }),
    );
  });

  it.each([
    [0.0005, '0.5 mm'],
    [0.038, '38 mm'],
  ])('says how long: %f m', (flat, words) => {
    const { made, body } = withFlat([1, 1.2], flat, 0.4, 0.5, 0.3);
    expect(why(settled(made.outline, body).smallPeriod)).toBe(
      `rests on a flat ${words} long: no small swing`,
    );
  });

  it('with G past its end rests on the arc there', () => {
    fc.assert(
      fc.property(withFlats, between(0.001, 0.05), (chair, beyond) => {
        const { made, body } = chair;
        const [, rear] = contacts(chair);
        const centre = { ...body.centre, x: rear - beyond };
        const arc = made.tracks[2]!;
        // tan θ = how far G is behind the centre over how far below.
        const expected = Math.atan2(arc.centre.x - centre.x, arc.centre.y - centre.y);
        fc.pre(expected < 0.39);
        const { rest } = settled(made.outline, { ...body, centre });
        expect(rest.place).toBe('stretch');
        expect(rest.lean).toBeCloseTo(expected, 11);
      }),
    );
  });
});

describe('swing over flats', () => {
  /** There and back step by step. */
  function steps({ made, body }: WithFlat, release: number, step: number): [Motion, Motion] | null {
    const there = rollToTurn(made.tracks, body, release, -1, step);
    if (there.turn === null) return null;
    return [there, rollToTurn(made.tracks, body, there.turn, 1, step)];
  }

  it('takes the time and turns where the motion step by step does, with its impacts', () => {
    fc.assert(
      fc.property(withFlats, between(0.05, 0.3), (chair, release) => {
        const swing = swingFrom(chair.made.outline, chair.body, 0, release);
        const motion = steps(chair, release, 5e-4);
        if (motion === null || motion[1].turn === null) {
          expect(why(swing)).toMatch(/stops on a flat|passes the/);
          return;
        }
        if (isMissing(swing)) {
          expect(motion[0].turn).toBeLessThan(-0.4);
          return;
        }
        const [one, other] = motion;
        // Order four at half a millisecond: some 1e-11 of a swing.
        expect(off(swing.period, one.time + other.time)).toBeLessThan(1e-9);
        expect(Math.abs(swing.turns[0] - one.turn!)).toBeLessThan(1e-9);
        expect(Math.abs(swing.turns[1] - other.turn!)).toBeLessThan(1e-9);
        const impacts = [...one.impacts, ...other.impacts];
        expect(swing.impacts).toHaveLength(impacts.length);
        swing.impacts.forEach(({ energyKept }, i) => {
          expect(Math.abs(energyKept - impacts[i]!.after / impacts[i]!.before)).toBeLessThan(1e-9);
        });
      }),
      { numRuns: 50 },
    );
  });

  it('loses exactly what its impacts take: the heights of its turning points', () => {
    fc.assert(
      fc.property(withFlats, between(0.05, 0.3), ({ made, body }, release) => {
        const swing = swingFrom(made.outline, body, 0, release);
        fc.pre(!isMissing(swing));
        const height = (lean: number): number =>
          armAt(
            made.tracks.find(({ from, to }) => lean >= from && lean <= to)!,
            body.centre,
            lean,
          ).y;
        const level = height(0);
        const [first, second] = swing.impacts;
        expect(swing.impacts).toHaveLength(2);
        expect(first!.energyKept).toBeLessThan(1);
        expect(
          off(height(swing.turns[0]) - level, first!.energyKept * (height(release) - level)),
        ).toBeLessThan(1e-7);
        expect(
          off(height(swing.turns[1]) - level, second!.energyKept * (height(swing.turns[0]) - level)),
        ).toBeLessThan(1e-7);
      }),
    );
  });

  it('shorter and shorter flats lose as their square, and a swing over none is one of the two arcs', () => {
    const lost = (flat: number): number => {
      const { made, body } = withFlat([1, 1], flat, 0.5, 0.6, 0.35);
      const { turns } = there(swingFrom(made.outline, body, 0, 0.1));
      return 0.1 - turns[1];
    };
    expect(lost(0.004) / lost(0.002)).toBeGreaterThan(3.9);
    expect(lost(0.004) / lost(0.002)).toBeLessThan(4.1);
    expect(lost(0)).toBe(0);
  });

  it('asks for the grip of its impacts', () => {
    const { made, body, flat } = withFlat([1, 1], 0.06, 0.5, 0.6, 0.2);
    const { forces } = settled(made.outline, body, { swing: 2 * degree });
    const [H, x] = [0.6, flat / 2];
    expect(there(forces).frictionDemand).toBeGreaterThanOrEqual((H * x) / (0.2 ** 2 + H * H) - 1e-12);
  });

  it('stops on a flat longer than its impact lets it pass', () => {
    // k² + H² = x²: symmetrical flat of 2x.
    const [H, k] = [0.2, 0.1];
    const x = Math.hypot(H, k);
    for (const [flat, stops] of [
      [2 * x * 1.001, true],
      [2 * x * 0.999, false],
    ] as const) {
      const { made, body } = withFlat([3, 3], flat, 0.5, H, k);
      const swing = swingFrom(made.outline, body, 0, 0.05);
      if (stops) expect(why(swing)).toBe(`stops on a flat ${(flat * 1000).toFixed(0)} mm long`);
      else expect(swing).toHaveProperty('period');
    }
  });
});

describe('impact on a flat', () => {
  // Moment of momentum about the new contact, by vectors: I θ̇ + m (r × v).
  it('keeps the moment of momentum about the contact met', () => {
    fc.assert(
      fc.property(between(0.01, 2), between(0.05, 2), between(-1, 1), between(-1, 1), (k2, H, left, met) => {
        const { speedRatio, energyKept, grip } = flatImpact(k2, H, left, met);
        // Unit mass, θ̇ = 1 before: v = (-H, left).
        const before = k2 + met * left + H * H;
        expect(speedRatio * (k2 + met * met + H * H)).toBeCloseTo(before, 12);
        const energy = (rate: number, x: number) => (rate ** 2 * (k2 + H * H + x * x)) / 2;
        if (speedRatio > 0) expect(energyKept).toBeCloseTo(energy(speedRatio, met) / energy(1, left), 12);
        else expect(energyKept).toBe(0);
        expect(energyKept).toBeLessThanOrEqual(1 + 1e-15);
        // Impulse: what the velocity of G, (-H θ̇, x θ̇), changes by.
        const [along, up] = [-H * speedRatio + H, met * speedRatio - left];
        if (Math.abs(up) > 1e-3) expect(Math.abs(along / up)).toBeCloseTo(grip, 9);
      }),
    );
  });
});

describe('steady push off a flat', () => {
  it('is the largest of both one-sided values', () => {
    const { made, body, flat } = withFlat([1, 1.4], 0.05, 0.3, 0.6, 0.3);
    const at = { x: body.centre.x - 0.2, y: 1.1 };
    const { back, forward } = settled(made.outline, body, { pushedAt: at });
    const lever = (lean: number): number => {
      const track = made.tracks.find(({ from, to }) => lean >= from && lean <= to)!;
      return Math.abs(armAt(track, body.centre, lean).x) / armAt(track, at, lean).y;
    };
    const weight = body.mass * 9.80665;
    for (const [side, sign] of [
      [back, 1],
      [forward, -1],
    ] as const) {
      const looked = denseMaximum((share) => lever(sign * (1e-12 + share * there(side.tip).angle)), 0, 1);
      expect(off(there(side.push), weight * looked)).toBeLessThan(1e-7);
      expect(looked).toBeGreaterThan((0.3 * flat) / 1.1);
    }
  });
});

describe('a flat off rest', () => {
  it('is no rest while G is past both its ends', () => {
    const steps = [{ radius: 1, turn: 0.4 }, { flat: 0.05 }, { radius: 1, turn: 0.4 }];
    const made = runner(steps, -0.3);
    const found = balances(made.outline, plumbAbove(made.tracks, 0, 0.5));
    const near = found.filter(({ lean }) => Math.abs(lean) < 0.29);
    expect(near.map(({ kind, place }) => `${kind} on ${place}`)).toEqual(['rest on stretch']);
    expect(near[0]!.lean).toBeCloseTo(0, 12);
  });
});
